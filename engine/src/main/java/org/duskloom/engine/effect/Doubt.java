package org.duskloom.engine.effect;

import java.util.Objects;

/**
 * Something about a setting that is allowed but mostly a slip.
 *
 * @param setting the name of the setting to point at
 * @param message what will be seen, with the value
 * @param hint what could be done about it, or empty
 */
public record Doubt(String setting, String message, String hint) {
    public Doubt {
        Objects.requireNonNull(setting, "setting");
        Objects.requireNonNull(message, "message");
        Objects.requireNonNull(hint, "hint");
    }
}

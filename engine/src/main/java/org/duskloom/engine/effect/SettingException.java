package org.duskloom.engine.effect;

import java.util.Objects;

/** A setting that is well formed by itself but cannot be used: with another one, or on this canvas. */
public final class SettingException extends Exception {
    private static final long serialVersionUID = 1L;

    private final String setting;
    private final String hint;

    /**
     * @param setting the name of the setting to point at
     * @param message what is wrong, with the value
     * @param hint what is allowed, or empty
     */
    public SettingException(String setting, String message, String hint) {
        super(Objects.requireNonNull(message, "message"));
        this.setting = Objects.requireNonNull(setting, "setting");
        this.hint = Objects.requireNonNull(hint, "hint");
    }

    /** The name of the setting to point at. */
    public String setting() {
        return setting;
    }

    /** What is allowed, or empty. */
    public String hint() {
        return hint;
    }
}

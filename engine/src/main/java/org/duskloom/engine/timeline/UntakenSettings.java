package org.duskloom.engine.timeline;

import java.util.List;
import java.util.Objects;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.TextNode;

/**
 * What a look says of its effect and no cue takes, so that nobody else reads it.
 *
 * @param effect its name, as written
 * @param with those of the look's settings that no cue takes
 */
public record UntakenSettings(TextNode effect, List<Field> with) {
    public UntakenSettings {
        Objects.requireNonNull(effect, "effect");
        with = List.copyOf(with);
    }
}

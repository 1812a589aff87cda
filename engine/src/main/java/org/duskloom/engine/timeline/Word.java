package org.duskloom.engine.timeline;

import java.util.List;
import org.duskloom.engine.document.ValueKind;

/** One of the words that a field of a cue may hold. */
public interface Word {
    /** The word as it stands in the file. */
    String word();

    /** A field that holds one of the words of a choice. */
    static <E extends Enum<E> & Word> ValueKind<E> kind(Class<E> choice) {
        return ValueKind.Choice.of(List.of(choice.getEnumConstants()), Word::word);
    }
}

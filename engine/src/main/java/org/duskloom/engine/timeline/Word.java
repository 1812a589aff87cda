package org.duskloom.engine.timeline;

import java.util.Arrays;
import java.util.List;

/** One of the words that a field of a cue may hold. */
public interface Word {
    /** The word as it stands in the file. */
    String word();

    /** All words of a choice. */
    static <E extends Enum<E> & Word> List<String> allOf(Class<E> choice) {
        return Arrays.stream(choice.getEnumConstants()).map(Word::word).toList();
    }

    /** The member of the choice with this word, which must be one of its words. */
    static <E extends Enum<E> & Word> E find(Class<E> choice, String word) {
        return Arrays.stream(choice.getEnumConstants())
                .filter(member -> member.word().equals(word))
                .findFirst()
                .orElseThrow();
    }
}

package org.duskloom.engine.display;

import java.util.List;

/** Which way a step goes round. */
enum Turning {
    COUNTER_CLOCKWISE("counter-clockwise", 1),
    CLOCKWISE("clockwise", -1);

    private final String word;
    private final int sign;

    Turning(String word, int sign) {
        this.word = word;
        this.sign = sign;
    }

    /** 1 where degrees grow along the way, else -1. */
    int sign() {
        return sign;
    }

    static Turning of(String word) {
        return word.equals(CLOCKWISE.word) ? CLOCKWISE : COUNTER_CLOCKWISE;
    }

    static List<String> words() {
        return List.of(COUNTER_CLOCKWISE.word, CLOCKWISE.word);
    }
}

package org.duskloom.engine.display;

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

    /** The word that stands in the file. */
    String word() {
        return word;
    }
}

package org.duskloom.engine.find;

import java.util.Objects;

/**
 * A step of a run: what is lit does not change while it is held.
 *
 * @param kind what is lit
 * @param round of which round it is, from 0: with {@code apart} 4 the pixels take turns in four rounds; the blinks at
 *     the end belong to the last one
 * @param bit which bit of the words is shown, or which blink it is, from 0; 0 in other steps
 * @param startHalves when it begins, in halves of the time for which a step is held
 * @param halves how long it lasts: 1 for blinks and the pauses between them, 2 for all others
 */
public record FindStep(Kind kind, int round, int bit, int startHalves, int halves) {
    /** What is lit in a step. */
    public enum Kind {
        /** All pixels, so that a film can be cut there. */
        BLINK,
        /** Nothing, after a blink. */
        PAUSE,
        /** Nothing. */
        DARK,
        /** All pixels of the round. */
        LIT,
        /** Those pixels of the round whose bit is 1. */
        ONES,
        /** Those pixels of the round whose bit is 0. */
        ZEROS
    }

    public FindStep {
        Objects.requireNonNull(kind, "kind");
    }

    /** Whether a picture of it is read: all but blinks and pauses. */
    public boolean isPicture() {
        return kind != Kind.BLINK && kind != Kind.PAUSE;
    }
}

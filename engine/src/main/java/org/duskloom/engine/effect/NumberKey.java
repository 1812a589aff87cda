package org.duskloom.engine.effect;

import java.util.Objects;
import org.duskloom.engine.time.Easing;

/**
 * A value that a number has at a time.
 *
 * @param seconds from the start of the cue, or of the member where members start one after the other
 * @param value the number
 * @param easing how it gets there from the key before
 */
public record NumberKey(double seconds, double value, Easing easing) {
    public NumberKey {
        Objects.requireNonNull(easing, "easing");
    }
}

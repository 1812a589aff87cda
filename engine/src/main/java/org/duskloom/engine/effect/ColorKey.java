package org.duskloom.engine.effect;

import java.util.Objects;
import org.duskloom.engine.color.LinearColor;
import org.duskloom.engine.time.Easing;

/**
 * A colour at a time.
 *
 * @param seconds from the start of the cue, or of the member where members start one after the other
 * @param color the colour
 * @param easing how it gets there from the key before
 */
public record ColorKey(double seconds, LinearColor color, Easing easing) {
    public ColorKey {
        Objects.requireNonNull(color, "color");
        Objects.requireNonNull(easing, "easing");
    }
}

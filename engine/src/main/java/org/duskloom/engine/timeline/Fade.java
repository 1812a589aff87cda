package org.duskloom.engine.timeline;

import java.util.Objects;
import org.duskloom.engine.time.Easing;
import org.duskloom.engine.time.ExactTime;

/**
 * How a cue comes and goes; where it is staggered, how each of its members does, by the member's own clock.
 *
 * @param in from its start to full
 * @param out from full to its end
 * @param easing the course of both; going out mirrors coming in
 */
public record Fade(ExactTime in, ExactTime out, Easing easing) {
    /** There at once and gone at once. */
    static final Fade NONE = new Fade(ExactTime.ZERO, ExactTime.ZERO, Easing.LINEAR);

    public Fade {
        Objects.requireNonNull(in, "in");
        Objects.requireNonNull(out, "out");
        Objects.requireNonNull(easing, "easing");
    }

    /** Whether it is there at once and gone at once. */
    public boolean isNone() {
        return in.isZero() && out.isZero();
    }
}

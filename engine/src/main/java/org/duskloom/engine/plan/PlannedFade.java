package org.duskloom.engine.plan;

import org.duskloom.engine.time.Easing;
import org.duskloom.engine.timeline.Fade;

/**
 * How a cue comes and goes, in seconds. The two do not overlap. Where members start one after the other, each comes and
 * goes by its own clock; what a late member has not played when the cue ends is cut, its going too.
 *
 * @param inSeconds from its start to full
 * @param outSeconds from full to its end
 * @param easing the course of both
 */
record PlannedFade(double inSeconds, double outSeconds, Easing easing) {
    /** There at once and gone at once. */
    static final PlannedFade NONE = new PlannedFade(0, 0, Easing.LINEAR);

    static PlannedFade of(Fade fade) {
        return fade.isNone()
                ? NONE
                : new PlannedFade(fade.in().seconds(), fade.out().seconds(), fade.easing());
    }

    /** Whether it changes nothing. */
    boolean isNone() {
        return inSeconds <= 0 && outSeconds <= 0;
    }

    /** The share of the cue that is seen, 0 to 1. */
    double at(double seconds, double lengthSeconds) {
        if (seconds < inSeconds) {
            return clamped(easing.at(seconds / inSeconds));
        }
        double left = lengthSeconds - seconds;
        // What does not go has no end that counts: a layer of a scene has none.
        return outSeconds > 0 && left < outSeconds ? clamped(easing.at(left / outSeconds)) : 1;
    }

    private static double clamped(double share) {
        return Math.min(1, Math.max(0, share));
    }
}

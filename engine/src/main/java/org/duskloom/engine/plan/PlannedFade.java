package org.duskloom.engine.plan;

import org.duskloom.engine.time.Easing;

/**
 * How a cue comes and goes, in seconds. The two do not overlap. Where members start one after the other, each comes and goes
 * by its own clock; what a late member has not played when the cue ends is cut, its going too.
 *
 * @param inSeconds from its start to full
 * @param outSeconds from full to its end
 * @param easing the course of both
 */
record PlannedFade(double inSeconds, double outSeconds, Easing easing) {
    /** The share of the cue that is seen, 0 to 1. */
    double at(double seconds, double lengthSeconds) {
        if (seconds < inSeconds) {
            return clamped(easing.at(seconds / inSeconds));
        }
        double left = lengthSeconds - seconds;
        return left < outSeconds ? clamped(easing.at(left / outSeconds)) : 1;
    }

    private static double clamped(double share) {
        return Math.min(1, Math.max(0, share));
    }
}

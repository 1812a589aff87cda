package org.duskloom.engine.plan;

import org.duskloom.engine.time.Easing;

/**
 * How a cue comes and goes, in seconds.
 *
 * @param inSeconds from its start to full
 * @param outSeconds from full to its end
 * @param easing the course of both
 */
record PlannedFade(double inSeconds, double outSeconds, Easing easing) {
    /** The share of the cue that is seen, 0 to 1. */
    double at(double seconds, double lengthSeconds) {
        double share = 1;
        if (seconds < inSeconds) {
            share = clamped(easing.at(seconds / inSeconds));
        }
        double left = lengthSeconds - seconds;
        return left < outSeconds ? share * clamped(easing.at(left / outSeconds)) : share;
    }

    private static double clamped(double share) {
        return Math.min(1, Math.max(0, share));
    }
}

package org.duskloom.engine.plan;

import org.duskloom.engine.digest.FingerprintWriter;
import org.duskloom.engine.digest.Fingerprinted;
import org.duskloom.engine.effect.NumberTrack;

/**
 * How much is seen of what is played together: of a scene by the clock of the cue that plays it, or of a layer in a
 * scene.
 *
 * @param opacity over the time of the cue
 * @param fade how the cue comes and goes
 * @param clock seconds since its start
 * @param lengthSeconds how long it lasts
 */
record PlannedShare(NumberTrack opacity, PlannedFade fade, FrameClock clock, double lengthSeconds)
        implements Fingerprinted {
    /** The share in a frame, 0 to 1. */
    double at(long frame) {
        double seconds = Math.max(0, clock.secondsAt(frame));
        // An easing may overshoot between two keys.
        return Math.min(1, Math.max(0, opacity.at(seconds, clock.start().seconds()))) * fade.at(seconds, lengthSeconds);
    }

    @Override
    public void addTo(FingerprintWriter parts) {
        parts.value(opacity).number(fade.inSeconds()).number(fade.outSeconds()).value(fade.easing());
        parts.value(clock.start()).number(lengthSeconds);
    }
}

package org.duskloom.engine.effect;

/**
 * The instant that a brush paints, seen from the cue. Reused from frame to frame: a brush reads it in {@link
 * Brush#begin} and keeps nothing of it.
 */
public final class CueTime {
    private double seconds;
    private double lengthSeconds = 1;

    /** Time zero of a cue of one second. */
    public CueTime() {}

    /** Sets the instant. */
    public CueTime set(double secondsFromStart, double cueLengthSeconds) {
        seconds = secondsFromStart;
        lengthSeconds = cueLengthSeconds;
        return this;
    }

    /** Seconds since the cue began; where members start one after the other, since the member began. */
    public double seconds() {
        return seconds;
    }

    /** The cue's length in seconds, above zero. */
    public double lengthSeconds() {
        return lengthSeconds;
    }
}

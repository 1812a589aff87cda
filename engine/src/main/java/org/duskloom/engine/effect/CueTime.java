package org.duskloom.engine.effect;

/**
 * The instant that a brush paints, seen from the cue. Reused from frame to frame: a brush reads it in {@link
 * Brush#begin} and keeps nothing of it.
 */
public final class CueTime {
    private double seconds;
    private double lengthSeconds = 1;
    private double startSeconds;
    private long frame;
    private MusicClock music = MusicClock.NONE;

    /** Time zero of a cue of one second that starts with the show. */
    public CueTime() {}

    /** Sets an instant of a cue that starts with the show, which has no music. */
    public CueTime set(double secondsFromStart, double cueLengthSeconds) {
        return set(secondsFromStart, cueLengthSeconds, 0);
    }

    /** The same for a cue that starts at a time of the show. */
    public CueTime set(double secondsFromStart, double cueLengthSeconds, double cueStartSeconds) {
        seconds = secondsFromStart;
        lengthSeconds = cueLengthSeconds;
        startSeconds = cueStartSeconds;
        return this;
    }

    /**
     * Sets what beats are counted by.
     *
     * @param showFrame the frame that is painted
     */
    public CueTime hear(MusicClock clock, long showFrame) {
        music = clock;
        frame = showFrame;
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

    /** When the cue, or the member, began: seconds from the start of the show. */
    public double startSeconds() {
        return startSeconds;
    }

    /** The frame of the show. */
    public long frame() {
        return frame;
    }

    /** How many beats have gone by since the cue, or the member, began. */
    public double beats() {
        return music.beatsAt(frame);
    }

    /** How many bars have gone by since the cue, or the member, began. */
    public double bars() {
        return music.barsAt(frame);
    }

    /** What beats are counted by. */
    public MusicClock music() {
        return music;
    }
}

package org.duskloom.engine.plan;

import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Kernel;
import org.duskloom.engine.effect.MusicClock;

/** A kernel with the place of its pixels on the stage and the clock that it runs by. Immutable. */
public final class PlannedCanvas {
    private final Kernel kernel;
    private final PixelRuns runs;
    private final FrameClock clock;
    private final double startSeconds;
    private final MusicClock music;
    private final long firstFrame;
    private final int brush;

    /**
     * A canvas of a cue.
     *
     * @param clock seconds since the members of this canvas began
     * @param music the beats since then
     * @param firstFrame the first frame in which they are lit
     * @param brush the number of its brush within the plan
     */
    PlannedCanvas(Kernel kernel, PixelRuns runs, FrameClock clock, MusicClock music, long firstFrame, int brush) {
        this.kernel = kernel;
        this.runs = runs;
        this.clock = clock;
        this.startSeconds = clock.start().seconds();
        this.music = music;
        this.firstFrame = firstFrame;
        this.brush = brush;
    }

    /** What paints. */
    public Kernel kernel() {
        return kernel;
    }

    /** Where its pixels lie. */
    public PixelRuns runs() {
        return runs;
    }

    /** How many pixels it has. */
    public int pixelCount() {
        return runs.pixelCount();
    }

    /** The first frame in which its members are lit. */
    public long firstFrame() {
        return firstFrame;
    }

    /** The number of its brush within the plan. Canvases that are not seen at the same time may have the same. */
    public int brush() {
        return brush;
    }

    /**
     * The instant of a frame, as its brush sees it.
     *
     * @param time receives it
     */
    public CueTime at(long frame, double cueLengthSeconds, CueTime time) {
        return time.set(clock.secondsAt(frame), cueLengthSeconds, startSeconds).hear(music, frame);
    }

    /** When the members of this canvas begin, in seconds from the start of the show. */
    double startSeconds() {
        return startSeconds;
    }

    /** Seconds since the members of this canvas began. */
    public double secondsAt(long frame) {
        return clock.secondsAt(frame);
    }
}

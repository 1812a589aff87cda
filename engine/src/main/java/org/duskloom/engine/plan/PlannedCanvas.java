package org.duskloom.engine.plan;

import org.duskloom.engine.effect.Kernel;

/** A kernel with the place of its pixels on the stage and the clock that it runs by. Immutable. */
public final class PlannedCanvas {
    private final Kernel kernel;
    private final PixelRuns runs;
    private final FrameClock clock;
    private final long firstFrame;
    private final int index;

    /**
     * A canvas of a cue.
     *
     * @param clock seconds since the members of this canvas began
     * @param firstFrame the first frame in which they are lit
     * @param index the number of this canvas within the plan
     */
    PlannedCanvas(Kernel kernel, PixelRuns runs, FrameClock clock, long firstFrame, int index) {
        this.kernel = kernel;
        this.runs = runs;
        this.clock = clock;
        this.firstFrame = firstFrame;
        this.index = index;
    }

    /** What paints. */
    public Kernel kernel() {
        return kernel;
    }

    /** Where its pixels lie. */
    public PixelRuns runs() {
        return runs;
    }

    /** The first frame in which its members are lit. */
    public long firstFrame() {
        return firstFrame;
    }

    /** The number of this canvas within the plan. */
    public int index() {
        return index;
    }

    /** Seconds since the members of this canvas began. */
    public double secondsAt(long frame) {
        return clock.secondsAt(frame);
    }
}

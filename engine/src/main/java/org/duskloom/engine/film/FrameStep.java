package org.duskloom.engine.film;

import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.time.ExactTime;

/** How far the frames of a film are from each other. */
final class FrameStep {
    private FrameStep() {}

    /** In frames of the show; 1 for a single frame. */
    static long frames(FrameList frames) {
        return frames.step();
    }

    /** As a time. */
    static ExactTime time(RunInfo run) {
        return run.rate().timeOf(frames(run.frames()));
    }
}

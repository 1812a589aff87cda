package org.duskloom.engine.format;

import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.RunInfo;

/**
 * Sees to it that all frames of a run come one after the other: who reads bytes without numbers could not know
 * otherwise.
 */
final class Continuity {
    private final RunInfo run;
    private long arrived;

    /** @throws IllegalArgumentException if frames are left out from the start */
    Continuity(RunInfo run) {
        this.run = run;
        if (!run.frames().isSpan()) {
            throw new IllegalArgumentException(run.frames() + " leave frames out");
        }
    }

    /** @throws IllegalArgumentException if other frames come than those that are next */
    void check(FrameBatch frames) {
        long expected = run.frames().first() + arrived;
        if (frames.frame(0) != expected || frames.frameBytes() != run.frameBytes()) {
            throw new IllegalArgumentException("frame " + frames.frame(0) + " of " + frames.frameBytes()
                    + " bytes, expected " + expected + " of " + run.frameBytes());
        }
        arrived += frames.count();
    }

    /** @throws IllegalStateException if frames are missing at the end */
    void checkComplete() {
        if (arrived != run.frames().count()) {
            throw new IllegalStateException(
                    arrived + " frames of " + run.frames().count());
        }
    }
}

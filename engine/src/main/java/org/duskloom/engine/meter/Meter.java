package org.duskloom.engine.meter;

import java.io.IOException;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.RunInfo;

/**
 * Looks at every frame of a run once, in order, from one thread at a time. Its memory does not grow with the run,
 * or up to a bound only.
 *
 * @see MeterSink
 */
public interface Meter {
    /** Called once, before the first frame. */
    default void begin(RunInfo run) {}

    /**
     * Looks at a frame.
     *
     * @param frame its number in the show
     * @param rgb sRGB codes of all pixels in wiring order; not to be changed, and another frame's after the call
     * @param offset where they start
     */
    void frame(long frame, byte[] rgb, int offset);

    /** Looks at the frames of a batch, one after the other: see {@link #frame}. */
    default void take(FrameBatch frames) {
        for (int i = 0; i < frames.count(); i++) {
            frame(frames.frame(i), frames.rgb(), frames.offset(i));
        }
    }

    /**
     * Called once, after the last frame.
     *
     * @param source where the frames came from: some of them may be looked at again
     * @throws IOException if they cannot be had
     */
    default void finish(FrameSource source) throws IOException {}
}

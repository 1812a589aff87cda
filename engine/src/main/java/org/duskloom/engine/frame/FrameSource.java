package org.duskloom.engine.frame;

import java.io.IOException;

/**
 * Where frames come from: a plan that is rendered, a proof, a file of finished frames. Any frame can be had alone and
 * in any order, with the same bytes. Safe for use by several threads.
 */
public interface FrameSource {
    /** What the frames are: all of those that can be had. */
    RunInfo info();

    /**
     * A way to the frames for one thread.
     *
     * @throws IOException if they cannot be reached
     */
    FrameReader reader() throws IOException;

    /**
     * A way for one thread to a stretch of the pixels of frames, with the same bytes for these. Costs less than the way
     * to whole frames where they are rendered.
     *
     * @param firstPixel in wiring order, from 0
     * @param endPixel the pixel after the last of them
     * @return gives three bytes for each pixel of the stretch, and no others
     * @throws IOException if the frames cannot be reached
     */
    default FrameReader reader(int firstPixel, int endPixel) throws IOException {
        return new StretchReader(reader(), info().frameBytes(), firstPixel, endPixel);
    }
}

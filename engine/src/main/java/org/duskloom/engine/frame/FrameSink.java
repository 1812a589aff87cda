package org.duskloom.engine.frame;

import java.io.IOException;

/**
 * Takes finished frames, in rising order, from one thread at a time. A sink sees each frame once and may keep what it
 * likes of it, but not the array.
 *
 * <p>The life of a sink: {@link #frame} for each frame, then {@link #finish}, then {@link #close}. Closing without
 * having finished throws away what was begun, so that a failed run leaves no half-made result.
 */
public interface FrameSink extends AutoCloseable {
    /**
     * Takes one frame.
     *
     * @param frameNumber the frame's number in the timeline, from 0; greater than that of the frame before
     * @param rgb one byte each of red, green and blue for every pixel in wiring order, as sRGB code values; holds these
     *     values only during the call, and must not be changed
     * @throws IOException if the frame cannot be kept; the run then ends
     */
    void frame(long frameNumber, byte[] rgb) throws IOException;

    /**
     * Called once, after the last frame: makes the results final.
     *
     * @throws IOException if that cannot be done
     */
    void finish() throws IOException;

    /**
     * Throws away what is not finished, and frees what the sink holds. May be called more than once.
     *
     * @throws IOException if something cannot be put away
     */
    @Override
    void close() throws IOException;
}

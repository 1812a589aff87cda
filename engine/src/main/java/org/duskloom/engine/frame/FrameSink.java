package org.duskloom.engine.frame;

import java.io.IOException;

/**
 * Takes finished frames, in rising order, from one thread at a time. A sink sees each frame once. Several sinks of one
 * run work beside each other, each on a thread of its own; the slowest holds the others back.
 *
 * <p>The life of a sink: {@link #begin}, then {@link #take} for a few frames at a time, then {@link #finish}, then
 * {@link #close}. Closing without having finished throws away what was begun, so that a failed run leaves no half-made
 * result.
 *
 * <p>A sink that turns frames into other bytes before it writes them is an {@link EncodingSink}: that work is then
 * shared among the threads that render.
 */
public interface FrameSink extends AutoCloseable {
    /**
     * Called once, before the first frame of any sink of the run: the time to refuse what cannot be done.
     *
     * @throws IOException if the run cannot be kept; it then ends
     */
    default void begin(RunInfo run) throws IOException {}

    /**
     * Takes the next frames.
     *
     * @param frames hold their values only during the call, and must not be changed
     * @throws IOException if the frames cannot be kept; the run then ends
     */
    void take(FrameBatch frames) throws IOException;

    /** Takes one frame; see {@link #take}. */
    default void frame(long frameNumber, byte[] rgb) throws IOException {
        take(FrameBatch.of(frameNumber, rgb));
    }

    /**
     * Called once, after the last frame: completes the results.
     *
     * @throws IOException if that cannot be done
     */
    default void finish() throws IOException {}

    /**
     * Throws away what is not finished, and frees what the sink holds. May be called more than once.
     *
     * @throws IOException if something cannot be put away
     */
    @Override
    default void close() throws IOException {}
}

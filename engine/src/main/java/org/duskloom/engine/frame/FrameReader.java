package org.duskloom.engine.frame;

import java.io.IOException;

/** One thread's way to the frames of a source. Owns all the memory it needs, so that reading allocates nothing. */
@FunctionalInterface
public interface FrameReader extends AutoCloseable {
    /**
     * Gets one frame.
     *
     * @param frame its number in the show, from 0
     * @param rgb receives one byte each of red, green and blue for every pixel in wiring order, as sRGB code values
     * @param offset where in {@code rgb} the frame starts
     * @throws IOException if it cannot be had
     */
    void read(long frame, byte[] rgb, int offset) throws IOException;

    /** Frees what it holds. */
    @Override
    default void close() throws IOException {}
}

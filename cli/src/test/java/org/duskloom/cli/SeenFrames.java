package org.duskloom.cli;

import java.util.function.Consumer;
import org.duskloom.engine.frame.FrameSink;

/**
 * Shows every frame to a test.
 *
 * @param look is given the bytes, which hold during the call only
 */
record SeenFrames(Consumer<byte[]> look) implements FrameSink {
    @Override
    public void frame(long frameNumber, byte[] rgb) {
        look.accept(rgb);
    }

    @Override
    public void finish() {}

    @Override
    public void close() {}
}

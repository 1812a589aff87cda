package org.duskloom.cli;

import java.util.Arrays;
import java.util.function.Consumer;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.FrameSink;

/**
 * Shows every frame to a test.
 *
 * @param look is given the bytes
 */
record SeenFrames(Consumer<byte[]> look) implements FrameSink {
    @Override
    public void take(FrameBatch frames) {
        for (int i = 0; i < frames.count(); i++) {
            look.accept(Arrays.copyOfRange(frames.rgb(), frames.offset(i), frames.offset(i) + frames.frameBytes()));
        }
    }
}

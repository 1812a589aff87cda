package org.duskloom.engine.frame;

import java.io.IOException;

/**
 * A sink whose frames are first turned into other bytes: channel bytes, packets, compressed pieces. The encoding is
 * done on the threads that render, a few frames at a time and in any order, so it hangs on nothing but those frames and
 * what was known when the run began. The bytes come to the sink in the order of the frames, from one thread at a time.
 */
public interface EncodingSink extends FrameSink {
    /** An encoder for one thread. Called after {@link #begin}, once for each thread. */
    FrameEncoder encoder();

    /**
     * How many bytes it makes of a frame at most, where they are many more than those of the frame: fewer frames are
     * then under way at a time. Asked after {@link #begin}.
     */
    default long bytesPerFrame() {
        return 0;
    }

    /**
     * Whether its bytes hang on which frames are encoded together. How many these are does then not depend on how many
     * threads render.
     */
    default boolean hangsOnBatches() {
        return false;
    }

    /**
     * Takes the next frames, and the bytes that an encoder made of them.
     *
     * @param encoded holds these bytes only during the call
     * @throws IOException if they cannot be kept; the run then ends
     */
    void take(FrameBatch frames, EncodedBytes encoded) throws IOException;

    /** Encodes on the calling thread. */
    @Override
    default void take(FrameBatch frames) throws IOException {
        EncodedBytes encoded = new EncodedBytes();
        encoder().encode(frames, encoded);
        take(frames, encoded);
    }
}

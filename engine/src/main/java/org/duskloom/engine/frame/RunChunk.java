package org.duskloom.engine.frame;

import java.util.List;

/**
 * The memory for a few frames on their way: the frames, and what has been encoded of them for each sink that asks for
 * it.
 */
final class RunChunk {
    private final FrameBatch frames;
    private final EncodedBytes[] encoded;

    /** Whether all is rendered and encoded. Guarded by the run's state, as is the next. */
    boolean ready;

    /** How many sinks have not taken it yet. */
    int sinksLeft;

    RunChunk(FrameBatch frames, List<FrameSink> sinks) {
        this.frames = frames;
        this.encoded = new EncodedBytes[sinks.size()];
        for (int i = 0; i < encoded.length; i++) {
            encoded[i] = sinks.get(i) instanceof EncodingSink ? new EncodedBytes() : null;
        }
    }

    FrameBatch frames() {
        return frames;
    }

    /** What was encoded for the sink of that number. */
    EncodedBytes encoded(int sink) {
        return encoded[sink];
    }
}

package org.duskloom.engine.frame;

import java.io.IOException;
import java.util.List;

/** What one rendering thread works with: its way to the frames, and an encoder for each sink that asks for one. */
final class Worker {
    private final FrameReader reader;
    private final FrameEncoder[] encoders;

    Worker(FrameSource source, List<FrameSink> sinks) throws IOException {
        this.encoders = new FrameEncoder[sinks.size()];
        for (int i = 0; i < encoders.length; i++) {
            encoders[i] = sinks.get(i) instanceof EncodingSink encoding ? encoding.encoder() : null;
        }
        // Last: whatever fails before leaves no reader open.
        this.reader = source.reader();
    }

    /** Gets the frames of a chunk and encodes them; stops early when the run has failed. */
    void fill(RunChunk chunk, RunState state) throws IOException {
        FrameBatch frames = chunk.frames();
        for (int i = 0; i < frames.count() && !state.hasFailed(); i++) {
            reader.read(frames.frame(i), frames.rgb(), frames.offset(i));
        }
        for (int i = 0; i < encoders.length && !state.hasFailed(); i++) {
            if (encoders[i] != null) {
                EncodedBytes encoded = chunk.encoded(i);
                encoded.clear();
                encoders[i].encode(frames, encoded);
            }
        }
    }

    void close() throws IOException {
        reader.close();
    }
}

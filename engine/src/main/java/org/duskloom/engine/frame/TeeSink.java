package org.duskloom.engine.frame;

import java.io.IOException;
import java.util.List;

/** Hands each frame to several sinks, one after the other: one rendering, many results. */
public final class TeeSink implements FrameSink {
    private final List<FrameSink> sinks;

    /** @param sinks the sinks, in the order in which they get each frame and are finished; closed by this one */
    public TeeSink(List<? extends FrameSink> sinks) {
        this.sinks = List.copyOf(sinks);
    }

    @Override
    public void frame(long frameNumber, byte[] rgb) throws IOException {
        for (FrameSink sink : sinks) {
            sink.frame(frameNumber, rgb);
        }
    }

    @Override
    public void finish() throws IOException {
        for (FrameSink sink : sinks) {
            sink.finish();
        }
    }

    /** Closes every sink, even if one of them fails to. */
    @Override
    public void close() throws IOException {
        IOException first = null;
        for (FrameSink sink : sinks) {
            try {
                sink.close();
            } catch (IOException fault) {
                if (first == null) {
                    first = fault;
                } else {
                    first.addSuppressed(fault);
                }
            }
        }
        if (first != null) {
            throw first;
        }
    }
}

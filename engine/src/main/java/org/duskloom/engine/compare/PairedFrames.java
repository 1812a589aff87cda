package org.duskloom.engine.compare;

import java.io.IOException;
import java.util.List;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.time.FrameSpan;

/** Frames of two sources, each one behind the other in one: the first has the first pixels. */
public final class PairedFrames implements FrameSource {
    private final FrameSource first;
    private final FrameSource second;
    private final FrameSpan frames;

    /** @param frames some that both have */
    public PairedFrames(FrameSource first, FrameSource second, FrameSpan frames) {
        this.first = first;
        this.second = second;
        this.frames = frames;
    }

    @Override
    public RunInfo info() {
        int pixels = Math.addExact(first.info().pixelCount(), second.info().pixelCount());
        return new RunInfo(
                "",
                first.info().rate(),
                FrameList.of(frames),
                frames.endFrameExclusive(),
                FramePixels.unnamed(pixels),
                List.of());
    }

    @Override
    public FrameReader reader() throws IOException {
        FrameReader one = first.reader();
        try {
            return new Reader(one, second.reader(), first.info().frameBytes());
        } catch (IOException | RuntimeException fault) {
            one.close();
            throw fault;
        }
    }

    private record Reader(FrameReader first, FrameReader second, int firstBytes) implements FrameReader {
        @Override
        public void read(long frame, byte[] rgb, int offset) throws IOException {
            first.read(frame, rgb, offset);
            second.read(frame, rgb, offset + firstBytes);
        }

        @Override
        public void close() throws IOException {
            try (second) {
                first.close();
            }
        }
    }
}

package org.duskloom.engine.compare;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.time.FrameSpan;

/**
 * Differences as light, of the pixels that are compared: what is the same is black, and a colour that differs by a
 * single code can be seen already. A frame shows the largest differences of several, so that a picture that leaves
 * frames out hides none.
 */
public final class DifferenceFrames implements FrameSource {
    /** Less than this is hard to tell from black. */
    private static final int LEAST_LIGHT = 72;

    private final PairedFrames pair;
    private final Comparison comparison;
    private final int firstBytes;
    private final String title;
    private final long framesTogether;
    private final int pixelBytes;

    /**
     * Differences of two renderings.
     *
     * @param firstPixels how many pixels a frame of the first rendering has
     * @param title what stands over the picture
     * @param framesTogether how many frames, from the one that is read on, are shown in one
     */
    public DifferenceFrames(
            PairedFrames pair, Comparison comparison, int firstPixels, String title, long framesTogether) {
        this.pair = pair;
        this.comparison = comparison;
        this.firstBytes = 3 * firstPixels;
        this.title = title;
        this.framesTogether = framesTogether;
        this.pixelBytes = 3 * comparison.pixelCount();
    }

    @Override
    public RunInfo info() {
        FrameSpan frames = comparison.frames();
        FramePixels pixels = new FramePixels(comparison.pixelCount(), comparison.spans(), Optional.empty());
        return new RunInfo(
                title, pair.info().rate(), FrameList.of(frames), frames.endFrameExclusive(), pixels, List.of());
    }

    @Override
    public FrameReader reader() throws IOException {
        return new Reader(pair.reader(), new byte[pair.info().frameBytes()]);
    }

    /** Light of a difference. */
    private static int light(int codes) {
        return codes == 0 ? 0 : LEAST_LIGHT + codes * (255 - LEAST_LIGHT) / 255;
    }

    private final class Reader implements FrameReader {
        private final FrameReader reader;
        private final byte[] both;

        Reader(FrameReader reader, byte[] both) {
            this.reader = reader;
            this.both = both;
        }

        @Override
        public void read(long frame, byte[] rgb, int offset) throws IOException {
            int bytes = pixelBytes;
            Arrays.fill(rgb, offset, offset + bytes, (byte) 0);
            long end = Math.min(frame + framesTogether, comparison.frames().endFrameExclusive());
            for (long next = frame; next < end; next++) {
                reader.read(next, both, 0);
                addTo(rgb, offset);
            }
        }

        private void addTo(byte[] rgb, int offset) {
            int to = offset;
            for (Comparison.Pair prop : comparison.props()) {
                int first = 3 * prop.first();
                int second = firstBytes + 3 * prop.second();
                for (int i = 0; i < 3 * prop.count(); i++, to++) {
                    int codes = Math.abs((both[first + i] & 0xFF) - (both[second + i] & 0xFF));
                    rgb[to] = (byte) Math.max(rgb[to] & 0xFF, light(codes));
                }
            }
        }

        @Override
        public void close() throws IOException {
            reader.close();
        }
    }
}

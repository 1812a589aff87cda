package org.duskloom.engine.frame;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.duskloom.engine.map.Positions;

/** Frames of which only some pixels are wanted. */
public final class ChosenPixels implements FrameSource {
    private final FrameSource all;
    private final int[] pixels;
    private final RunInfo info;

    /**
     * Some pixels of every frame.
     *
     * @param all the whole frames
     * @param pixels which pixels, by their place in the whole frames, rising, at least one
     * @throws IllegalArgumentException if they do not rise, or a frame has none of that place
     */
    public ChosenPixels(FrameSource all, int[] pixels) {
        this.all = all;
        this.pixels = pixels.clone();
        RunInfo whole = all.info();
        for (int i = 0; i < pixels.length; i++) {
            if (i > 0 && pixels[i] <= pixels[i - 1]) {
                throw new IllegalArgumentException("pixel " + pixels[i] + " after " + pixels[i - 1]);
            }
            if (pixels[i] < 0 || pixels[i] >= whole.pixelCount()) {
                throw new IllegalArgumentException("pixel " + pixels[i] + " of " + whole.pixelCount());
            }
        }
        FramePixels chosen = new FramePixels(
                pixels.length, props(whole.pixels()), whole.pixels().places().map(this::places));
        this.info = new RunInfo(whole.title(), whole.rate(), whole.frames(), whole.showFrames(), chosen, whole.steps());
    }

    @Override
    public RunInfo info() {
        return info;
    }

    @Override
    public FrameReader reader() throws IOException {
        return new Reader(all.reader(pixels[0], pixels[pixels.length - 1] + 1));
    }

    private Positions places(Positions whole) {
        return new Positions(picked(whole::x), picked(whole::y), picked(whole::z));
    }

    private double[] picked(IntToDoubleFunction coordinate) {
        return Arrays.stream(pixels).mapToDouble(coordinate).toArray();
    }

    private List<PropSpan> props(FramePixels whole) {
        List<PropSpan> chosen = new ArrayList<>();
        for (PropSpan prop : whole.props()) {
            int from = firstAtOrAfter(prop.firstPixel());
            int to = firstAtOrAfter(prop.firstPixel() + prop.pixelCount());
            if (to > from) {
                chosen.add(new PropSpan(prop.name(), from, to - from));
            }
        }
        return chosen;
    }

    private int firstAtOrAfter(int pixel) {
        int found = Arrays.binarySearch(pixels, pixel);
        return found < 0 ? -found - 1 : found;
    }

    /** Reads from the first to the last of them and keeps some. */
    private final class Reader implements FrameReader {
        private final FrameReader stretch;
        private final byte[] frame;

        Reader(FrameReader stretch) {
            this.stretch = stretch;
            this.frame = new byte[3 * (pixels[pixels.length - 1] + 1 - pixels[0])];
        }

        @Override
        public void read(long frameNumber, byte[] rgb, int offset) throws IOException {
            stretch.read(frameNumber, frame, 0);
            for (int i = 0; i < pixels.length; i++) {
                int from = 3 * (pixels[i] - pixels[0]);
                rgb[offset + 3 * i] = frame[from];
                rgb[offset + 3 * i + 1] = frame[from + 1];
                rgb[offset + 3 * i + 2] = frame[from + 2];
            }
        }

        @Override
        public void close() throws IOException {
            stretch.close();
        }
    }
}

package org.duskloom.engine.render;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.plan.Plan;

/** Renders frames in tests, and says what is expected of them. */
final class Frames {
    private Frames() {}

    /** One frame, rendered alone. */
    static byte[] frame(Plan plan, long frame) {
        byte[] rgb = new byte[3 * plan.pixelCount()];
        new FramePainter(plan).render(frame, rgb, 0);
        return rgb;
    }

    /** Red, green and blue of a pixel, 0 to 255. */
    static int[] codes(byte[] rgb, int pixel) {
        return new int[] {rgb[3 * pixel] & 0xFF, rgb[3 * pixel + 1] & 0xFF, rgb[3 * pixel + 2] & 0xFF};
    }

    /** The code of linear light by the formula of IEC 61966-2-1, rounded to the nearest. */
    static int code(double linear) {
        double encoded = linear <= 0.0031308 ? 12.92 * linear : 1.055 * StrictMath.pow(linear, 1 / 2.4) - 0.055;
        return (int) Math.round(255 * encoded);
    }

    /** The codes of linear red, green and blue. */
    static int[] codesOf(double red, double green, double blue) {
        return new int[] {code(red), code(green), code(blue)};
    }

    /** Keeps copies of what it is handed. */
    static class Kept implements FrameSink {
        final List<Long> numbers = new ArrayList<>();
        final List<byte[]> frames = new ArrayList<>();

        @Override
        public void take(FrameBatch batch) throws IOException {
            for (int i = 0; i < batch.count(); i++) {
                int from = batch.offset(i);
                keep(batch.frame(i), Arrays.copyOfRange(batch.rgb(), from, from + batch.frameBytes()));
            }
        }

        /** Keeps one frame. */
        void keep(long frameNumber, byte[] rgb) throws IOException {
            numbers.add(frameNumber);
            frames.add(rgb);
        }

        @Override
        public void close() {
            throw new AssertionError("a run closes no sink");
        }
    }
}

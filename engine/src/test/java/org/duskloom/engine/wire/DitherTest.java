package org.duskloom.engine.wire;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.duskloom.engine.color.Srgb;
import org.junit.jupiter.api.Test;

/**
 * Levels between two bytes, shown by turns of the two. The bounds follow from the sum of the closed form, which
 * telescopes: over N frames the bytes add up to N x but for less than 1.
 */
class DitherTest {
    private static final Signal SIGNAL = Signal.USUAL;

    /** What rounding a level to 24 bits behind the point may add, over N frames. */
    private static final double LEVEL_ERROR = 0x1p-25;

    @Test
    void meanOfEveryLevelIsExactWithinOneNth() {
        byte[] rgb = grays();
        PortEncoder encoder = encoder(256);
        for (int frames : new int[] {1, 2, 7, 40, 1000}) {
            for (long first : new long[] {0, 123_457, 10_000_000_000L}) {
                long[] sums = new long[256 * 3];
                for (int n = 0; n < frames; n++) {
                    int[] sent = Lines.unsigned(Lines.encode(encoder, first + n, rgb));
                    Arrays.setAll(sums, i -> sums[i] + sent[i]);
                }
                for (int i = 0; i < sums.length; i++) {
                    double mean = (double) sums[i] / frames;
                    assertThat(Math.abs(mean - exact(i / 3))).isLessThan(1.0 / frames + LEVEL_ERROR);
                }
            }
        }
    }

    @Test
    void noByteIsOffByAWholeStep() {
        PortEncoder encoder = encoder(256);
        for (long frame = 0; frame < 500; frame++) {
            int[] sent = Lines.unsigned(Lines.encode(encoder, frame, grays()));
            for (int i = 0; i < sent.length; i++) {
                assertThat(Math.abs(sent[i] - exact(i / 3))).isLessThan(1);
            }
        }
    }

    /** A whole number of bytes does not flicker: black and full light above all. */
    @Test
    void wholeLevelsStand() {
        PortEncoder encoder = encoder(2);
        for (long frame = 0; frame < 300; frame++) {
            assertThat(Lines.encode(encoder, frame, Lines.bytes(0, 0, 0, 255, 255, 255)))
                    .containsExactly(0, 0, 0, -1, -1, -1);
        }
    }

    /** Of 4000 independent pairs, Pearson's r is off 0 by less than 0.08 but for one case in two million (5 sigma). */
    @Test
    void neighboursAreNotCorrelated() {
        int pixels = 4001;
        byte[] rgb = new byte[3 * pixels];
        Arrays.fill(rgb, (byte) 20);
        PortEncoder encoder = encoder(pixels);
        for (long frame = 0; frame < 20; frame++) {
            int[] sent = Lines.unsigned(Lines.encode(encoder, frame, rgb));
            double[] red =
                    IntStream.range(0, pixels).mapToDouble(i -> sent[3 * i]).toArray();
            double[] green =
                    IntStream.range(0, pixels).mapToDouble(i -> sent[3 * i + 1]).toArray();
            int last = pixels - 1;
            assertThat(correlation(Arrays.copyOf(red, last), Arrays.copyOfRange(red, 1, pixels)))
                    .isBetween(-0.08, 0.08);
            assertThat(correlation(red, green)).isBetween(-0.08, 0.08);
        }
    }

    /** Neither another port nor another place on the line changes how a pixel is dithered. */
    @Test
    void dependsOnTheFrameAndThePixelAlone() {
        byte[] rgb = grays();
        PortEncoder whole = encoder(256);
        PortEncoder rest = new PortEncoder(
                Lines.port("right", SIGNAL, 9, 4, Lines.dark(3), Lines.pixels(100, 256)), Lines.fence(256));
        for (long frame : new long[] {7, 3, 4, 3_000_000_000L}) {
            byte[] all = Lines.encode(whole, frame, rgb);
            byte[] part = Lines.encode(rest, frame, rgb);
            assertThat(Arrays.copyOfRange(part, 9, part.length)).isEqualTo(Arrays.copyOfRange(all, 300, 768));
            assertThat(Arrays.copyOf(part, 9)).containsOnly(0);
        }
    }

    private static PortEncoder encoder(int pixels) {
        return new PortEncoder(Lines.port("left", SIGNAL, 1, 1, Lines.pixels(0, pixels)), Lines.fence(pixels));
    }

    private static double exact(int code) {
        return 255 * Srgb.decode(code / 255.0);
    }

    private static byte[] grays() {
        return Lines.bytes(IntStream.range(0, 768).map(i -> i / 3).toArray());
    }

    private static double correlation(double[] a, double[] b) {
        double meanA = Arrays.stream(a).average().orElseThrow();
        double meanB = Arrays.stream(b).average().orElseThrow();
        double ab = 0;
        double aa = 0;
        double bb = 0;
        for (int i = 0; i < a.length; i++) {
            ab += (a[i] - meanA) * (b[i] - meanB);
            aa += (a[i] - meanA) * (a[i] - meanA);
            bb += (b[i] - meanB) * (b[i] - meanB);
        }
        return ab / Math.sqrt(aa * bb);
    }
}

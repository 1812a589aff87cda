package org.duskloom.engine.meter.light;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.duskloom.engine.frame.FramePixels;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Changes of one light, frame by frame, beside the plainest way: every colour against every colour of its second. */
class ChromaticSwingsTest {
    private static final int RATE = 20;

    /** Saturated reds, their edge, and what lies about as far from them as counts (0.2 in u'v' of CIE 15). */
    private static final int[] ENDS = {
        0xFF0000, 0x460000, 0xFF8800, 0xFF8900, 0xFF4588, 0xFF6347, 0xFF0080, 0xFFA500, 0xFFC000, 0xFFD000, 0xFFE000,
        0xFF8080, 0xFF9090, 0xFF60A0, 0xFF70C0, 0xFFFFFF, 0x000000, 0x0D0000
    };

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void findsWhatThePlainestWayFinds(long seed) {
        Random random = new Random(seed);
        int changes = 0;
        for (int light = 0; light < 300; light++) {
            int[] colors = colors(random, 1 + random.nextInt(2 * RATE));
            List<Integer> plain = plain(colors);
            assertThat(found(colors, true)).isEqualTo(plain);
            assertThat(found(colors, false)).isEqualTo(plain);
            changes += plain.size();
        }
        assertThat(changes).as("changes of all lights").isGreaterThan(500);
    }

    /**
     * What is known of the colours since a red says nothing of the next red: 255,0,255 is 0.1801 from 255,90,90 and
     * 0.2103 from 255,135,0, and the third is 0.1054 and 0.0681 from these reds, by the matrix of WCAG 2.2.
     */
    @Test
    void comparesANewRedWithAllSinceTheLast() {
        assertThat(found(new int[] {0xFF5A5A, 0xFF00FF, 0xFFB487, 0xFF8700}, true))
                .containsExactly(3);
    }

    /** Fades from one of {@link #ENDS} to the next, that tremble by a few codes. */
    private static int[] colors(Random random, int longestFade) {
        int[] colors = new int[12 * RATE];
        int from = ENDS[random.nextInt(ENDS.length)];
        int frame = 0;
        while (frame < colors.length) {
            int to = ENDS[random.nextInt(ENDS.length)];
            int length = 1 + random.nextInt(longestFade);
            for (int gone = 1; gone <= length && frame < colors.length; gone++) {
                colors[frame++] = trembling(from, to, gone / (double) length, random);
            }
            from = to;
        }
        return colors;
    }

    private static int trembling(int from, int to, double share, Random random) {
        int color = 0;
        for (int shift = 0; shift < 24; shift += 8) {
            int start = from >> shift & 0xFF;
            int end = to >> shift & 0xFF;
            int code = (int) Math.round(start + (end - start) * share) + random.nextInt(5) - 2;
            color |= Math.max(0, Math.min(255, code)) << shift;
        }
        return color;
    }

    private static List<Integer> plain(int[] colors) {
        List<double[]> linear = new ArrayList<>();
        for (int color : colors) {
            linear.add(PlainFlashes.linear(color));
        }
        return PlainFlashes.chromaticRed(linear, RATE);
    }

    /** @param always whether it is asked also of colours of which it need not be */
    private static List<Integer> found(int[] colors, boolean always) {
        PastColors past = new PastColors(SignalLayout.of(FramePixels.unnamed(1)), RATE);
        ChromaticSwings swings = new ChromaticSwings(1, past);
        List<Integer> changes = new ArrayList<>();
        double[] color = new double[3];
        for (int place = 0; place < colors.length; place++) {
            byte[] rgb = {(byte) (colors[place] >> 16), (byte) (colors[place] >> 8), (byte) colors[place]};
            past.keep(place, rgb, 0);
            past.read(0, place, color);
            boolean red = Chroma.isSaturatedRed(color);
            if ((always || red || place == 0 || swings.isWatched(0, place - 1)) && swings.step(0, place, color, red)) {
                changes.add(place);
            }
        }
        return changes;
    }
}

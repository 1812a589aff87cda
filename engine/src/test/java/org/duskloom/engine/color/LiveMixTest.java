package org.duskloom.engine.color;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LiveMixTest {
    /**
     * {@link ColorMix#OKLAB}, which is checked against the web platform tests, goes another way: through the
     * coordinates of OKLab rather than the cube roots.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            navy                   | gold                  | 0
            navy                   | gold                  | 0.25
            black                  | white                 | 0.5
            tomato                 | transparent           | 0.5
            rgb(10 200 90 / 0.25)  | rgb(250 20 240 / 0.8) | 0.7
            rgb(10 200 90 / 0.25)  | rgb(250 20 240 / 0.8) | 1
            transparent            | transparent           | 0.3
            """)
    void mixesInOkLab(String from, String to, double share) {
        float[] colors = new float[12];
        put(Codes.css(from), colors);
        float[] others = new float[12];
        put(Codes.css(to), others);

        double[] roots = new double[2 * LiveMix.ROOTS];
        LiveMix.fillRoots(colors, 4, roots, 0);
        LiveMix.fillRoots(others, 4, roots, LiveMix.ROOTS);
        LiveMix.fill(roots, 0, colors[7] * (1 - share), roots, LiveMix.ROOTS, others[7] * share, colors, 4);

        LinearColor wanted = ColorMix.OKLAB.mix(Codes.css(from), Codes.css(to), share);
        float[] wantedFloats = new float[12];
        put(wanted, wantedFloats);
        assertThat(colors[7]).isCloseTo(wantedFloats[7], within(1e-6f));
        for (int i = 4; i < 7; i++) {
            assertThat(colors[i] * colors[7]).isCloseTo(wantedFloats[i] * wantedFloats[7], within(2e-6f));
        }
        assertThat(colors[3]).isZero();
        assertThat(colors[8]).isZero();
    }

    private static void put(LinearColor color, float[] target) {
        target[4] = color.red();
        target[5] = color.green();
        target[6] = color.blue();
        target[7] = color.alpha();
    }
}

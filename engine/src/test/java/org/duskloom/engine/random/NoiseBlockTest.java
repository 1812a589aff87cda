package org.duskloom.engine.random;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** K. Perlin, "Improving Noise", SIGGRAPH 2002, and his reference implementation. */
final class NoiseBlockTest {
    private final NoiseBlock block = new NoiseBlock();

    /** The first value is that of the Rosetta Code task "Perlin noise"; the others are computed from the reference. */
    @ParameterizedTest
    @CsvSource({
        "3.14, 42, 7, 0.13691995878400012",
        "-4.2, 10, 6, 0.14208000000000043",
        "0.5, 0.5, 0.5, -0.25",
        "0.1, 0.1, 0.1, 0.1861607143544832",
        "0.25, 0.75, 0.5, -0.16791534423828125",
        "256.5, 0.5, 0.5, -0.25",
        "-0.5, 0.5, 0.5, -0.25"
    })
    void givesTheReferenceValues(double x, double y, double z, double noise) {
        long below = (long) Math.floor(z);
        block.x[0] = x;
        block.y[0] = y;
        block.wholeZ[0] = below;
        block.compute(new GradientNoise(0), 1);
        double f = z - below;
        double near = block.values[0] + block.slopes[0] * f;
        double far = block.nextValues[0] + block.nextSlopes[0] * (f - 1);
        assertThat(near + GradientNoise.fade(f) * (far - near)).isCloseTo(noise, within(2e-7));
    }

    /**
     * The very floats that the noise gives by itself, however many points of a block lie in one cell, whatever noise
     * came before. Steps are of all sizes, so that runs in a cell are short and long, and planes go by both ways.
     */
    @ParameterizedTest
    @CsvSource({"1, 0.5", "2, 3", "63, 0.1", "64, 0.1", "100, 0.03", "512, 0.002", "512, 0.3", "511, 40"})
    void givesTheFloatsOfThePlanes(int count, double step) {
        SplitMix64 random = new SplitMix64(13);
        float[][] wanted = new float[4][count];
        for (int round = 0; round < 100; round++) {
            GradientNoise noise = new GradientNoise(11 + round % 3);
            double x = -round;
            double y = 0.7 * round;
            for (int i = 0; i < count; i++) {
                x += step * (random.nextDouble() - 0.5);
                y += step * (random.nextDouble() - 0.5);
                block.x[i] = x;
                block.y[i] = y;
                block.wholeZ[i] = round - 10 + (random.nextDouble() < step / 10 ? 1 : 0);
                noise.plane(x, y, block.wholeZ[i], i, wanted[0], wanted[1]);
                noise.plane(x, y, block.wholeZ[i] + 1, i, wanted[2], wanted[3]);
            }
            block.compute(noise, count);
            assertThat(Arrays.copyOf(block.values, count)).containsExactly(wanted[0]);
            assertThat(Arrays.copyOf(block.slopes, count)).containsExactly(wanted[1]);
            assertThat(Arrays.copyOf(block.nextValues, count)).containsExactly(wanted[2]);
            assertThat(Arrays.copyOf(block.nextSlopes, count)).containsExactly(wanted[3]);
        }
    }
}

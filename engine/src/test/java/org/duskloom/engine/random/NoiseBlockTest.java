package org.duskloom.engine.random;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

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

    /** Points on a short way that starts somewhere, in the plane given. */
    private void place(double x, double y, double step, long plane, int count) {
        for (int i = 0; i < count; i++) {
            block.x[i] = x + i * step;
            block.y[i] = y - i * step / 3;
            block.wholeZ[i] = plane;
        }
    }

    private float[][] shown(int count) {
        return new float[][] {
            Arrays.copyOf(block.values, count),
            Arrays.copyOf(block.slopes, count),
            Arrays.copyOf(block.nextValues, count),
            Arrays.copyOf(block.nextSlopes, count)
        };
    }

    /** By the definition, the noise is 0 at every whole point. */
    @ParameterizedTest
    @ValueSource(ints = {1, 63, 64, 512})
    void isZeroAtWholePoints(int count) {
        place(-7, 300, 3, 41, count);
        block.compute(new GradientNoise(99), count);
        for (int i = 0; i < count; i++) {
            // 0 with either sign.
            assertThat(Math.abs(shown(count)[0][i])).isEqualTo(0);
            assertThat(Math.abs(shown(count)[2][i]))
                    .as("point %s in the plane above", i)
                    .isEqualTo(0);
        }
    }

    /** The table has 256 places along each axis, and then it begins anew: steps of 1/32 and shifts of 256 are exact. */
    @ParameterizedTest
    @CsvSource({"256, 0, 0", "0, -256, 0", "0, 0, 256", "512, 256, -768"})
    void repeatsAfterItsPeriod(double right, double up, long planes) {
        GradientNoise noise = new GradientNoise(5);
        place(0.25, 7.5, 3 / 32.0, 9, 200);
        block.compute(noise, 200);
        float[][] before = shown(200);
        place(0.25 + right, 7.5 + up, 3 / 32.0, 9 + planes, 200);
        block.compute(noise, 200);
        assertThat(shown(200)).isDeepEqualTo(before);
    }

    /** The plane above is the one below for those who stand one higher: light does not jump as planes go by. */
    @Test
    void handsOnThePlaneAbove() {
        GradientNoise noise = new GradientNoise(6);
        place(0.1, 0.9, 0.01, 3, 300);
        block.compute(noise, 300);
        float[][] below = shown(300);
        place(0.1, 0.9, 0.01, 4, 300);
        block.compute(noise, 300);
        assertThat(shown(300)[0]).containsExactly(below[2]);
        assertThat(shown(300)[1]).containsExactly(below[3]);
    }

    /** However far away, and however little below a whole number, where the rest is rounded to 1. */
    @ParameterizedTest
    @ValueSource(doubles = {1e9 + 0.3, -1e9 - 0.7, 1e15, -1e-20, 0, -0.0, 255.99999999999997})
    void staysFiniteAnywhere(double place) {
        GradientNoise noise = new GradientNoise(7);
        float[][] wanted = new float[4][100];
        for (int count : new int[] {1, 100}) {
            place(place, place, 0, -300, count);
            block.compute(noise, count);
            for (int i = 0; i < count; i++) {
                noise.plane(place, place, -300, i, wanted[0], wanted[1]);
                noise.plane(place, place, -299, i, wanted[2], wanted[3]);
                for (int plane = 0; plane < 4; plane++) {
                    assertThat(shown(count)[plane][i])
                            .isEqualTo(wanted[plane][i])
                            .isBetween(-2f, 2f);
                }
            }
        }
    }
}

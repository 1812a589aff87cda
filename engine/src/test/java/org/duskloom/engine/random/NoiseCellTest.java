package org.duskloom.engine.random;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** K. Perlin, "Improving Noise", SIGGRAPH 2002, and his reference implementation. */
final class NoiseCellTest {
    private final NoiseCell cell = new NoiseCell();
    private final float[] values = new float[2];
    private final float[] slopes = new float[2];

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
        fill(new GradientNoise(0), x, y, below);
        double f = z - below;
        double near = values[0] + slopes[0] * f;
        double far = values[1] + slopes[1] * (f - 1);
        assertThat(near + GradientNoise.fade(f) * (far - near)).isCloseTo(noise, within(2e-7));
    }

    /**
     * The very floats that the noise gives by itself, from cell to cell and noise to noise: frames must not depend on
     * who came before. Steps are small, so that many points share a cell, and planes go by both ways.
     */
    @Test
    void givesTheFloatsOfThePlanes() {
        GradientNoise[] noises = {new GradientNoise(11), new GradientNoise(12)};
        SplitMix64 random = new SplitMix64(13);
        double x = 0;
        double y = 0;
        float[] wantedValues = new float[2];
        float[] wantedSlopes = new float[2];
        for (int i = 0; i < 20_000; i++) {
            GradientNoise noise = noises[random.nextDouble() < 0.1 ? 1 : 0];
            long plane = (long) (random.nextDouble() * 1.05 - 0.05) + i / 1000 - 10;
            x += random.nextDouble() - 0.5;
            y += random.nextDouble() - 0.5;

            fill(noise, x, y, plane);

            noise.plane(x, y, plane, 0, wantedValues, wantedSlopes);
            noise.plane(x, y, plane + 1, 1, wantedValues, wantedSlopes);
            assertThat(values).containsExactly(wantedValues);
            assertThat(slopes).containsExactly(wantedSlopes);
        }
    }

    private void fill(GradientNoise noise, double x, double y, long plane) {
        cell.go(noise, x, y, plane);
        cell.near(0, values, slopes);
        cell.next(1, values, slopes);
    }
}

package org.duskloom.engine.random;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** K. Perlin, "Improving Noise", SIGGRAPH 2002, and his reference implementation. */
final class GradientNoiseTest {
    private static final GradientNoise REFERENCE = new GradientNoise(0);

    /** The first value is that of the Rosetta Code task "Perlin noise"; the others are computed from the reference. */
    @ParameterizedTest
    @CsvSource({
        "3.14, 42, 7, 0.13691995878400012",
        "-4.2, 10, 6, 0.14208000000000043",
        "0.5, 0.5, 0.5, -0.25",
        "0.1, 0.1, 0.1, 0.1861607143544832",
        "0.25, 0.75, 0.5, -0.16791534423828125",
        "10.5, 20.25, 30.125, 0.19576995819807053",
        "256.5, 0.5, 0.5, -0.25",
        "-0.5, 0.5, 0.5, -0.25",
        "0, 0, 0, 0",
        "-3, 17, 256, 0"
    })
    void givesTheReferenceValues(double x, double y, double z, double noise) {
        assertThat(REFERENCE.at(x, y, z)).isCloseTo(noise, within(1e-15));
    }

    /** The same published values, put together from the two planes on both sides; the parts are rounded to floats. */
    @ParameterizedTest
    @CsvSource({
        "3.14, 42, 7, 0.13691995878400012",
        "-4.2, 10, 6, 0.14208000000000043",
        "0.5, 0.5, 0.5, -0.25",
        "0.1, 0.1, 0.1, 0.1861607143544832",
        "0.25, 0.75, 0.5, -0.16791534423828125",
        "10.5, 20.25, 30.125, 0.19576995819807053",
        "256.5, 0.5, 0.5, -0.25",
        "-0.5, 0.5, 0.5, -0.25"
    })
    void givesTheReferenceValuesFromPlanes(double x, double y, double z, double noise) {
        assertThat(fromPlanes(REFERENCE, x, y, z)).isCloseTo(noise, within(2e-7));
    }

    @Test
    void planesGiveTheNoiseBetweenThem() {
        GradientNoise noise = new GradientNoise(11);
        SplitMix64 random = new SplitMix64(12);
        for (int i = 0; i < 1000; i++) {
            double x = random.nextDouble() * 600 - 300;
            double y = random.nextDouble() * 600 - 300;
            double z = random.nextDouble() * 600 - 300;

            assertThat(fromPlanes(noise, x, y, z)).isCloseTo(noise.at(x, y, z), within(5e-7));
        }
    }

    private static double fromPlanes(GradientNoise noise, double x, double y, double z) {
        float[] values = new float[2];
        float[] slopes = new float[2];
        long below = (long) Math.floor(z);
        noise.plane(x, y, below, 0, values, slopes);
        noise.plane(x, y, below + 1, 1, values, slopes);
        double f = z - below;
        double near = values[0] + slopes[0] * f;
        double far = values[1] + slopes[1] * (f - 1);
        return near + GradientNoise.fade(f) * (far - near);
    }

    /** 6t^5 - 15t^4 + 10t^3, worked for t = 3/4: 6*243/1024 - 15*81/256 + 10*27/64 = 0.896484375. */
    @Test
    void fadesAsPublished() {
        assertThat(GradientNoise.fade(0.75)).isEqualTo(0.896484375);
        assertThat(GradientNoise.fade(0)).isZero();
        assertThat(GradientNoise.fade(1)).isEqualTo(1);
    }

    /** The CRC-32 of the 256 bytes of the published table. */
    @Test
    void holdsThePublishedTable() {
        CRC32 crc = new CRC32();
        for (int i = 0; i < 256; i++) {
            crc.update(NoiseTable.permuted(i));
        }

        assertThat(crc.getValue()).isEqualTo(0x249d1776L);
        assertThat(NoiseTable.permuted(256)).isEqualTo(NoiseTable.permuted(0));
        assertThat(NoiseTable.permuted(-1)).isEqualTo(NoiseTable.permuted(255));
    }

    /**
     * The choice of gradient as the reference implementation words it: bits of the hash pick two axes and two signs.
     */
    @Test
    void choosesGradientsAsPublished() {
        double x = 0.3;
        double y = -0.7;
        double z = 0.11;
        for (int hash = 0; hash < 256; hash++) {
            int h = hash & 15;
            double u = h < 8 ? x : y;
            double v = h < 4 ? y : h == 12 || h == 14 ? x : z;
            double expected = ((h & 1) == 0 ? u : -u) + ((h & 2) == 0 ? v : -v);

            assertThat(NoiseTable.gradient(hash, x, y, z)).isEqualTo(expected);
        }
    }

    @Test
    void planeIsTheSliceThroughSpace() {
        SplitMix64 random = new SplitMix64(5);
        for (long seed : new long[] {0, 1, -77}) {
            GradientNoise noise = new GradientNoise(seed);
            for (int i = 0; i < 1000; i++) {
                double x = random.nextDouble() * 600 - 300;
                double y = random.nextDouble() * 600 - 300;

                assertThat(noise.at(x, y)).isEqualTo(noise.at(x, y, 0));
            }
        }
    }

    /**
     * A seed moves the reference by whole steps, so both have the same values, at places that differ by whole steps.
     */
    @Test
    void seedsMoveTheReferenceByWholeSteps() {
        long offsets = SplitMix64.mix(9);
        GradientNoise moved = new GradientNoise(9);
        SplitMix64 random = new SplitMix64(6);
        for (int i = 0; i < 1000; i++) {
            double x = eighths(random);
            double y = eighths(random);
            double z = eighths(random);

            assertThat(moved.at(x, y, z))
                    .isEqualTo(
                            REFERENCE.at(x + (offsets & 255), y + (offsets >>> 8 & 255), z + (offsets >>> 16 & 255)));
        }
        assertThat(moved.at(0.3, 0.4, 0.5)).isNotEqualTo(REFERENCE.at(0.3, 0.4, 0.5));
    }

    /** Follows from the algorithm: 0 at whole points, a period of 256, and no jump from one cell to the next. */
    @Test
    void isPeriodicAndContinuous() {
        GradientNoise noise = new GradientNoise(3);
        SplitMix64 random = new SplitMix64(8);
        for (int i = 0; i < 1000; i++) {
            double x = eighths(random);
            double y = eighths(random);
            double whole = Math.floor(x);

            assertThat(noise.at(whole, Math.floor(y), -5)).isZero();
            assertThat(noise.at(x + 256, y - 256, 0.5)).isEqualTo(noise.at(x, y, 0.5));
            assertThat(noise.at(Math.nextDown(whole), y, 0.5)).isCloseTo(noise.at(whole, y, 0.5), within(1e-9));
            assertThat(noise.at(x, y, 0.5)).isBetween(-1.1, 1.1);
        }
    }

    @Test
    void staysFiniteFarOut() {
        assertThat(REFERENCE.at(1e300, -1e300, 1e18)).isZero();
        assertThat(REFERENCE.at(-1e300, 4e18)).isZero();
    }

    private static double eighths(SplitMix64 random) {
        return Math.floor(random.nextDouble() * 4096) / 8 - 256;
    }
}

package org.duskloom.engine.sound.music;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** The discrete Fourier transform as any text on signals has it: X[k] = sum x[n] exp(-2 pi i k n / N). */
class FourierTest {
    @Test
    void transformsFourNumbersAsOnPaper() {
        double[][] parts = {{1, 2, 3, 4}, {0, 0, 0, 0}};
        Fourier.transform(parts);
        assertThat(parts[0]).containsExactly(new double[] {10, -2, -2, -2}, within(1e-12));
        assertThat(parts[1]).containsExactly(new double[] {0, 2, 0, -2}, within(1e-12));
    }

    /** cos(2 pi 3 n / 16) has |X| = 8 at 3 and 13; under a periodic Hann window 2, 4, 2 at 2, 3, 4. */
    @Test
    void findsACosine() {
        double[][] parts = new double[2][16];
        double[] cosine = new double[16];
        for (int n = 0; n < 16; n++) {
            cosine[n] = Math.cos(2 * Math.PI * 3 * n / 16);
            parts[0][n] = cosine[n];
        }
        Fourier.transform(parts);
        for (int k = 0; k < 16; k++) {
            assertThat(Math.hypot(parts[0][k], parts[1][k])).isCloseTo(k == 3 || k == 13 ? 8 : 0, within(1e-12));
        }
        double[] power = new double[9];
        new Fourier(16).power(cosine, new double[16], 0, power);
        double[] expected = {0, 0, 4, 16, 4, 0, 0, 0, 0};
        assertThat(power).containsExactly(expected, within(1e-12));
    }

    /** The periodic Hann window of 16: its sum is 8, that of its squares 6. */
    @Test
    void windowHasTheSumsOfTheBooks() {
        double[] window = Fourier.hann(16);
        assertThat(Arrays.stream(window).sum()).isCloseTo(8, within(1e-12));
        assertThat(Arrays.stream(window).map(w -> w * w).sum()).isCloseTo(6, within(1e-12));
    }

    /** Two signals at once give the sum of their powers, whatever they have to do with each other. */
    @Test
    void sumsThePowersOfTwoSignals() {
        double[] x = new double[64];
        double[] y = new double[64];
        for (int n = 0; n < 64; n++) {
            x[n] = Math.sin(0.7 * n) + 0.3 * Math.cos(1.9 * n);
            y[n] = -0.8 * Math.sin(0.7 * n) + 0.1 * n % 3;
        }
        double[] none = new double[64];
        double[] both = new double[33];
        double[] first = new double[33];
        double[] second = new double[33];
        Fourier fourier = new Fourier(64);
        fourier.power(x, y, 0, both);
        fourier.power(x, none, 0, first);
        fourier.power(none, y, 0, second);
        for (int k = 0; k <= 32; k++) {
            assertThat(both[k]).isCloseTo(first[k] + second[k], within(1e-9));
        }
    }

    /** Parseval: the sum of squares is that of the transform over N. Any size that is a power of two. */
    @Test
    void keepsThePower() {
        double[][] parts = new double[2][512];
        double sum = 0;
        for (int n = 0; n < 512; n++) {
            parts[0][n] = (n * 37 % 101 - 50) / 50.0;
            sum += parts[0][n] * parts[0][n];
        }
        Fourier.transform(parts);
        double transformed = 0;
        for (int k = 0; k < 512; k++) {
            transformed += parts[0][k] * parts[0][k] + parts[1][k] * parts[1][k];
        }
        assertThat(transformed / 512).isCloseTo(sum, within(1e-9));
    }

    /** The library adds and multiplies by numbers that are written in it: these are its bits on every JDK. */
    @Test
    void givesTheSameBitsEverywhere() {
        double[][] parts = new double[2][1024];
        for (int n = 0; n < 1024; n++) {
            parts[0][n] = (n * 7919 % 1009 - 504) / 504.0;
        }
        Fourier.transform(parts);
        long bits = 17;
        for (int k = 0; k < 1024; k++) {
            bits = 31 * bits + Double.doubleToLongBits(parts[0][k]);
            bits = 31 * bits + Double.doubleToLongBits(parts[1][k]);
        }
        assertThat(Long.toHexString(bits)).isEqualTo("b61ceeb46f0766f1");
    }
}

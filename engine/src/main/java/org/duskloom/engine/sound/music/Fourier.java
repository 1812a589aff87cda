package org.duskloom.engine.sound.music;

import org.hipparchus.transform.DftNormalization;
import org.hipparchus.transform.FastFourierTransformer;
import org.hipparchus.transform.TransformType;

/**
 * The power of two real signals by one complex transform, X[k] = sum x[n] exp(-2 pi i k n / N), each under a periodic
 * Hann window. The library's factors are written down in it, and it only adds and multiplies: the same bits everywhere.
 */
final class Fourier {
    private final int size;
    private final double[] window;
    private final double[][] parts;

    /** @param size how many samples are taken at once, a power of two */
    Fourier(int size) {
        this.size = size;
        this.window = hann(size);
        this.parts = new double[2][size];
    }

    static double[] hann(int size) {
        double[] window = new double[size];
        for (int i = 0; i < size; i++) {
            window[i] = 0.5 - 0.5 * StrictMath.cos(2 * Math.PI * i / size);
        }
        return window;
    }

    /** Transforms in place; rows are real and imaginary parts. */
    static void transform(double[][] parts) {
        FastFourierTransformer.transformInPlace(parts, DftNormalization.STANDARD, TransformType.FORWARD);
    }

    /**
     * The summed power of both signals.
     *
     * @param from where in them the window begins
     * @param power |X|^2 + |Y|^2 for bins 0 to half the size
     */
    void power(double[] x, double[] y, int from, double[] power) {
        double[] real = parts[0];
        double[] imaginary = parts[1];
        for (int i = 0; i < size; i++) {
            real[i] = x[from + i] * window[i];
            imaginary[i] = y[from + i] * window[i];
        }
        transform(parts);
        // Z = X + iY of real x and y: |X|^2 + |Y|^2 at k is the mean of |Z|^2 at k and at N - k.
        for (int k = 0; k <= size / 2; k++) {
            int mirrored = (size - k) & (size - 1);
            power[k] = (real[k] * real[k]
                            + imaginary[k] * imaginary[k]
                            + real[mirrored] * real[mirrored]
                            + imaginary[mirrored] * imaginary[mirrored])
                    / 2;
        }
    }
}

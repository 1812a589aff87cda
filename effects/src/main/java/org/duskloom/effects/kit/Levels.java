package org.duskloom.effects.kit;

/** Arithmetic of levels, pixel by pixel. */
public final class Levels {
    private Levels() {}

    /**
     * The greater of a number and 0: the bits of {@code Math.max(0f, value)} for all finite numbers up to 1e38. A loop
     * spends three instructions on it, where the compiler of JDK 17 spends seven on those of {@link Math}, most of them
     * for numbers that are none.
     */
    static float aboveZero(float value) {
        return (value + Math.abs(value)) * 0.5f;
    }

    /**
     * The lesser of a number and 1: the bits of {@code Math.min(1f, value)} for all finite numbers below 2^24, -0 too.
     * Four instructions in place of six.
     */
    static float belowOne(float value) {
        return value - aboveZero(value - 1f);
    }

    /**
     * A number, or 0 or 1 where it is beyond them: the bits of {@code Math.min(1f, Math.max(0f, value))} for all finite
     * numbers below 2^24.
     */
    public static float clipped(float value) {
        return belowOne(aboveZero(value));
    }

    /** Multiplies one plane by another. */
    public static void multiply(float[] plane, float[] by, int from, int to) {
        for (int i = from; i < to; i++) {
            plane[i] *= by[i];
        }
    }

    /** The product of a plane and a number: {@code target = source * factor}. */
    public static void scale(float[] source, float factor, int from, int to, float[] target) {
        for (int i = from; i < to; i++) {
            target[i] = source[i] * factor;
        }
    }

    /** The product of two planes and a number: {@code target = source * by * factor}. */
    static void scaledProduct(float[] source, float[] by, float factor, int from, int to, float[] target) {
        for (int i = from; i < to; i++) {
            target[i] = source[i] * by[i] * factor;
        }
    }
}

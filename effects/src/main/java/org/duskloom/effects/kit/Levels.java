package org.duskloom.effects.kit;

/** Products of levels, pixel by pixel. */
public final class Levels {
    private Levels() {}

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

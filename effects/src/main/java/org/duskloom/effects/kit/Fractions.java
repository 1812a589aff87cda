package org.duskloom.effects.kit;

/** Numbers modulo 1, for planes of floats. */
public final class Fractions {
    /** 1.5 * 2^23: a sum with it keeps no digits behind the point, so it rounds to the nearest whole number. */
    private static final float ROUNDER = 12_582_912f;

    /** Makes a step of a slope: whatever is above 0 by more than 2^-127 becomes at least 1. */
    private static final float STEEP = 3e38f;

    /** With a half itself, every other whole number would be rounded down. */
    private static final float ALMOST_HALF = 0.5f - 0x1p-22f;

    private static final float BELOW_ONE = 0x1.fffffep-1f;

    private Fractions() {}

    /**
     * The fraction of a straight line's values: {@code target = frac(scale * source + offset)}, in [0, 1), exactly 0 at
     * whole numbers.
     *
     * @param source its values times the scale plus the offset must stay within ±2^21
     * @param target may be the source
     */
    public static void ofLine(float[] source, float scale, float offset, int from, int to, float[] target) {
        for (int i = from; i < to; i++) {
            float value = source[i] * scale + offset;
            float rest = value - ((value + ROUNDER) - ROUNDER);
            float oneIfBelow = Math.min(1f, Math.max(0f, rest * -STEEP));
            target[i] = Math.min(BELOW_ONE, rest + oneIfBelow);
        }
    }

    /**
     * The fraction of sums: {@code target = frac(source + offset)}, in [0, 1), exactly 0 at whole numbers. Cheaper than
     * {@link #ofLine}, for patterns that only move. What lies less than 2^-21 below a whole number may count as 0.
     *
     * @param source in [0, 1]
     * @param offset in [-1, 1]
     * @param target may be the source
     */
    public static void ofSum(float[] source, float offset, int from, int to, float[] target) {
        for (int i = from; i < to; i++) {
            float sum = source[i] + offset;
            target[i] = Levels.aboveZero(sum - (((sum - ALMOST_HALF) + ROUNDER) - ROUNDER));
        }
    }

    /**
     * The whole number that {@link #ofSum} takes away: -1, 0, 1 or 2. It never falls when the source grows.
     *
     * @param source in [0, 1]
     * @param offset in [-1, 1]
     */
    public static int wholeOfSum(float source, float offset) {
        float sum = source + offset;
        return (int) (((sum - ALMOST_HALF) + ROUNDER) - ROUNDER);
    }
}

package org.duskloom.effects.kit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Products of numbers that are exact in binary, in the cells from 1 to 3 of five. */
class LevelsTest {
    private static final float[] BY = {9, 0.5f, 0, 0.25f, 9};

    @Test
    void multipliesInPlace() {
        float[] plane = {1, 0.5f, 0.75f, 1, 1};
        Levels.multiply(plane, BY, 1, 4);
        assertThat(plane).containsExactly(1, 0.25f, 0, 0.25f, 1);
    }

    /** A plane by itself is squared. */
    @Test
    void canMultiplyAPlaneByItself() {
        float[] plane = {0.5f, 0.75f};
        Levels.multiply(plane, plane, 0, 2);
        assertThat(plane).containsExactly(0.25f, 0.5625f);
    }

    @Test
    void scales() {
        float[] target = {7, 7, 7, 7, 7};
        Levels.scale(BY, 0.5f, 1, 4, target);
        assertThat(target).containsExactly(7, 0.25f, 0, 0.125f, 7);
    }

    @Test
    void scalesAProduct() {
        float[] target = {7, 7, 7, 7, 7};
        Levels.scaledProduct(new float[] {9, 1, 1, 0.5f, 9}, BY, 0.5f, 1, 4, target);
        assertThat(target).containsExactly(7, 0.25f, 0, 0.0625f, 7);
    }

    @Test
    void doesNothingToNoCells() {
        float[] plane = {3, 4};
        Levels.multiply(plane, BY, 1, 1);
        Levels.scale(BY, 2, 2, 2, plane);
        assertThat(plane).containsExactly(3, 4);
    }

    /** The bits of Math.max, for every 97th float up to 1e38, its negative and both zeros. */
    @Test
    void findsTheGreaterOfANumberAndZero() {
        assertThat(Levels.aboveZero(-0f)).isEqualTo(0f);
        for (int bits = 0; bits < Float.floatToRawIntBits(1e38f); bits += 97) {
            float value = Float.intBitsToFloat(bits);
            if (Levels.aboveZero(value) != value || Float.floatToRawIntBits(Levels.aboveZero(-value)) != 0) {
                assertThat(value).as("the first float that is wrong").isNaN();
            }
        }
    }

    /** The bits of Math.min, for every 97th float from 0 to 2^24, and near 1 for each; the same below 0. */
    @Test
    void findsTheLesserOfANumberAndOne() {
        for (int bits = 0; bits < Float.floatToRawIntBits(0x1p24f); bits += 97) {
            assertBelowOne(Float.intBitsToFloat(bits));
        }
        int one = Float.floatToRawIntBits(1f);
        for (int bits = one - 10_000; bits < one + 10_000; bits++) {
            assertBelowOne(Float.intBitsToFloat(bits));
        }
    }

    private static void assertBelowOne(float value) {
        if (!isLeast(value) || !isLeast(-value)) {
            assertThat(value).as("the first float that is wrong").isNaN();
        }
    }

    /** The bits of both, one after the other. */
    @Test
    void clips() {
        for (float value : new float[] {-3, -1e-9f, -0f, 0, 1e-40f, 0.3f, Math.nextDown(1f), 1, Math.nextUp(1f), 77}) {
            int bits = Float.floatToRawIntBits(Math.min(1f, Math.max(0f, value)));
            assertThat(Float.floatToRawIntBits(Levels.clipped(value))).isEqualTo(bits);
        }
    }

    private static boolean isLeast(float value) {
        return Float.floatToRawIntBits(Levels.belowOne(value)) == Float.floatToRawIntBits(Math.min(1f, value));
    }
}

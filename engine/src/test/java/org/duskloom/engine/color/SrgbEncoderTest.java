package org.duskloom.engine.color;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;

/** IEC 61966-2-1:1999: a code is 255 * encode(light), rounded to the nearest whole number, halves up. */
final class SrgbEncoderTest {
    private static final int ONE_BITS = Float.floatToRawIntBits(1f);

    /**
     * Decided without any power: on the curve light >= decode(v) holds exactly where light^5 >= ((v + 0.055) /
     * 1.055)^12, since the exponent 2.4 is 12/5; on the straight piece where 12.92 * light >= v. Both sides are exact
     * decimals, but for a quotient to 200 digits.
     */
    @Test
    void everyCodeStartsAtTheExactFloat() {
        for (int code = 1; code <= 255; code++) {
            float first = firstFloatOf(code);

            assertThat(reaches(first, code)).as("code %d at %s", code, first).isTrue();
            assertThat(reaches(Math.nextDown(first), code))
                    .as("below code %d", code)
                    .isFalse();
            assertThat(SrgbEncoder.code(first)).isEqualTo(code);
            assertThat(SrgbEncoder.code(Math.nextDown(first))).isEqualTo(code - 1);
        }
    }

    @Test
    void agreesWithTheFormulaRoundEveryThreshold() {
        for (int code = 1; code <= 255; code++) {
            int bits = Float.floatToRawIntBits(firstFloatOf(code));
            for (int near = bits - 500; near <= Math.min(bits + 500, ONE_BITS); near++) {
                assertFormula(near);
            }
        }
    }

    /** The first and last two floats of every cell of 2^16 floats, and one in 1009 of all between 0 and 1. */
    @Test
    void agreesWithTheFormulaEverywhere() {
        for (int cell = 0; cell < ONE_BITS; cell += 1 << 16) {
            assertFormula(cell);
            assertFormula(cell + 1);
            assertFormula(cell + 0xFFFE);
            assertFormula(cell + 0xFFFF);
        }
        for (int bits = 0; bits <= ONE_BITS; bits += 1009) {
            assertFormula(bits);
        }
    }

    @Test
    void clampsWhatIsNotLight() {
        for (float dark : new float[] {0f, -0f, Float.MIN_VALUE, -1f, -1e30f, Float.NEGATIVE_INFINITY, Float.NaN}) {
            assertThat(SrgbEncoder.code(dark)).isZero();
        }
        assertThat(SrgbEncoder.code(Float.intBitsToFloat(0xFFC00001))).isZero();
        for (float bright : new float[] {1f, Math.nextDown(1f), 1.5f, 1e30f, Float.POSITIVE_INFINITY}) {
            assertThat(SrgbEncoder.code(bright)).isEqualTo(255);
        }
    }

    @Test
    void encodesARunOfPixels() {
        float[] red = {0, 1, -1e-8f, 9};
        float[] green = {0.5f, 0.18f, -0f, 9};
        float[] blue = {0.05f, 0.001f, 1.99f, 9};
        byte[] rgb = new byte[13];
        rgb[1] = 77;
        rgb[11] = 77;

        SrgbEncoder.encode(red, green, blue, 3, rgb, 2);

        assertThat(rgb).containsExactly(0, 77, 0, 188, 63, 255, 118, 3, 0, 0, 255, 77, 0);
    }

    /** Runs of every length and remainder, of all brightnesses and beyond, like one value after the other. */
    @Test
    void aPlaneIsEncodedLikeItsValues() {
        float[] values = {-1e30f, -1, -0f, 0, 1e-9f, 1e-4f, 0.003f, 0.02f, 0.5f, Math.nextDown(1f), 1, 2, 1e30f};
        for (int count = 0; count <= values.length; count++) {
            byte[] rgb = new byte[3 * count];
            SrgbEncoder.encode(values, values, values, count, rgb, 0);
            for (int i = 0; i < rgb.length; i++) {
                assertThat(rgb[i]).isEqualTo((byte) SrgbEncoder.code(values[i / 3]));
            }
        }
    }

    /** From a pixel within the planes on, to a place within the bytes; nothing else is read or written. */
    @Test
    void stretchesOfAPlaneAreEncodedLikeItsValues() {
        float[] values = {9, 9, 0.5f, 0.25f, 0.001f, 1, 0.02f, 0.75f, 0.1f, 9};
        for (int to = 2; to < 10; to++) {
            byte[] rgb = new byte[32];
            SrgbEncoder.encode(values, values, values, 2, to, rgb, 4);
            for (int i = 0; i < rgb.length; i++) {
                boolean isWritten = i >= 4 && i < 4 + 3 * (to - 2);
                assertThat(rgb[i]).isEqualTo((byte) (isWritten ? SrgbEncoder.code(values[2 + (i - 4) / 3]) : 0));
            }
        }
    }

    @Test
    void clampsSingleValues() {
        assertThat(SrgbEncoder.code(-1)).isZero();
        assertThat(SrgbEncoder.code(Float.NaN)).isZero();
        assertThat(SrgbEncoder.code(Float.POSITIVE_INFINITY)).isEqualTo(255);
    }

    @Test
    void encodesNoPixels() {
        float[] none = {};
        byte[] rgb = {5};

        SrgbEncoder.encode(none, none, none, 0, rgb, 0);

        assertThat(rgb).containsExactly(5);
        assertThatThrownBy(() -> SrgbEncoder.encode(none, none, none, 1, rgb, 0))
                .isInstanceOf(IndexOutOfBoundsException.class);
        assertThatThrownBy(() -> SrgbEncoder.encode(new float[2], new float[2], new float[2], 2, new byte[5], 0))
                .isInstanceOf(IndexOutOfBoundsException.class);
    }

    private static void assertFormula(int bits) {
        float linear = Float.intBitsToFloat(bits);
        int expected = (int) Math.floor(255 * Srgb.encode(linear) + 0.5);
        if (SrgbEncoder.code(linear) != expected) {
            assertThat(SrgbEncoder.code(linear)).as("code of %s", linear).isEqualTo(expected);
        }
    }

    private static float firstFloatOf(int code) {
        int below = 0;
        int at = ONE_BITS;
        while (at - below > 1) {
            int middle = (below + at) >>> 1;
            if (SrgbEncoder.code(Float.intBitsToFloat(middle)) >= code) {
                at = middle;
            } else {
                below = middle;
            }
        }
        return Float.intBitsToFloat(at);
    }

    /** Whether the light is so strong that its encoded value is at least (code - 1/2) / 255. */
    private static boolean reaches(float linear, int code) {
        BigDecimal light = new BigDecimal(linear);
        MathContext digits = new MathContext(200, RoundingMode.HALF_EVEN);
        BigDecimal encoded = new BigDecimal(2 * code - 1).divide(new BigDecimal(510), digits);
        if (light.compareTo(new BigDecimal("0.0031308")) <= 0) {
            return light.multiply(new BigDecimal("12.92")).compareTo(encoded) >= 0;
        }
        BigDecimal base = encoded.add(new BigDecimal("0.055")).divide(new BigDecimal("1.055"), digits);
        return light.pow(5).compareTo(base.pow(12, digits)) >= 0;
    }
}

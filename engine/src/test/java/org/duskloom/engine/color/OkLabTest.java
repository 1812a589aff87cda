package org.duskloom.engine.color;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** B. Ottosson, "A perceptual color space for image processing", 2020; matrices of W3C CSS Color Module Level 4. */
final class OkLabTest {
    /**
     * The table "XYZ to Oklab" of Ottosson's article, three decimals (from memory), and the values of CSS's matrices.
     */
    @ParameterizedTest
    @CsvSource({
        "0.950, 1.000, 1.089, 1.000,  0.000,  0.000, 0.99996987, -0.00023626,  0.00000815",
        "1,     0,     0,     0.450,  1.236, -0.019, 0.44993671,  1.23575838, -0.01898192",
        "0,     1,     0,     0.922, -0.671,  0.263, 0.92181569, -0.67121128,  0.26340028",
        "0,     0,     1,     0.153, -1.415, -0.449, 0.15259691, -1.41508760, -0.44881898"
    })
    void followsTheArticle(
            double x, double y, double z, double l3, double a3, double b3, double lightness, double a, double b) {
        Matrix3 cones = OkMatrices.CONES_FROM_XYZ;
        double l = StrictMath.cbrt(cones.first(x, y, z));
        double m = StrictMath.cbrt(cones.second(x, y, z));
        double s = StrictMath.cbrt(cones.third(x, y, z));
        Matrix3 lab = OkMatrices.LAB_FROM_CUBE_ROOTS;

        assertThat(lab.first(l, m, s)).isCloseTo(l3, within(5e-4)).isCloseTo(lightness, within(1e-8));
        assertThat(lab.second(l, m, s)).isCloseTo(a3, within(5e-4)).isCloseTo(a, within(1e-8));
        assertThat(lab.third(l, m, s)).isCloseTo(b3, within(5e-4)).isCloseTo(b, within(1e-8));
    }

    /** White in XYZ as the color.js tests list it, and the exact rationals of CSS Color 4. */
    @Test
    void whiteIsD65() {
        Matrix3 xyz = OkMatrices.XYZ_FROM_RGB;

        assertThat(xyz.first(1, 1, 1)).isCloseTo(0.9504559270516717, within(1e-15));
        assertThat(xyz.second(1, 1, 1)).isCloseTo(1, within(1e-15));
        assertThat(xyz.third(1, 1, 1)).isCloseTo(1.0890577507598784, within(1e-15));
        assertThat(xyz.second(1, 0, 0)).isCloseTo(0.2126390059, within(1e-10));
        assertThat(xyz.second(0, 1, 0)).isCloseTo(0.7151686788, within(1e-10));
        assertThat(xyz.second(0, 0, 1)).isCloseTo(0.0721923154, within(1e-10));
    }

    /**
     * Computed with CSS's matrices; the color.js tests (test/conversions.js, tolerance 1e-4) list the same for white,
     * the primaries and the secondaries. Chroma is sqrt(a^2 + b^2), hue atan2(b, a); the hue of a grey means nothing.
     */
    @ParameterizedTest
    @CsvSource({
        "white, 1, 0, 0, 0, ",
        "red, 0.627955364, 0.224863068, 0.125846277, 0.25768330, 29.233880",
        "lime, 0.866439618, -0.233887581, 0.179498445, 0.29482722, 142.49535",
        "blue, 0.452013718, -0.032456975, -0.311528166, 0.31321439, 264.05202",
        "yellow, 0.967982727, -0.071369083, 0.198569718, 0.21100587, 109.76924",
        "cyan, 0.905399236, -0.149443944, -0.039398192, 0.15455002, 194.76896",
        "magenta, 0.701673859, 0.274566306, -0.169156084, 0.32249099, 328.36342",
        "#808080, 0.599870806, 0, 0, 0, ",
        "orange, 0.792688436, 0.056611201, 0.161384520, 0.17102570, 70.669916",
        "rebeccapurple, 0.440271796, 0.088176761, -0.133864357, 0.16029600, 303.37299"
    })
    void convertsColors(String color, double lightness, double a, double b, double chroma, Double hueDegrees) {
        LinearColor linear = Codes.css(color);
        OkLab lab = OkLab.of(linear);
        OkLch lch = OkLch.of(lab);

        assertThat(lab.lightness()).isCloseTo(lightness, within(1e-7));
        assertThat(lab.a()).isCloseTo(a, within(1e-7));
        assertThat(lab.b()).isCloseTo(b, within(1e-7));
        assertThat(lch.chroma()).isCloseTo(chroma, within(1e-7));
        assertThat(lch.isHuePowerless()).isEqualTo(hueDegrees == null);
        if (hueDegrees != null) {
            assertThat(lch.hueDegrees()).isCloseTo(hueDegrees, within(1e-4));
        }
    }

    @Test
    void comesBackFromEveryHue() {
        for (int red = 0; red <= 255; red += 15) {
            for (int green = 0; green <= 255; green += 15) {
                for (int blue = 0; blue <= 255; blue += 15) {
                    LinearColor color = LinearColor.ofCodes(red, green, blue);
                    OkLab lab = OkLab.of(color);

                    assertClose(lab.toRgb(), LinearRgb.of(color));
                    assertClose(OkLch.of(lab).toLab().toRgb(), LinearRgb.of(color));
                    assertThat(Codes.of(lab.toLinear(1))).isEqualTo(red + "," + green + "," + blue);
                }
            }
        }
    }

    /** The inverse matrices of CSS Color 4 are inverse to the ones they stand beside. */
    @Test
    void matricesAreInverse() {
        Matrix3 unit = OkMatrices.RGB_FROM_CONES.after(OkMatrices.CONES_FROM_RGB);
        Matrix3 labUnit = OkMatrices.CUBE_ROOTS_FROM_LAB.after(OkMatrices.LAB_FROM_CUBE_ROOTS);
        for (Matrix3 matrix : new Matrix3[] {unit, labUnit}) {
            assertThat(matrix.m00()).isCloseTo(1, within(1e-13));
            assertThat(matrix.m11()).isCloseTo(1, within(1e-13));
            assertThat(matrix.m22()).isCloseTo(1, within(1e-13));
            assertThat(Math.abs(matrix.m01()) + Math.abs(matrix.m02()) + Math.abs(matrix.m10()))
                    .isCloseTo(0, within(1e-13));
            assertThat(Math.abs(matrix.m12()) + Math.abs(matrix.m20()) + Math.abs(matrix.m21()))
                    .isCloseTo(0, within(1e-13));
        }
    }

    /** Beyond sRGB: a green of much chroma has negative red and blue light, which are clipped to none. */
    @Test
    void clipsWhatCannotBeShown() {
        OkLab vivid = new OkLch(0.8, 0.4, 142).toLab();

        assertThat(vivid.toRgb().red()).isNegative();
        assertThat(vivid.toLinear(1).red()).isZero();
        assertThat(vivid.toLinear(2).alpha()).isEqualTo(1);
        assertThat(new OkLab(3, 0, 0).toLinear(1)).isEqualTo(LinearColor.WHITE);
        assertThat(new OkLab(Double.NaN, 0, 0).toLinear(1)).isEqualTo(LinearColor.BLACK);
    }

    private static void assertClose(LinearRgb actual, LinearRgb expected) {
        assertThat(actual.red()).isCloseTo(expected.red(), within(1e-12));
        assertThat(actual.green()).isCloseTo(expected.green(), within(1e-12));
        assertThat(actual.blue()).isCloseTo(expected.blue(), within(1e-12));
    }
}

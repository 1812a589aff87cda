package org.duskloom.engine.color;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

final class ColorMixTest {
    /** Midpoints in OKLab, encoded to sRGB and clipped, computed with the matrices of W3C CSS Color Module Level 4. */
    @ParameterizedTest
    @CsvSource({
        "red, lime, '208,168,0'",
        "red, blue, '140,83,162'",
        "blue, white, '116,163,255'",
        "black, white, '99,99,99'",
        "blue, yellow, '108,171,199'"
    })
    void meetsInTheMiddleOfOkLab(String a, String b, String codes) {
        assertThat(Codes.of(ColorMix.OKLAB.mix(Codes.css(a), Codes.css(b), 0.5)))
                .isEqualTo(codes);
        assertThat(Codes.of(ColorMix.OKLAB.mix(Codes.css(b), Codes.css(a), 0.5)))
                .isEqualTo(codes);
    }

    /**
     * The blue light of blue and white's middle encodes to 1.035952 before it is clipped; L 0.5 encodes to 0.3885729.
     */
    @Test
    void middleMayLieBeyondSrgb() {
        OkLab blue = OkLab.of(Codes.css("blue"));
        OkLab middle = new OkLab((blue.lightness() + 1) / 2, blue.a() / 2, blue.b() / 2);

        assertThat(Srgb.encode(middle.toRgb().blue())).isCloseTo(1.035952, within(1e-6));
        assertThat(Srgb.encode(new OkLab(0.5, 0, 0).toRgb().red())).isCloseTo(0.3885729, within(1e-7));
    }

    /** Web platform tests, css-color, color-mix computed values of oklab() with alpha. */
    @ParameterizedTest
    @CsvSource({
        "0.5,  0.36666664, 0.46666664, 0.56666664, 0.6",
        "0.75, 0.44285713, 0.54285717, 0.6428571,  0.7",
        "0.25, 0.26,       0.36,       0.46,       0.5"
    })
    void multipliesByAlphaFirst(double share, double lightness, double a, double b, double alpha) {
        MixPoint start = new MixPoint(0.1, 0.2, 0.3, 0.4);
        MixPoint end = new MixPoint(0.5, 0.6, 0.7, 0.8);

        assertPoint(towards(start, end, share, false), lightness, a, b, alpha);
    }

    /** Web platform tests, same file: oklab(.3 .4 .5) mixed with transparent keeps its colour at half its alpha. */
    @Test
    void transparentDoesNotStain() {
        MixPoint color = new MixPoint(0.3, 0.4, 0.5, 1);

        assertPoint(towards(color, new MixPoint(0, 0, 0, 0), 0.5, false), 0.3, 0.4, 0.5, 0.5);
        for (ColorMix mix : ColorMix.values()) {
            LinearColor half = mix.mix(Codes.css("tomato"), LinearColor.TRANSPARENT, 0.5);

            assertThat(Codes.of(half)).isEqualTo("255,99,71");
            assertThat(half.alpha()).isEqualTo(0.5f);
        }
    }

    /** CSS Color 4, "Interpolating with Alpha": hues are not multiplied. Alpha .4 and .8, hues 40 and 60 meet at 50. */
    @Test
    void hueIsNotMultiplied() {
        MixPoint middle = towards(new MixPoint(0.1, 0.2, 40, 0.4), new MixPoint(0.5, 0.6, 60, 0.8), 0.5, true);

        assertPoint(middle, 0.36666667, 0.46666667, 50, 0.6);
    }

    /** Linear light mixes as lamps do: half of red and half of lime is half the light of each, code 188. */
    @Test
    void linearIsTheAverageOfLight() {
        assertThat(Codes.of(ColorMix.LINEAR.mix(Codes.css("red"), Codes.css("lime"), 0.5)))
                .isEqualTo("188,188,0");
        assertThat(Codes.of(ColorMix.LINEAR.mix(LinearColor.BLACK, LinearColor.WHITE, 0.25)))
                .isEqualTo("137,137,137");
    }

    /** Red (29.2 degrees) and blue (264.1) by the shorter way: the middle is at 326.6 degrees, a magenta. */
    @Test
    void oklchGoesRoundTheHues() {
        OkLch red = OkLch.of(OkLab.of(Codes.css("#cc4444")));
        OkLch blue = OkLch.of(OkLab.of(Codes.css("#4444cc")));
        OkLch middle = OkLch.of(OkLab.of(ColorMix.OKLCH.mix(Codes.css("#cc4444"), Codes.css("#4444cc"), 0.5)));

        double hue = OkLch.reduced((red.hueDegrees() + 360 + blue.hueDegrees()) / 2);
        assertThat(middle.hueDegrees()).isCloseTo(hue, within(1e-3)).isBetween(320.0, 340.0);
        assertThat(middle.chroma()).isCloseTo((red.chroma() + blue.chroma()) / 2, within(1e-6));
        assertThat(middle.lightness()).isCloseTo((red.lightness() + blue.lightness()) / 2, within(1e-6));
    }

    /** CSS Color 4: a powerless hue counts as missing, and a missing hue is taken from the other colour. */
    @Test
    void greyTakesTheOtherHue() {
        LinearColor green = Codes.css("#448844");
        OkLch whole = OkLch.of(OkLab.of(green));
        for (LinearColor grey : new LinearColor[] {LinearColor.WHITE, LinearColor.BLACK, Codes.css("#808080")}) {
            OkLch towards = OkLch.of(OkLab.of(ColorMix.OKLCH.mix(grey, green, 0.5)));
            OkLch away = OkLch.of(OkLab.of(ColorMix.OKLCH.mix(green, grey, 0.5)));

            assertThat(towards.hueDegrees()).isCloseTo(whole.hueDegrees(), within(1e-3));
            assertThat(away.hueDegrees()).isCloseTo(whole.hueDegrees(), within(1e-3));
        }
        assertThat(Codes.of(ColorMix.OKLCH.mix(LinearColor.BLACK, LinearColor.WHITE, 0.5)))
                .isEqualTo("99,99,99");
    }

    @ParameterizedTest
    @EnumSource(ColorMix.class)
    void endsAreExact(ColorMix mix) {
        LinearColor a = new LinearColor(0.123f, 0.456f, 0.789f, 0.3f);
        LinearColor b = new LinearColor(0.9f, 0.01f, 0.2f, 0.7f);

        assertThat(mix.mix(a, b, 0)).isEqualTo(a);
        assertThat(mix.mix(a, b, 1)).isEqualTo(b);
        assertThat(mix.mix(a, a, 0.37)).isEqualTo(a);
        assertThat(mix.mix(LinearColor.TRANSPARENT, Codes.css("#ff000000"), 0.5).alpha())
                .isZero();
    }

    /** A colour cannot be made of parts outside [0, 1] or NaN, so a mix that gives one would throw. */
    @ParameterizedTest
    @EnumSource(ColorMix.class)
    void everyMixIsAColor(ColorMix mix) {
        LinearColor[] colors = {
            LinearColor.BLACK,
            LinearColor.WHITE,
            LinearColor.TRANSPARENT,
            Codes.css("blue"),
            Codes.css("#ff04"),
            Codes.css("lime")
        };
        for (LinearColor a : colors) {
            for (LinearColor b : colors) {
                for (double share : new double[] {-2, -0.1, 0.001, 0.5, 0.999, 1.1, 3, Double.NaN, 1e300, -1e300}) {
                    assertThat(mix.mix(a, b, share)).isNotNull();
                }
            }
        }
    }

    @Test
    void goesOnBeyondItsEnds() {
        LinearColor dim = LinearColor.clipped(0.2, 0.2, 0.2, 1);
        LinearColor bright = LinearColor.clipped(0.4, 0.4, 0.4, 1);

        assertThat(ColorMix.LINEAR.mix(dim, bright, 1.5).red()).isEqualTo(0.5f, within(1e-6f));
        assertThat(ColorMix.LINEAR.mix(dim, bright, 9)).isEqualTo(LinearColor.WHITE);
        assertThat(ColorMix.LINEAR.mix(dim, bright, -9)).isEqualTo(LinearColor.BLACK);
    }

    @Test
    void hasWords() {
        assertThat(ColorMix.of("oklab")).contains(ColorMix.OKLAB);
        assertThat(ColorMix.of("oklch")).contains(ColorMix.OKLCH);
        assertThat(ColorMix.of("linear")).contains(ColorMix.LINEAR);
        assertThat(ColorMix.of("srgb")).isEmpty();
        assertThat(ColorMix.OKLCH.word()).isEqualTo("oklch");
    }

    private static MixPoint towards(MixPoint start, MixPoint end, double share, boolean thirdIsHue) {
        MixLine line = new MixLine(start, end, thirdIsHue);
        double alpha = line.alphaAt(share);
        return new MixPoint(line.firstAt(share, alpha), line.secondAt(share, alpha), line.thirdAt(share, alpha), alpha);
    }

    private static void assertPoint(MixPoint point, double first, double second, double third, double alpha) {
        assertThat(point.first()).isCloseTo(first, within(1e-6));
        assertThat(point.second()).isCloseTo(second, within(1e-6));
        assertThat(point.third()).isCloseTo(third, within(1e-6));
        assertThat(point.alpha()).isCloseTo(alpha, within(1e-9));
    }
}

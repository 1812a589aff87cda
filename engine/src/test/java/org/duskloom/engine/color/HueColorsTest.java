package org.duskloom.engine.color;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** W3C CSS Color Module Level 4, "HSL colors" and "HWB colors". */
final class HueColorsTest {
    /** color.js tests of hwb. */
    @ParameterizedTest
    @CsvSource({
        "0, .2, .4, .6, .2, .2",
        "90, .3, .05, .625, .95, .3",
        "0, .4, .8, .333333333333, .333333333333, .333333333333"
    })
    void hwb(double hue, double whiteness, double blackness, double red, double green, double blue) {
        assertClose(HueColors.ofHwb(hue, whiteness, blackness), red, green, blue);
    }

    /**
     * HWB restates HSV (A. R. Smith, "Color Gamut Transform Pairs", SIGGRAPH 1978, from memory): whiteness is v (1 -
     * s), blackness 1 - v. The codes are computed, and equal those of the JDK's Color.HSBtoRGB.
     */
    @ParameterizedTest
    @CsvSource({
        "210, .5, .8, 102, 153, 204",
        "120, 1, .5, 0, 128, 0",
        "300, .25, .6, 153, 115, 153",
        "-90, 1, 1, 128, 0, 255",
        "359, 1, 1, 255, 0, 4"
    })
    void hwbIsHsv(double hue, double saturation, double value, int red, int green, int blue) {
        LinearRgb rgb = HueColors.ofHwb(hue, value * (1 - saturation), 1 - value);

        assertThat(Math.floor(rgb.red() * 255 + 0.5)).isEqualTo(red);
        assertThat(Math.floor(rgb.green() * 255 + 0.5)).isEqualTo(green);
        assertThat(Math.floor(rgb.blue() * 255 + 0.5)).isEqualTo(blue);
    }

    /** A hue turned by 120 degrees swaps the primaries; full lightness is white and none black at any hue. */
    @Test
    void hslTurnsThroughThePrimaries() {
        for (int hue = -720; hue <= 720; hue += 7) {
            LinearRgb color = HueColors.ofHsl(hue, 0.7, 0.4);

            assertClose(HueColors.ofHsl(hue + 120, 0.7, 0.4), color.blue(), color.red(), color.green());
            assertClose(HueColors.ofHsl(hue, 0.7, 1), 1, 1, 1);
            assertClose(HueColors.ofHsl(hue, 0.7, 0), 0, 0, 0);
            assertClose(HueColors.ofHsl(hue, 0, 0.3), 0.3, 0.3, 0.3);
        }
    }

    private static void assertClose(LinearRgb actual, double red, double green, double blue) {
        assertThat(actual.red()).isCloseTo(red, within(1e-9));
        assertThat(actual.green()).isCloseTo(green, within(1e-9));
        assertThat(actual.blue()).isCloseTo(blue, within(1e-9));
    }
}

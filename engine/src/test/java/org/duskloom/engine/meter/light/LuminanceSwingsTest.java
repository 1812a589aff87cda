package org.duskloom.engine.meter.light;

import static org.assertj.core.api.Assertions.assertThat;

import org.duskloom.engine.color.Srgb;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Opposing changes of relative luminance as WCAG 2.2 defines them ("general flash and red flash thresholds"): 10 % of
 * the maximum or more between adjacent peaks and valleys, the darker below 0.80. Counts worked out by hand.
 */
class LuminanceSwingsTest {
    @ParameterizedTest
    @CsvSource({
        "0 .05 .10 .15, 1",
        "0 .2 .15 .35 .3 .5, 1",
        "0 .06 .12 .06 0 .06 .12 .06 0, 4",
        ".2 .3 .2 .3, 3",
        ".7 .8 .7 .8, 3",
        ".79 .89 .79 .89, 3",
        ".79 .95 .79, 2",
        ".8 .9 .8 .9, 0",
        ".8 .95 .8 .95, 0",
        ".79 .88 .79 .88, 0",
        "0 .09 0 .09, 0",
        "0 .10 0 .10, 3",
        ".5 .55 .5 .55, 0",
        ".95 .85 .75 .85 .95, 2",
        "0 .25 .5 .25 0, 2"
    })
    void countsChangesBetweenPeaksAndValleys(String values, int changes) {
        LuminanceSwings swings = new LuminanceSwings(2);
        int count = 0;
        for (String value : values.split(" ")) {
            count += swings.step(1, CodeLight.units(Double.parseDouble(value))) ? 1 : 0;
        }

        assertThat(count).isEqualTo(changes);
    }

    /** The darkest grey, and the lightest that changes by too little from it, by the sRGB curve of IEC 61966-2-1. */
    @ParameterizedTest
    @CsvSource({"0, 90", "50, 102", "100, 132", "128, 153", "200, 215", "220, 234", "230, 243", "231, 244"})
    void knowsTheSmallestStepsOfGreys(int low, int high) {
        assertThat(changes(low, high)).isEqualTo(2);
        assertThat(changes(low, high - 1)).isZero();
    }

    private static int changes(int low, int high) {
        LuminanceSwings swings = new LuminanceSwings(1);
        int count = 0;
        for (int code : new int[] {low, high, low}) {
            count += swings.step(0, CodeLight.units(Srgb.decode(code / 255.0))) ? 1 : 0;
        }
        return count;
    }
}

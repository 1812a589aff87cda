package org.duskloom.engine.color;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** W3C CSS Color Module Level 4, "Hue Interpolation", the default "shorter". */
final class OkLchTest {
    @ParameterizedTest
    @CsvSource({
        // Web platform tests, css-color, color-mix computed values.
        "40, 60, 50",
        "60, 40, 50",
        "50, 330, 10",
        "330, 50, 10",
        "20, 320, 350",
        "320, 20, 350",
        // The module's own example.
        "30, 90, 60",
        // Computed: a difference of exactly 180 is left alone.
        "0, 180, 90",
        "180, 0, 90"
    })
    void takesTheShorterWay(double from, double to, double middle) {
        double end = OkLch.shorterWayTo(to, from);

        assertThat(OkLch.reduced((from + end) / 2)).isEqualTo(middle);
    }

    /** color.js tests, angles: shorter(-20, 380) gives 340 to 380. */
    @Test
    void reducesFirst() {
        double from = OkLch.reduced(-20);

        assertThat(from).isEqualTo(340);
        assertThat(OkLch.shorterWayTo(OkLch.reduced(380), from)).isEqualTo(380);
    }

    /**
     * The same mark on the circle, counted on from where one stands: never a whole turn off, whichever way is shorter.
     */
    @ParameterizedTest
    @CsvSource({"350, 10, 370", "10, 350, -10", "90, 271, -89", "271, 90, 450", "200, 20, 20", "20, 200, 200", "5, 5, 5"
    })
    void countsOnWithoutAJump(double from, double to, double end) {
        assertThat(OkLch.shorterWayTo(to, from)).isEqualTo(end);
    }

    @Test
    void reducedIsBelowAFullTurn() {
        assertThat(OkLch.reduced(360)).isZero();
        assertThat(OkLch.reduced(-1e-20)).isZero();
        assertThat(OkLch.reduced(725)).isEqualTo(5);
        assertThat(OkLch.reduced(-725)).isEqualTo(355);
    }

    /** Hues a quarter turn apart are the axes of OKLab. */
    @Test
    void quartersAreAxes() {
        assertThat(new OkLch(0.5, 0.1, 90).toLab().b()).isCloseTo(0.1, within(1e-15));
        assertThat(new OkLch(0.5, 0.1, 180).toLab().a()).isCloseTo(-0.1, within(1e-15));
        assertThat(OkLch.of(new OkLab(0.5, 0, -0.1)).hueDegrees()).isEqualTo(270);
        assertThat(OkLch.of(new OkLab(0.5, 0.1, 0)).hueDegrees()).isZero();
        assertThat(OkLch.of(new OkLab(0.5, 0.1, -0.0)).hueDegrees()).isZero();
    }

    /** The limit of chroma is the figure in CSS Color 4's sample code, 4e-6. */
    @Test
    void greysHaveNoHue() {
        assertThat(new OkLch(0.5, 4e-6, 200).isHuePowerless()).isTrue();
        assertThat(new OkLch(0.5, 5e-6, 200).isHuePowerless()).isFalse();
        for (int code = 0; code < 256; code++) {
            assertThat(OkLch.of(OkLab.of(LinearColor.ofCodes(code, code, code))).isHuePowerless())
                    .isTrue();
        }
    }
}

package org.duskloom.engine.color;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CubicMixTest {
    /** The polynomial is another way to work out what {@link ColorMix} works out step by step. */
    @ParameterizedTest
    @CsvSource({
        "OKLAB, gold, teal",
        "OKLAB, black, white",
        "OKLAB, blue, yellow",
        "LINEAR, red, lime",
        "OKLCH, tan, tan"
    })
    void agreesWithTheMix(ColorMix mix, String from, String to) throws Exception {
        LinearColor a = CssColor.parse(from);
        LinearColor b = CssColor.parse(to);
        CubicMix cubic = CubicMix.between(a, b, mix).orElseThrow();

        for (int i = 0; i <= 20; i++) {
            double share = i / 20.0;
            LinearColor expected = mix.mix(a, b, share);
            assertThat(at(cubic.red(), share)).isCloseTo(expected.red(), within(2e-7));
            assertThat(at(cubic.green(), share)).isCloseTo(expected.green(), within(2e-7));
            assertThat(at(cubic.blue(), share)).isCloseTo(expected.blue(), within(2e-7));
        }
    }

    /** Halfway from black to white in OKLab every cube root is one half, so every channel is 1/8. */
    @Test
    void isTheCubeOfTheShareFromBlackToWhite() {
        CubicMix cubic = CubicMix.between(LinearColor.BLACK, LinearColor.WHITE, ColorMix.OKLAB)
                .orElseThrow();

        assertThat(at(cubic.red(), 0.5)).isCloseTo(0.125, within(1e-6));
        assertThat(at(cubic.blue(), 0.5)).isCloseTo(0.125, within(1e-6));
    }

    @Test
    void isEmptyWhereTheMixIsNoPolynomial() {
        LinearColor clear = LinearColor.WHITE.withAlpha(0.5f);

        assertThat(CubicMix.between(LinearColor.BLACK, LinearColor.WHITE, ColorMix.OKLCH))
                .isEmpty();
        assertThat(CubicMix.between(clear, LinearColor.WHITE, ColorMix.OKLAB)).isEmpty();
        assertThat(CubicMix.between(LinearColor.WHITE, clear, ColorMix.LINEAR)).isEmpty();
    }

    private static double at(double[] factors, double share) {
        double value = factors[0] + share * (factors[1] + share * (factors[2] + share * factors[3]));
        return Math.min(1, Math.max(0, value));
    }
}

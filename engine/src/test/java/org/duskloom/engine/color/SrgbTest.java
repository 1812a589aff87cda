package org.duskloom.engine.color;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** IEC 61966-2-1:1999 with Amendment 1:2003, as restated in W3C CSS Color Module Level 4; values computed from it. */
final class SrgbTest {
    @ParameterizedTest
    @CsvSource({
        "0.04, 1, 0.0030959752322",
        "0.04045, 1, 0.00313080495356",
        "0.25, 1, 0.0508760881716",
        "0.5, 1, 0.214041140482",
        "0.75, 1, 0.522521553968",
        "0.9, 1, 0.787412289396",
        "1, 255, 0.000303526983549",
        "10, 255, 0.00303526983549",
        "11, 255, 0.0033465357639",
        "64, 255, 0.051269458374",
        "127, 255, 0.212230757414",
        "128, 255, 0.215860500114",
        "187, 255, 0.496932995061",
        "188, 255, 0.502886458033",
        "254, 255, 0.991102097114"
    })
    void decodes(double numerator, double denominator, double linear) {
        assertThat(Srgb.decode(numerator / denominator)).isCloseTo(linear, within(1e-12));
        assertThat(Srgb.decode(-numerator / denominator)).isCloseTo(-linear, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({
        "0.001, 0.01292, 3",
        "0.0031308, 0.040449936, 10",
        "0.01, 0.0998528227341, 25",
        "0.05, 0.247800527993, 63",
        "0.18, 0.4613561295, 118",
        "0.25, 0.537098730483, 137",
        "0.5, 0.735356983052, 188",
        "0.75, 0.88082502109, 225",
        "0.9, 0.954687171886, 243",
        "1, 1, 255"
    })
    void encodes(double linear, double encoded, int code) {
        assertThat(Srgb.encode(linear)).isCloseTo(encoded, within(1e-12));
        assertThat(Srgb.encode(-linear)).isCloseTo(-encoded, within(1e-12));
        assertThat(SrgbEncoder.code((float) linear)).isEqualTo(code);
    }

    /** The two pieces meet only nearly; the values on both sides are those of the standard's formulas. */
    @Test
    void piecesMeetNearly() {
        assertThat(Srgb.encode(0.0031308)).isCloseTo(0.040449936, within(1e-15));
        assertThat(Srgb.encode(Math.nextUp(0.0031308))).isCloseTo(0.0404499074827, within(1e-12));
        assertThat(Srgb.decode(0.04045)).isCloseTo(0.00313080495356, within(1e-13));
        assertThat(Srgb.decode(Math.nextUp(0.04045))).isCloseTo(0.00313080728307, within(1e-13));
    }

    @Test
    void everyCodeComesBack() {
        for (int code = 0; code < 256; code++) {
            double linear = Srgb.decode(code / 255.0);

            assertThat(255 * Srgb.encode(linear)).isCloseTo(code, within(1e-9));
            assertThat(Srgb.decode(code)).isEqualTo((float) linear);
            assertThat(SrgbEncoder.code(Srgb.decode(code))).isEqualTo(code);
        }
        assertThatThrownBy(() -> Srgb.decode(256)).isInstanceOf(IndexOutOfBoundsException.class);
        assertThatThrownBy(() -> Srgb.decode(-1)).isInstanceOf(IndexOutOfBoundsException.class);
    }

    /** Strictly increasing, but for the published step of 3e-8 where the pieces of the encoding meet. */
    @Test
    void rises() {
        for (int i = 1; i <= 100_000; i++) {
            assertThat(Srgb.decode(i / 1e5)).isGreaterThan(Srgb.decode((i - 1) / 1e5));
            assertThat(Srgb.encode(i / 1e5)).isGreaterThan(Srgb.encode((i - 1) / 1e5));
        }
        assertThat(Srgb.encode(0.0031308) - Srgb.encode(Math.nextUp(0.0031308))).isBetween(0.0, 3e-8);
    }

    /** The average of black and white light is code 188, not 128. */
    @Test
    void averagesLightNotCodes() {
        float average = (Srgb.decode(0) + Srgb.decode(255)) / 2;

        assertThat(SrgbEncoder.code(average)).isEqualTo(188);
    }
}

package org.duskloom.engine.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class KWeightingTest {
    /** Recommendation ITU-R BS.1770-4, Annex 1, tables 1 and 2, for 48 kHz. */
    @Test
    void givesThePublishedTable() {
        Biquad[] sections = KWeighting.at(48_000);
        assertSection(
                sections[0],
                1.53512485958697,
                -2.69169618940638,
                1.19839281085285,
                -1.69065929318241,
                0.73248077421585);
        assertSection(sections[1], 1, -2, 1, -1.99004745483398, 0.99007225036621);
    }

    /** The same design at other rates, as several open libraries have it. */
    @Test
    void isDesignedAnewForOtherRates() {
        assertSection(
                KWeighting.at(44_100)[0],
                1.530841230050348,
                -2.65097999515473,
                1.169079079921587,
                -1.66365511325602,
                0.7125954280732254);
        Biquad highPass = KWeighting.at(96_000)[1];
        assertThat(highPass.a1()).isCloseTo(-1.995017544724715, within(1e-12));
        assertThat(highPass.a2()).isCloseTo(0.9950237590409233, within(1e-12));
    }

    /** Worked out from the published table. */
    @ParameterizedTest
    @CsvSource({
        "20, -13.2754",
        "50, -3.9341",
        "100, -1.1335",
        "200, -0.2649",
        "500, 0.0425",
        "997, 0.6910",
        "1000, 0.6977",
        "2000, 3.0713",
        "4000, 3.9680",
        "8000, 4.0394",
        "16000, 4.0431"
    })
    void hasThePublishedResponse(double hz, double decibels) {
        assertThat(response(hz, 48_000)).isCloseTo(decibels, within(5e-5));
    }

    /** What is heard does not depend on the rate; half a rate bends the top of it. */
    @ParameterizedTest
    @ValueSource(doubles = {8_000, 11_025, 22_050, 44_100, 96_000, 192_000})
    void hearsTheSameAtEveryRate(double rateHz) {
        for (double hz : new double[] {30, 60, 200, 500, 1_000}) {
            assertThat(response(hz, rateHz)).isCloseTo(response(hz, 48_000), within(0.03));
        }
    }

    private static double response(double hz, double rateHz) {
        Biquad[] sections = KWeighting.at(rateHz);
        return 20 * Math.log10(sections[0].gainAt(hz, rateHz) * sections[1].gainAt(hz, rateHz));
    }

    private static void assertSection(Biquad section, double b0, double b1, double b2, double a1, double a2) {
        assertThat(section.b0()).isCloseTo(b0, within(0.006));
        assertThat(section.b0() / section.b2()).isCloseTo(b0 / b2, within(1e-12));
        assertThat(section.b1() / section.b0()).isCloseTo(b1 / b0, within(1e-12));
        assertThat(section.a1()).isCloseTo(a1, within(1e-12));
        assertThat(section.a2()).isCloseTo(a2, within(1e-12));
    }
}

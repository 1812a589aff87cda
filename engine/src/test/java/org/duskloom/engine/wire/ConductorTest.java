package org.duskloom.engine.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Wires against published tables. */
class ConductorTest {
    private static final double METRES_IN_1000_FEET = 304.8;

    /**
     * Area in mm2, milliohms in a metre and ohms in 1000 feet at 20 degrees Celsius: ASTM B258 and NBS Handbook 100,
     * Copper Wire Tables (1966), worked out to six digits.
     */
    @ParameterizedTest
    @CsvSource({
        "10, 5.26115, 3.27711, 0.998863",
        "12, 3.30877, 5.21081, 1.58825",
        "14, 2.08091, 8.28551, 2.52542",
        "16, 1.30870, 13.1745, 4.01558",
        "18, 0.823047, 20.9482, 6.38502",
        "20, 0.517619, 33.3090, 10.1526",
        "22, 0.325534, 52.9634, 16.1432",
        "24, 0.204730, 84.2151, 25.6688"
    })
    void gaugesHaveTheResistanceOfTheTables(int awg, double area, double milliohms, double ohmsIn1000Feet) {
        Conductor wire = Conductor.ofGauge(awg);
        assertThat(wire.name()).isEqualTo(awg + " AWG");
        assertThat(wire.squareMillimetres()).isCloseTo(area, within(area * 5e-6));
        assertThat(1000 * wire.ohmsPerMetre(20)).isCloseTo(milliohms, within(milliohms * 5e-6));
        assertThat(METRES_IN_1000_FEET * wire.ohmsPerMetre(20))
                .isCloseTo(ohmsIn1000Feet, within(ohmsIn1000Feet * 5e-6));
    }

    /** Ohms in a kilometre of solid uncoated copper at 75 degrees Celsius, rounded: NFPA 70, Chapter 9, Table 8. */
    @ParameterizedTest
    @CsvSource({"12, 6.34, 0.005", "14, 10.1, 0.05", "16, 16, 0.05", "18, 25.5, 0.05"})
    void warmCopperResistsAsTheTableForWarmWiresSays(int awg, double ohms, double rounding) {
        assertThat(1000 * Conductor.ofGauge(awg).ohmsPerMetre(75)).isCloseTo(ohms, within(rounding));
    }

    @Test
    void aWireByItsAreaResistsOneFiftyEighthOfAnOhm() {
        assertThat(new Conductor("1 mm2", 1).ohmsPerMetre(20)).isEqualTo(1.0 / 58);
        assertThat(new Conductor("2 mm2", 2).ohmsPerMetre(30)).isCloseTo(1.0393 / 116, within(1e-15));
    }

    /** Drop over both wires of 5 m with 3 A: 0.628447 V in 18 AWG; 10 m, 5 A, 16 AWG: 1.31745 V. Worked out by hand. */
    @ParameterizedTest
    @CsvSource({"18, 5, 3, 0.628447", "16, 10, 5, 1.31745", "14, 3, 6, 0.298278"})
    void aLeadHasTwoWires(int awg, double metres, double amps, double drop) {
        Lead lead = new Lead(Conductor.ofGauge(awg), metres);
        assertThat(amps * lead.ohms(20)).isCloseTo(drop, within(5e-6));
    }

    @Test
    void aWireWithoutThicknessIsNone() {
        assertThatThrownBy(() -> new Conductor("none", 0)).isInstanceOf(IllegalArgumentException.class);
    }
}

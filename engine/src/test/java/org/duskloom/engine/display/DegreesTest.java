package org.duskloom.engine.display;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DegreesTest {
    @ParameterizedTest
    @CsvSource({
        "0, 0, 1",
        "90, 1, 0",
        "180, 0, -1",
        "270, -1, 0",
        "360, 0, 1",
        "-90, -1, 0",
        "-180, 0, -1",
        "450, 1, 0",
        "3600, 0, 1",
        "-3510, 1, 0"
    })
    void quarterTurnsAreExact(double degrees, double sine, double cosine) {
        assertThat(Degrees.sine(degrees)).isEqualTo(sine);
        assertThat(Degrees.cosine(degrees)).isEqualTo(cosine);
        // No negative zeros either: isEqualTo tells them apart from 0.
    }

    @ParameterizedTest
    @CsvSource({"30, 0.5", "150, 0.5", "210, -0.5", "330, -0.5", "-30, -0.5", "390, 0.5"})
    void halvesAreExact(double degrees, double sine) {
        assertThat(Degrees.sine(degrees)).isEqualTo(sine);
        assertThat(Degrees.cosine(degrees - 90)).isEqualTo(sine);
    }

    /** NIST Digital Library of Mathematical Functions, Table 4.17.1, for multiples of 15 degrees. */
    @Test
    void equalsThePublishedSpecialValues() {
        double[][] table = {
            {15, Math.sqrt(2) * (Math.sqrt(3) - 1) / 4, Math.sqrt(2) * (Math.sqrt(3) + 1) / 4},
            {45, Math.sqrt(2) / 2, Math.sqrt(2) / 2},
            {60, Math.sqrt(3) / 2, 0.5},
            {75, Math.sqrt(2) * (Math.sqrt(3) + 1) / 4, Math.sqrt(2) * (Math.sqrt(3) - 1) / 4},
            {105, Math.sqrt(2) * (Math.sqrt(3) + 1) / 4, -Math.sqrt(2) * (Math.sqrt(3) - 1) / 4},
            {135, Math.sqrt(2) / 2, -Math.sqrt(2) / 2},
        };
        for (double[] row : table) {
            assertThat(Degrees.sine(row[0])).isCloseTo(row[1], within(2e-16));
            assertThat(Degrees.cosine(row[0])).isCloseTo(row[2], within(2e-16));
        }
    }

    @Test
    void mirroredAnglesHaveTheSameBits() {
        for (double degrees = 0.1; degrees < 90; degrees += 0.7) {
            double sine = Degrees.sine(degrees);
            assertThat(Degrees.sine(180 - degrees)).isCloseTo(sine, within(1e-15));
            assertThat(Degrees.sine(-degrees)).isEqualTo(-sine);
            assertThat(Degrees.cosine(-degrees)).isEqualTo(Degrees.cosine(degrees));
        }
        // Whole degrees have exact complements.
        for (int degrees = 0; degrees <= 360; degrees++) {
            assertThat(Degrees.cosine(degrees) + 0.0).isEqualTo(Degrees.sine(90 - degrees) + 0.0);
            assertThat(Degrees.sine(180 - degrees)).isEqualTo(Degrees.sine(degrees));
            assertThat(Degrees.sine(degrees + 180) + Degrees.sine(degrees)).isZero();
        }
    }
}

package org.duskloom.engine.geometry;

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

    /** cos 45° = √2/2; cos 30° = √3/2; cos 72° = (√5 - 1)/4 and cos 36° = (√5 + 1)/4, from the regular pentagon. */
    @ParameterizedTest
    @CsvSource({
        "45, 0.7071067811865476",
        "135, -0.7071067811865476",
        "30, 0.8660254037844386",
        "330, 0.8660254037844386",
        "-30, 0.8660254037844386",
        "120, -0.5",
        "240, -0.5",
        "72, 0.30901699437494745",
        "36, 0.8090169943749475"
    })
    void hasTheCosineOfTheClosedForm(double degrees, double cosine) {
        assertThat(Degrees.cosine(degrees)).isCloseTo(cosine, within(1e-15));
        assertThat(Degrees.sine(degrees + 90)).isCloseTo(cosine, within(1e-15));
    }

    /** Over all that the settings allow, 100 turns either way: (1, 0), (0, 1), (-1, 0), (0, -1) and so on. */
    @Test
    void isExactAtEveryQuarterTurn() {
        for (int quarter = -400; quarter <= 400; quarter++) {
            int odd = quarter & 1;
            int sign = (quarter & 2) == 0 ? 1 : -1;
            assertThat(Degrees.cosine(90.0 * quarter)).isEqualTo(odd == 0 ? sign : 0);
            assertThat(Degrees.sine(90.0 * quarter)).isEqualTo(odd == 1 ? sign : 0);
        }
    }

    /** Whole degrees and halves are exact in binary, so whole turns leave every bit as it is. */
    @Test
    void isTheSameAfterWholeTurns() {
        for (double degrees = 0; degrees < 360; degrees += 0.5) {
            assertThat(Degrees.cosine(degrees + 36_000)).isEqualTo(Degrees.cosine(degrees));
            assertThat(Degrees.sine(degrees - 36_000)).isEqualTo(Degrees.sine(degrees));
        }
    }

    /** cos² + sin² = 1, and opposite directions cancel; the last digit of 720 degrees is 2e-15 of a radian. */
    @Test
    void hasTheLengthOne() {
        for (double degrees = -720; degrees <= 720; degrees += 0.37) {
            double x = Degrees.cosine(degrees);
            double y = Degrees.sine(degrees);
            assertThat(x * x + y * y).isCloseTo(1, within(1e-14));
            assertThat(Degrees.cosine(degrees + 180) + x).isCloseTo(0, within(1e-14));
        }
    }

    /** Just below nothing, where what is left of the turn rounds up to a whole one. */
    @ParameterizedTest
    @CsvSource({"-1e-20", "-4.9e-324", "-0.0", "4.9e-324"})
    void pointsRightNextToNought(double degrees) {
        assertThat(Degrees.cosine(degrees)).isEqualTo(1);
        assertThat(Degrees.sine(degrees)).isCloseTo(0, within(1e-21));
    }
}

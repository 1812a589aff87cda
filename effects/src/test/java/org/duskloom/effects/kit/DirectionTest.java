package org.duskloom.effects.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DirectionTest {
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
        assertThat(Direction.cosine(degrees)).isCloseTo(cosine, within(1e-15));
        assertThat(Direction.sine(degrees + 90)).isCloseTo(cosine, within(1e-15));
    }

    /** Over all that the settings allow, 100 turns either way: (1, 0), (0, 1), (-1, 0), (0, -1) and so on. */
    @Test
    void isExactAtEveryQuarterTurn() {
        for (int quarter = -400; quarter <= 400; quarter++) {
            int odd = quarter & 1;
            int sign = (quarter & 2) == 0 ? 1 : -1;
            assertThat(Direction.cosine(90.0 * quarter)).isEqualTo(odd == 0 ? sign : 0);
            assertThat(Direction.sine(90.0 * quarter)).isEqualTo(odd == 1 ? sign : 0);
        }
    }

    /** Whole degrees and halves are exact in binary, so whole turns leave every bit as it is. */
    @Test
    void isTheSameAfterWholeTurns() {
        for (double degrees = 0; degrees < 360; degrees += 0.5) {
            assertThat(Direction.cosine(degrees + 36_000)).isEqualTo(Direction.cosine(degrees));
            assertThat(Direction.sine(degrees - 36_000)).isEqualTo(Direction.sine(degrees));
        }
    }

    /** cos² + sin² = 1, and opposite directions cancel; the last digit of 720 degrees is 2e-15 of a radian. */
    @Test
    void hasTheLengthOne() {
        for (double degrees = -720; degrees <= 720; degrees += 0.37) {
            double x = Direction.cosine(degrees);
            double y = Direction.sine(degrees);
            assertThat(x * x + y * y).isCloseTo(1, within(1e-14));
            assertThat(Direction.cosine(degrees + 180) + x).isCloseTo(0, within(1e-14));
        }
    }

    /** Just below nothing, where what is left of the turn rounds up to a whole one. */
    @ParameterizedTest
    @CsvSource({"-1e-20", "-4.9e-324", "-0.0", "4.9e-324"})
    void pointsRightNextToNought(double degrees) {
        assertThat(Direction.cosine(degrees)).isEqualTo(1);
        assertThat(Direction.sine(degrees)).isZero();
    }
}

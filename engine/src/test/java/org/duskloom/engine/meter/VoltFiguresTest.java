package org.duskloom.engine.meter;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Least voltages as they are shown, rounded on paper. */
class VoltFiguresTest {
    /** What is too low never reads as if it were enough; all else is the nearest. */
    @ParameterizedTest
    @CsvSource({
        "10.499, 10.5, 10.49",
        "10.4999999, 10.5, 10.49",
        "10.494, 10.5, 10.49",
        "10.5, 10.5, 10.5",
        "10.501, 10.5, 10.5",
        "10.506, 10.5, 10.51",
        "10.994, 10.995, 10.99",
        "11.9899, 11.99, 11.98",
        "4.846, 4.851, 4.84",
        "4.846, 4.847, 4.84",
        "4.2, 10.5, 4.2"
    })
    void roundsAwayFromTheLimit(double least, double promised, double shown) {
        assertThat(figures(least, OptionalDouble.of(promised)).leastInHundredths())
                .isEqualTo(shown);
    }

    /** 10.8 V is no binary fraction, and 100 times the double below it is 1080 once more: so are other limits. */
    @Test
    void roundsAwayFromAnyLimit() {
        for (int hundredths = 1; hundredths <= 2400; hundredths++) {
            double promised = hundredths / 100.0;
            double shown = (hundredths - 1) / 100.0;
            assertThat(figures(Math.nextDown(promised), OptionalDouble.of(promised))
                            .leastInHundredths())
                    .isEqualTo(shown);
            assertThat(figures(promised - 0.002, OptionalDouble.of(promised)).leastInHundredths())
                    .isEqualTo(shown);
        }
    }

    @Test
    void isTheNearestWhereNothingIsPromised() {
        assertThat(figures(10.499, OptionalDouble.empty()).leastInHundredths()).isEqualTo(10.5);
    }

    /** Below 0 means that the wire cannot carry it, however little it lacks. */
    @Test
    void keepsWhatTheWireCannotCarry() {
        assertThat(figures(-0.001, OptionalDouble.of(10)).leastInHundredths()).isNegative();
    }

    @Test
    void countsPixelsThatHaveTooLittle() {
        VoltFigures figures =
                new VoltFigures(12, new double[] {11, 10.5, 10.4}, new long[3], 2, OptionalDouble.of(10.5), List.of());
        assertThat(figures.tooLowCount()).isEqualTo(1);
        assertThat(figures.isTooLow(1)).isFalse();
        assertThat(figures.least()).isEqualTo(10.4);
    }

    private static VoltFigures figures(double least, OptionalDouble promised) {
        return new VoltFigures(12, new double[] {12, least}, new long[2], 1, promised, List.of());
    }
}

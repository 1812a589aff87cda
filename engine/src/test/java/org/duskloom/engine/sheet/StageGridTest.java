package org.duskloom.engine.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StageGridTest {
    /** The next 1, 2 or 5 times a power of ten above a twelfth of the longer side, in the unit of the display. */
    @ParameterizedTest
    @CsvSource({
        "10800, 1, 1000",
        "6000, 1, 500",
        "6001, 1, 1000",
        "1200, 1, 100",
        "12, 1, 1",
        "1, 1, 0.1",
        "9144, 25.4, 50",
        "10800, 1000, 1",
        "24000000, 1, 2000000",
        "10800, 10, 100"
    })
    void stepsAreRound(double millimetres, double unit, String step) {
        assertThat(StageGrid.of(millimetres, unit).stepText()).isEqualTo(step);
    }

    @Test
    void linesRunAtWholeSteps() {
        StageGrid grid = StageGrid.of(0.55 * 25.4 * 12, 25.4);
        assertThat(grid.between(-26, 60).stream().map(StageGrid.Tick::words).collect(Collectors.joining(" ")))
                .isEqualTo("-1 0 1 2");
        assertThat(grid.between(-26, 60)).extracting(StageGrid.Tick::place).containsExactly(-25.4, 0.0, 25.4, 50.8);
        assertThat(grid.between(1, 2)).isEmpty();
    }
}

package org.duskloom.engine.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.duskloom.engine.problem.TextFormatException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** W3C CSS Easing Functions Level 2, "The linear() easing function". */
final class LinearStopsTest {
    private static final String BOUNCE =
            "linear(0, .063, .25, .563, 1 36.4%, .812, .75, .813, 1 72.7%, .953, .938, .953, 1 90.9%, .984, 1 100% 100%)";

    @ParameterizedTest
    @CsvSource({
        // Web platform tests, css-easing "linear timing functions output".
        "'linear(0, 1.5, 1)', 0, 0",
        "'linear(0, 1.5, 1)', 0.25, 0.75",
        "'linear(0, 1.5, 1)', 0.5, 1.5",
        "'linear(0, 1.5, 1)', 0.75, 1.25",
        "'linear(0, 1.5, 1)', 1, 1",
        "'linear(1, -.5, 0)', 0, 1",
        "'linear(1, -.5, 0)', 0.25, 0.25",
        "'linear(1, -.5, 0)', 0.5, -0.5",
        "'linear(1, -.5, 0)', 0.75, -0.25",
        "'linear(1, -.5, 0)', 1, 0",
        // Worked from the algorithm.
        "'linear(0, .25 75%, 1)', 0.3, 0.1",
        "'linear(0, 75% .25, 1)', 0.9, 0.7",
        "'linear(0, .25 25% 75%, 1)', 0.1, 0.1",
        "'linear(0, 25% 75% .25, 1)', 0.5, 0.25",
        "'linear(0, .25 25% 75%, 1)', 0.9, 0.7",
        // The list that draws a bounce in the module, worked from the algorithm.
        "'" + BOUNCE + "', 0.1, 0.081495",
        "'" + BOUNCE + "', 0.2, 0.311912",
        "'" + BOUNCE + "', 0.5, 0.781085",
        "'" + BOUNCE + "', 0.8, 0.943934",
        "'" + BOUNCE + "', 0.95, 0.985582",
        "'" + BOUNCE + "', 1.5, 1"
    })
    void runsAlongItsPoints(String text, double x, double y) throws TextFormatException {
        assertThat(Easing.parse(text).at(x)).isCloseTo(y, within(1e-6));
    }

    /** The inputs that the module's section on serialising and the web platform tests give. */
    @Test
    void inputsNeverFall() throws TextFormatException {
        assertThat(points("linear(0 20%, .5 10%, 1)")).containsExactly(point(0.2, 0), point(0.2, 0.5), point(1, 1));
        assertThat(points("linear(0, .1 -10%, 1)"))
                .isEqualTo(points("linear(0, .1 0%, 1)"))
                .containsExactly(point(0, 0), point(0, 0.1), point(1, 1));
        assertThat(points("linear(0, 1 120%, 0)")).containsExactly(point(0, 0), point(1.2, 1), point(1.2, 0));
        assertThat(points("linear(0 -50%, .5, 1)")).containsExactly(point(-0.5, 0), point(0.25, 0.5), point(1, 1));
    }

    /** Web platform tests: equal bands of two percentages are a staircase. */
    @Test
    void flatStopsAreSteps() throws TextFormatException {
        Easing flat = Easing.parse("linear(.2 0% 20%, .4 20% 40%, .6 40% 60%, .8 60% 80%, 1 80% 100%)");
        Easing steps = Easing.parse("steps(5, jump-start)");
        for (double x : new double[] {0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1}) {
            assertThat(flat.at(x)).isEqualTo(steps.at(x));
        }
    }

    @Test
    void oneInputForAllPointsJumps() throws TextFormatException {
        Easing easing = Easing.parse("linear(.25 50%, .5 50%, .75 50%)");

        assertThat(easing.at(0)).isEqualTo(0.5);
        assertThat(easing.at(1)).isEqualTo(0.75);
        assertThat(easing.at(Double.NaN)).isEqualTo(0.5);
    }

    @Test
    void needsTwoPoints() {
        assertThatThrownBy(() -> new LinearStops(List.of(point(0, 0)))).isInstanceOf(IllegalArgumentException.class);
    }

    private static List<LinearStops.Point> points(String text) throws TextFormatException {
        return ((LinearStops) Easing.parse(text)).points();
    }

    private static LinearStops.Point point(double input, double output) {
        return new LinearStops.Point(input, output);
    }
}

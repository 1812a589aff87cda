package org.duskloom.engine.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** W3C CSS Easing Functions Level 1, "Step Easing Functions", worked from its algorithm for progress in [0, 1]. */
final class StepsTest {
    @ParameterizedTest
    @CsvSource({
        "0,     0.25, 0,    0,            0.2",
        "0.1,   0.25, 0,    0,            0.2",
        "0.25,  0.5,  0.25, 0.3333333333, 0.4",
        "0.3,   0.5,  0.25, 0.3333333333, 0.4",
        "0.5,   0.75, 0.5,  0.6666666667, 0.6",
        "0.75,  1,    0.75, 1,            0.8",
        "0.999, 1,    0.75, 1,            0.8",
        "1,     1,    1,    1,            1"
    })
    void fourSteps(double x, double start, double end, double none, double both) {
        assertThat(new Steps(4, Steps.Jump.START).at(x)).isEqualTo(start);
        assertThat(new Steps(4, Steps.Jump.END).at(x)).isEqualTo(end);
        assertThat(new Steps(4, Steps.Jump.NONE).at(x)).isCloseTo(none, within(1e-9));
        assertThat(new Steps(4, Steps.Jump.BOTH).at(x)).isEqualTo(both);
    }

    /** Web platform tests, css-easing "step timing functions output": steps(2, jump-none) from a half on gives 1. */
    @Test
    void jumpNoneHoldsBothEnds() {
        Easing easing = new Steps(2, Steps.Jump.NONE);

        assertThat(easing.at(0)).isZero();
        assertThat(easing.at(Math.nextDown(0.5))).isZero();
        assertThat(easing.at(0.5)).isEqualTo(1);
        assertThat(easing.at(1)).isEqualTo(1);
    }

    /** Web platform tests, same file: steps(1, jump-both) between 0 and 1 gives a half. */
    @Test
    void jumpBothOfOneStandsInTheMiddle() {
        assertThat(new Steps(1, Steps.Jump.BOTH).at(0.5)).isEqualTo(0.5);
        assertThat(Easing.STEP_START.at(0)).isEqualTo(1);
        assertThat(Easing.STEP_END.at(Math.nextDown(1.0))).isZero();
        assertThat(Easing.STEP_END.at(1)).isEqualTo(1);
    }

    @Test
    void nothingLiesBeyondTheEnds() {
        for (Steps.Jump jump : Steps.Jump.values()) {
            Easing easing = new Steps(3, jump);

            assertThat(easing.at(-7)).isEqualTo(easing.at(0)).isBetween(0.0, 1.0);
            assertThat(easing.at(Double.NaN)).isEqualTo(easing.at(0));
            assertThat(easing.at(7)).isEqualTo(1);
        }
    }

    @Test
    void refusesTooFewSteps() {
        assertThatThrownBy(() -> new Steps(0, Steps.Jump.END)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Steps(0, Steps.Jump.BOTH)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Steps(1, Steps.Jump.NONE)).isInstanceOf(IllegalArgumentException.class);
    }
}

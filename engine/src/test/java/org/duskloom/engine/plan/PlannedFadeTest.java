package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.duskloom.engine.time.Easing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlannedFadeTest {
    /** Two seconds in, four out, of a cue of ten; ease-in from the table in W3C CSS Easing Functions Level 1. */
    @ParameterizedTest
    @CsvSource({
        "linear, 0, 0",
        "linear, 0.5, 0.25",
        "linear, 1, 0.5",
        "linear, 2, 1",
        "linear, 6, 1",
        "linear, 7, 0.75",
        "linear, 8, 0.5",
        "linear, 10, 0",
        "ease-in, 0.5, 0.093465",
        "ease-in, 1, 0.315357",
        "ease-in, 1.6, 0.691634",
        "ease-in, 7, 0.621862",
        "ease-in, 9, 0.093465",
        "'steps(4, jump-end)', 0.9, 0.25",
        "'steps(4, jump-end)', 8, 0.5"
    })
    void comesAndGoes(String easing, double seconds, double share) throws Exception {
        PlannedFade fade = new PlannedFade(2, 4, Easing.parse(easing));
        assertThat(fade.at(seconds, 10)).isEqualTo(share, within(1e-6));
    }

    @Test
    void turnsWhereComingAndGoingMeet() {
        // A cue of two seconds that comes and goes all the time: half-way it is just full.
        PlannedFade fade = new PlannedFade(1, 1, Easing.LINEAR);
        assertThat(fade.at(0.5, 2)).isEqualTo(0.5);
        assertThat(fade.at(1, 2)).isEqualTo(1);
        assertThat(fade.at(1.5, 2)).isEqualTo(0.5);
    }

    /** The going begins where all is seen, however little its course ends with. */
    @Test
    void isFullUntilItGoes() throws Exception {
        PlannedFade fade = new PlannedFade(2, 4, Easing.parse("linear(0, 0.5)"));
        assertThat(fade.at(2, 10)).isEqualTo(1);
        assertThat(fade.at(6, 10)).isEqualTo(1);
        assertThat(fade.at(8, 10)).isEqualTo(0.25);
    }

    @Test
    void isFullWithoutTimes() {
        PlannedFade fade = new PlannedFade(0, 0, Easing.LINEAR);
        assertThat(fade.at(0, 2)).isEqualTo(1);
        assertThat(fade.at(1.999, 2)).isEqualTo(1);
    }

    @Test
    void staysWithinFullAndNothingWhereAnEasingOvershoots() throws Exception {
        PlannedFade fade = new PlannedFade(1, 1, Easing.parse("cubic-bezier(0.68, -0.55, 0.265, 1.55)"));
        assertThat(fade.at(0.2, 9)).isZero();
        assertThat(fade.at(0.8, 9)).isEqualTo(1);
    }
}

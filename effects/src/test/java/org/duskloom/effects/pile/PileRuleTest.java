package org.duskloom.effects.pile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.time.Easing;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PileRuleTest {
    private static final PileRule EVEN_SPEED = new PileRule(true, Easing.LINEAR);

    /** Against the plain sum of the ways: light m of n has the way 1 - m/n. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 7, 12, 100, 999, 1000})
    void countsArrivalsAtOneSpeed(int lights) {
        double all = 0;
        for (int m = 0; m < lights; m++) {
            all += 1 - (double) m / lights;
        }
        double run = 0;
        for (int m = 0; m < lights; m++) {
            double way = 1 - (double) m / lights;
            assertThat(EVEN_SPEED.arrived((run + 1e-9) / all, lights)).isEqualTo(m);
            assertThat(EVEN_SPEED.arrived((run + way - 1e-9) / all, lights)).isEqualTo(m);
            assertThat(EVEN_SPEED.lowerEnd((run + way / 4) / all, m, lights)).isCloseTo(1 - way / 4, within(1e-9));
            run += way;
        }
        assertThat(EVEN_SPEED.arrived(1, lights)).isEqualTo(lights);
        assertThat(EVEN_SPEED.arrived(0, lights)).isZero();
    }

    /** An easing that overshoots does not push a light into the pile. */
    @ParameterizedTest
    @ValueSource(doubles = {0.55, 0.6, 0.7, 0.74})
    void keepsLightsAboveThePile(double filled) throws TextFormatException {
        PileRule springy = new PileRule(false, Easing.parse("cubic-bezier(0.1, 3, 0.5, 2)"));
        assertThat(springy.lowerEnd(filled, 2, 4)).isBetween(0.5, 1.0);
    }
}

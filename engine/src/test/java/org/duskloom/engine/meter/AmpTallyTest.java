package org.duskloom.engine.meter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The counted percentile against the one of the sorted values (nearest rank). */
class AmpTallyTest {
    private static final double FULL = 20;
    private static final double STEP = FULL / 10_000;

    private static AmpFigures tallied(double... amps) {
        AmpTally tally = new AmpTally(FULL);
        tally.begin(PoweredDisplay.run(amps.length));
        for (int i = 0; i < amps.length; i++) {
            tally.add(i, amps[i]);
        }
        return tally.figures();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 99, 100, 101, 1000, 14_400})
    void isNeverTooLowAndAStepTooHighAtMost(int frames) {
        SplittableRandom random = new SplittableRandom(frames);
        double[] amps = random.doubles(frames, 0, 9.7).toArray();
        double[] sorted = amps.clone();
        Arrays.sort(sorted);
        double exact = sorted[(int) Math.ceil(0.99 * frames) - 1];
        assertThat(tallied(amps).p99()).isBetween(exact, exact + STEP);
        assertThat(tallied(amps).peak()).isEqualTo(sorted[frames - 1]);
    }

    /** One frame in a hundred may be above. */
    @Test
    void ninetyNineOfAHundred() {
        double[] amps = new double[100];
        Arrays.fill(amps, 2);
        amps[17] = 15;
        assertThat(tallied(amps).p99()).isCloseTo(2, within(STEP));
        amps[18] = 15;
        assertThat(tallied(amps).p99()).isCloseTo(15, within(STEP));
        assertThat(tallied(amps).peakFrame()).isEqualTo(17);
    }

    @Test
    void whatNeverFlowsIsNothing() {
        AmpTally none = new AmpTally(0);
        none.begin(PoweredDisplay.run(3));
        none.add(0, 0);
        assertThat(none.figures().p99()).isZero();
        assertThat(none.figures().peak()).isZero();
        assertThat(new AmpTally(1).figures().mean()).isZero();
    }

    /** Everything on is in the last step. */
    @Test
    void theMostIsCountedToo() {
        assertThat(tallied(FULL, FULL).p99()).isEqualTo(FULL);
    }
}

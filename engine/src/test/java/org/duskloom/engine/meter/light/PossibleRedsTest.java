package org.duskloom.engine.meter.light;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Spans of a saturated red and another colour more than a change apart. That one of the two is a saturated red, and
 * that a change is more than 20 of 320, is the rule of WCAG 2.0 and 2.1, after G. Harding and C. Binnie, 2002.
 */
class PossibleRedsTest {
    private static final int PALE = 0;
    private static final int FAR = OlderRedSwings.CHANGE + 1;
    private static final int NEAR = OlderRedSwings.CHANGE;

    @ParameterizedTest
    @CsvSource({"true, false, true", "false, true, true", "true, true, true", "false, false, false"})
    void oneOfTheTwoIsASaturatedRed(boolean firstRed, boolean secondRed, boolean ends) {
        PossibleReds reds = new PossibleReds(1, false);
        assertThat(reds.step(0, PALE, firstRed)).isFalse();
        assertThat(reds.step(0, FAR, secondRed)).isEqualTo(ends);
    }

    @Test
    void aChangeApartIsNotMoreThanAChange() {
        PossibleReds reds = new PossibleReds(1, false);
        reds.step(0, PALE, false);
        assertThat(reds.step(0, NEAR, true)).isFalse();
        assertThat(reds.step(0, FAR, true)).isTrue();
    }

    /** The way up twice is two spans in any order, and one in turn. */
    @ParameterizedTest
    @CsvSource({"false, true", "true, false"})
    void spansInTurnGoTheOtherWay(boolean inTurn, boolean second) {
        PossibleReds reds = new PossibleReds(1, inTurn);
        reds.step(0, PALE, false);
        assertThat(reds.step(0, FAR, true)).isTrue();
        assertThat(reds.step(0, 2 * FAR, true)).isEqualTo(second);
        assertThat(reds.step(0, PALE, false)).isTrue();
    }

    /** What was not looked at may have been any of a range. */
    @Test
    void whatMayHaveBeenUnseenCounts() {
        PossibleReds reds = new PossibleReds(2, false);
        reds.mayHaveBeen(0, -5, 3);
        assertThat(reds.step(0, FAR, true)).isTrue();
        reds.mayHaveBeen(1, 2 * FAR, FAR);
        reds.mayHaveBeen(1, PALE, PALE);
        assertThat(reds.step(1, PALE, true)).as("no range from high to low").isFalse();
        reds = new PossibleReds(2, false);
        assertThat(reds.step(1, FAR, true)).isFalse();
        assertThat(reds.mayEnd(1, 1, FAR)).isFalse();
        assertThat(reds.mayEnd(1, 0, FAR)).isTrue();
        assertThat(reds.mayEnd(1, 0, FAR)).isFalse();
    }
}

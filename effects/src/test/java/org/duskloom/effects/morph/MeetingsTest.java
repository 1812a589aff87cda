package org.duskloom.effects.morph;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class MeetingsTest {
    /** Nine pixels in a row and a dot at each, which stay where they are and come to reach from 1 to 3. */
    private static final Dots ROW = LegStepsTest.row(9, 0, 1, 3);

    /** A pair stands in the list of the step in which it first may meet. */
    @Test
    void standPixelByPixelFromTheStepOnInWhichTheyMeet() {
        Meetings meetings = new Meetings(100);
        meetings.add(0, 1);
        meetings.add(2, 2);
        meetings.add(4, 2);
        meetings.add(5, 7);
        meetings.add(6, 0);
        List<Leg> legs = meetings.legs(ROW.grid().spots(), LegStepsTest.steps(ROW));

        int[] first = {1, 0, 2, Found.word(0, 0), Found.word(1, 2)};
        int[] second = {2, 4, 2, Found.word(0, 0), Found.word(5, 1)};
        int last = LegSteps.COUNT - 1;
        assertThat(legs).hasSize(LegSteps.COUNT);
        assertThat(legs.get(0).lists()).containsExactly(first);
        assertThat(legs.get(last).lists().get(0)).isEqualTo(first);
        assertThat(legs.get(last).lists().stream().filter(list -> list.length > 0))
                .containsExactly(first, second);
        assertThat(legs.get(0).covers(1 + 2.0 / LegSteps.COUNT)).isTrue();
        assertThat(legs.get(0).covers(1.01 + 2.0 / LegSteps.COUNT)).isFalse();
        assertThat(legs.get(last).covers(3)).isTrue();
        assertThat(legs.get(last).covers(3.1)).isFalse();
    }

    @Test
    void mayBeNone() {
        Leg leg = new Meetings(100)
                .legs(ROW.grid().spots(), LegStepsTest.steps(ROW))
                .get(0);
        assertThat(leg.lists()).allMatch(list -> list.length == 0);
        assertThat(leg.covers(1)).isTrue();
        assertThat(Leg.CROWDED.covers(0)).isFalse();
    }

    @Test
    void areNoMoreThanAllowed() {
        Meetings meetings = new Meetings(200);
        for (int dot = 0; dot < 200; dot++) {
            meetings.add(dot, 3);
        }
        assertThat(meetings.isCrowded()).isFalse();
        meetings.add(200, 3);
        assertThat(meetings.isCrowded()).isTrue();
        assertThat(meetings.count()).isEqualTo(200);
    }
}

package org.duskloom.effects.morph;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class MeetingsTest {
    @Test
    void standPixelByPixel() {
        Meetings meetings = new Meetings(100);
        meetings.add(0, 7);
        meetings.add(0, 2);
        meetings.add(4, 2);
        meetings.add(5, 7);
        meetings.add(6, 0);
        Leg leg = meetings.leg(9, 1.5);

        assertThat(leg.words())
                .containsExactly(
                        0,
                        0,
                        5,
                        Found.word(0, 6),
                        Found.word(2, 0),
                        Found.word(2, 4),
                        Found.word(7, 0),
                        Found.word(7, 5));
        assertThat(leg.covers(1.5)).isTrue();
        assertThat(leg.covers(1.6)).isFalse();
    }

    @Test
    void mayBeNone() {
        Leg leg = new Meetings(100).leg(9, 1);
        assertThat(leg.words()).isEmpty();
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

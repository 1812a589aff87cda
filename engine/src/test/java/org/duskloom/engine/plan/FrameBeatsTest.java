package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.LongStream;
import org.duskloom.engine.time.Beats;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.FrameRate;
import org.junit.jupiter.api.Test;

/** Bars of two, four and three beats, the first of which starts on the second beat. */
class FrameBeatsTest {
    private static final FrameBeats MUSIC = new FrameBeats(
            Beats.at(LongStream.range(0, 12).mapToObj(ExactTime::ofSeconds).toList(), List.of(1, 3, 7, 10)),
            FrameRate.of(40));

    /** Before the first bar goes on what is as long as it, behind the last what is as long as that. */
    @Test
    void everyBeatIsInABar() {
        assertThat(LongStream.rangeClosed(-3, 16).map(MUSIC::bar).toArray())
                .containsExactly(-2, -2, -1, -1, 0, 0, 1, 1, 1, 1, 2, 2, 2, 3, 3, 3, 4, 4, 4, 5);
    }

    @Test
    void everyBarStartsOnABeat() {
        assertThat(LongStream.rangeClosed(-2, 5).map(MUSIC::beatOf).toArray())
                .containsExactly(-3, -1, 1, 3, 7, 10, 13, 16);
        for (long bar = -2; bar < 6; bar++) {
            assertThat(MUSIC.bar(MUSIC.beatOf(bar))).isEqualTo(bar);
            assertThat(MUSIC.shareOfBar(MUSIC.beatOf(bar), 0)).isZero();
        }
        assertThat(MUSIC.shareOfBar(2, 0.5)).isEqualTo(0.75);
        assertThat(MUSIC.shareOfBar(5, 0.5)).isEqualTo(0.625);
        assertThat(MUSIC.shareOfBar(15, 0.5)).isCloseTo(2.5 / 3, within(1e-12));
    }
}

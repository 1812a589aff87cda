package org.duskloom.engine.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Lengths of time, of which some are longer or shorter where the music is slower or faster. */
class LapseTest {
    /** At 0, 1/2, 1, 3 and 5 s: two fast beats and then slow ones; a bar is two beats. */
    private static final Beats SLOWING = Beats.at(
            List.of(
                    ExactTime.ZERO,
                    ExactTime.ofMilliseconds(500),
                    ExactTime.ofSeconds(1),
                    ExactTime.ofSeconds(3),
                    ExactTime.ofSeconds(5)),
            List.of(0, 2, 4));

    /** What ends where it started later started as much earlier. */
    @Test
    void forthAndBackIsTheSameWay() {
        Random random = new Random(43);
        for (int i = 0; i < 300; i++) {
            Pulse pulse = Pulse.values()[random.nextInt(2)];
            Lapse lapse = Lapse.of(SLOWING, pulse, Ratio.of(random.nextInt(20), 4));
            ExactTime start = ExactTime.ofMilliseconds(random.nextInt(8000) - 1000);
            ExactTime length = lapse.from(start);
            assertThat(lapse.until(start.plus(length))).isEqualTo(length);
            Lapse twice = lapse.times(2, 1);
            assertThat(twice.from(start)).isEqualTo(length.plus(lapse.from(start.plus(length))));
        }
    }

    /** A bar takes 1 s from the start and 4 s from the third beat; half of one 1/2 s and 2 s. */
    @Test
    void aBarIsAsLongAsItsBeats() {
        Lapse bar = Lapse.of(SLOWING, Pulse.BAR, Ratio.of(1));
        assertThat(bar.isFixed()).isFalse();
        assertThat(bar.from(ExactTime.ZERO)).isEqualTo(ExactTime.ofSeconds(1));
        assertThat(bar.from(ExactTime.ofSeconds(1))).isEqualTo(ExactTime.ofSeconds(4));
        assertThat(bar.times(1, 2).from(ExactTime.ZERO)).isEqualTo(ExactTime.ofMilliseconds(500));
        assertThat(bar.times(1, 2).from(ExactTime.ofSeconds(1))).isEqualTo(ExactTime.ofSeconds(2));
    }

    @Test
    void aFixedLengthIsTheSameEverywhere() {
        Lapse lapse = Lapse.of(ExactTime.ofMilliseconds(750));
        for (long second = -3; second < 9; second++) {
            assertThat(lapse.from(ExactTime.ofSeconds(second))).isEqualTo(ExactTime.ofMilliseconds(750));
            assertThat(lapse.until(ExactTime.ofSeconds(second))).isEqualTo(ExactTime.ofMilliseconds(750));
        }
        assertThat(lapse.isFixed()).isTrue();
        assertThat(lapse.times(4, 3)).isEqualTo(Lapse.of(ExactTime.ofSeconds(1)));
    }

    @Test
    void noTimeIsNoTimeInAnyUnit() {
        assertThat(Lapse.NONE.isZero()).isTrue();
        assertThat(Lapse.of(SLOWING, Pulse.BEAT, Ratio.ZERO).isZero()).isTrue();
        assertThat(Lapse.of(SLOWING, Pulse.BEAT, Ratio.of(1, 1000)).isZero()).isFalse();
        assertThat(Lapse.of(new ExactTime(1, 1000)).isZero()).isFalse();
    }

    @Test
    void countsSomething() {
        assertThatNullPointerException().isThrownBy(() -> Lapse.of(null)).withMessage("length");
        assertThatNullPointerException()
                .isThrownBy(() -> new Lapse.Counted(null, Pulse.BEAT, Ratio.ZERO))
                .withMessage("beats");
        assertThatNullPointerException()
                .isThrownBy(() -> new Lapse.Counted(SLOWING, null, Ratio.ZERO))
                .withMessage("pulse");
        assertThatNullPointerException()
                .isThrownBy(() -> new Lapse.Counted(SLOWING, Pulse.BEAT, null))
                .withMessage("count");
    }
}

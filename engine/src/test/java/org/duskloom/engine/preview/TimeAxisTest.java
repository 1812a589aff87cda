package org.duskloom.engine.preview;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TimeAxisTest {
    /** 40 frames a second: a second is frames 0, 40, 80; 72 frames apart means every 2 s. */
    @Test
    void standsAtRoundTimes() {
        assertThat(TimeAxis.ticks(frame -> frame / 40.0, 0, 400, 72))
                .containsExactly(
                        new TimeAxis.Tick(0, 0),
                        new TimeAxis.Tick(2, 80),
                        new TimeAxis.Tick(4, 160),
                        new TimeAxis.Tick(6, 240),
                        new TimeAxis.Tick(8, 320));
    }

    /**
     * At 30000/1001 frames a second, 1 s falls between frames 29 (0.968 s) and 30 (1.001 s): frame 30 is the first
     * after.
     */
    @Test
    void takesTheFirstFrameAtOrAfterATime() {
        assertThat(TimeAxis.ticks(frame -> frame * 1001 / 30000.0, 10, 61, 29))
                .containsExactly(new TimeAxis.Tick(1, 30), new TimeAxis.Tick(2, 60));
    }

    @ParameterizedTest
    @CsvSource({"0, 1, 72", "7, 8, 9", "0, 1000000, 72", "123456, 123999, 9", "0, 1000, 0.072", "5, 50000, 1"})
    void liesWithinTheFramesAndFarEnoughApart(long first, long end, double apart) {
        List<TimeAxis.Tick> ticks = TimeAxis.ticks(frame -> frame / 40.0, first, end, apart);
        long before = Long.MIN_VALUE / 2;
        for (TimeAxis.Tick tick : ticks) {
            assertThat(tick.frame()).isBetween(first, end - 1);
            assertThat(tick.frame() - before + 1.0).isGreaterThanOrEqualTo(apart);
            assertThat(tick.frame()).isEqualTo((long) Math.ceil(tick.seconds() * 40 - 1e-6));
            before = tick.frame();
        }
    }
}

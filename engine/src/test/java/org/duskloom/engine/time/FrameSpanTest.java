package org.duskloom.engine.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class FrameSpanTest {
    /** ceil(from * rate) up to but not including ceil(until * rate), worked by hand for 40 frames per second. */
    @ParameterizedTest
    @CsvSource({"0, 4000, 0, 160", "10, 4010, 1, 161", "25, 50, 1, 2", "26, 50, 2, 2", "26, 51, 2, 3", "-30, 0, -1, 0"})
    void holdsTheFramesWhoseInstantsAreInTheSpan(long fromMilliseconds, long untilMilliseconds, long first, long end) {
        FrameSpan span = FrameSpan.of(
                FrameRate.of(40),
                ExactTime.ofMilliseconds(fromMilliseconds),
                ExactTime.ofMilliseconds(untilMilliseconds));

        assertThat(span).isEqualTo(new FrameSpan(first, end));
    }

    /** Half-open spans tile time: each frame is in exactly one of several that follow each other. */
    @Test
    void spansThatFollowEachOtherShareNoFrame() {
        FrameRate rate = new FrameRate(30000, 1001);
        ExactTime length = new ExactTime(3, 7);
        for (long frame = 0; frame < 200; frame++) {
            long at = frame;
            long holders = LongStream.range(0, 20)
                    .mapToObj(k -> FrameSpan.of(rate, length.times(k), length.times(k + 1)))
                    .filter(span -> span.contains(at))
                    .count();

            assertThat(holders).isEqualTo(1);
        }
    }

    @Test
    void countsItsFrames() {
        assertThat(new FrameSpan(3, 10).count()).isEqualTo(7);
        assertThat(new FrameSpan(3, 10).isEmpty()).isFalse();
        assertThat(new FrameSpan(3, 3).count()).isZero();
        assertThat(new FrameSpan(3, 3).isEmpty()).isTrue();
        assertThat(new FrameSpan(3, 3).contains(3)).isFalse();
        assertThat(new FrameSpan(3, 10)).hasToString("3..10");
    }

    @Test
    void overlapIsWhatIsInBoth() {
        FrameSpan span = new FrameSpan(3, 10);

        assertThat(span.overlap(new FrameSpan(5, 20))).isEqualTo(new FrameSpan(5, 10));
        assertThat(new FrameSpan(5, 20).overlap(span)).isEqualTo(new FrameSpan(5, 10));
        assertThat(span.overlap(span)).isEqualTo(span);
        assertThat(span.overlap(new FrameSpan(10, 20)).isEmpty()).isTrue();
        assertThat(new FrameSpan(10, 20).overlap(span).isEmpty()).isTrue();
        assertThat(span.overlap(new FrameSpan(50, 60)).isEmpty()).isTrue();
    }

    @Test
    void refusesToRunBackwards() {
        assertThatThrownBy(() -> new FrameSpan(3, 2)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(
                        () -> FrameSpan.of(FrameRate.of(40), ExactTime.ofMilliseconds(2), ExactTime.ofMilliseconds(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("before its start");
    }
}

package org.duskloom.engine.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.util.stream.LongStream;
import org.duskloom.engine.file.OutputRefusedException;
import org.duskloom.engine.time.ExactTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FrameDelaysTest {
    @Test
    void wholeMillisecondsAreExact() throws IOException {
        FrameDelays delays = new FrameDelays(new ExactTime(1, 40), 1);
        assertThat(LongStream.range(0, 100).mapToObj(delays::of)).containsOnly(new ExactTime(1, 40));
    }

    /** 1/60 s is 16.67 ms: the starts are 0, 17, 33, 50. */
    @Test
    void othersCarryTheirErrorOn() throws IOException {
        FrameDelays delays = new FrameDelays(new ExactTime(1, 60), 1);
        assertThat(LongStream.range(0, 6).map(place -> millis(delays, place)))
                .containsExactly(17L, 16L, 17L, 17L, 16L, 17L);
    }

    /** After an hour the film is where it should be, to half a millisecond. */
    @ParameterizedTest
    @CsvSource({"1001, 30000", "1, 60", "1, 90", "1, 24", "1001, 24000", "7, 3"})
    void aLongFilmStaysInTime(long numerator, long denominator) throws IOException {
        ExactTime step = new ExactTime(numerator, denominator);
        FrameDelays delays = new FrameDelays(step, 1);
        long frames = Math.round(3600 / step.seconds());
        double shown =
                LongStream.range(0, frames).map(place -> millis(delays, place)).sum();
        assertThat(Math.abs(shown - 1000 * frames * step.seconds())).isLessThanOrEqualTo(0.5 + 1e-6);
    }

    @Test
    void refusesWhatBrowsersDoNotShowInTime() {
        assertThatThrownBy(() -> new FrameDelays(new ExactTime(1, 100), 1))
                .isInstanceOf(OutputRefusedException.class)
                .hasMessageContaining("--every 2 is slow enough");
        assertThatThrownBy(() -> new FrameDelays(new ExactTime(3, 500), 3)).hasMessageContaining("--every 6 ");
        assertThatThrownBy(() -> new FrameDelays(ExactTime.ofSeconds(66), 1)).hasMessageContaining("65.5 s");
    }

    /** Whoever does as the refusal says is not refused again, and could not have left fewer frames out. */
    @ParameterizedTest
    @CsvSource({"1, 91, 1", "1, 100, 1", "1, 240, 1", "1001, 120000, 1", "3, 500, 3", "1, 1000, 7"})
    void theLeastThatIsSlowEnoughIsTold(long numerator, long denominator, long everyNow) throws IOException {
        ExactTime step = new ExactTime(numerator, denominator);
        String refusal = assertThrows(OutputRefusedException.class, () -> new FrameDelays(step, everyNow))
                .getMessage();
        long every = Long.parseLong(refusal.replaceAll(".*--every ([0-9]+) is slow enough.*", "$1"));
        assertThat(new FrameDelays(step.times(every, everyNow), every).of(0)).isNotNull();
        assertThatThrownBy(() -> new FrameDelays(step.times(every - 1, everyNow), every - 1))
                .isInstanceOf(OutputRefusedException.class);
    }

    /** A delay is a fraction of two numbers of 16 bits (PNG, third edition, section 11.3.5, chunk fcTL). */
    @Test
    void theLongestDelayIsWhatFitsSixteenBits() throws IOException {
        assertThat(new FrameDelays(new ExactTime(65_535, 1000), 1).of(3)).isEqualTo(new ExactTime(65_535, 1000));
        assertThatThrownBy(() -> new FrameDelays(new ExactTime(65_536, 1000), 1))
                .isInstanceOf(OutputRefusedException.class);
    }

    private static long millis(FrameDelays delays, long place) {
        ExactTime delay = delays.of(place);
        return delay.numerator() * 1000 / delay.denominator();
    }
}

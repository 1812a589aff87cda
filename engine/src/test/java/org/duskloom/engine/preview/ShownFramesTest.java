package org.duskloom.engine.preview;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.FrameSpan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShownFramesTest {
    private static final FrameRate RATE = FrameRate.of(40);

    /**
     * 48 seconds at 40 frames per second, 24 moments: one every two seconds, which is 80 frames, moved on by less than
     * one; four frames are a tenth of a second.
     */
    @Test
    void standAtAboutEvenDistancesOffWholeTenths() {
        long[][] moments = ShownFrames.evenly(span(0, 1920), RATE, 24, 1000);
        assertThat(moments).hasNumberOfRows(24);
        assertThat(moments[0]).containsExactly(0);
        for (int i = 1; i < 24; i++) {
            assertThat(moments[i]).hasSize(5).isSorted();
            for (long frame : moments[i]) {
                assertThat(frame).isBetween(80L * i, 80L * i + 41);
                assertThat(frame % 4).isNotZero();
            }
        }
    }

    /** 24 moments of a million pixels are more than may be looked at more than once; 24 of 300,000 may be twice. */
    @Test
    void manyPixelsLeaveLessChoice() {
        assertThat(ShownFrames.evenly(span(0, 1920), RATE, 24, 1_000_000)[5]).hasSize(1);
        assertThat(ShownFrames.evenly(span(0, 1920), RATE, 24, 300_000)[5]).hasSize(2);
    }

    /** 24 times 178,956,971 is 8 more than 2^32: nothing that an int would take for eight pixels. */
    @ParameterizedTest
    @CsvSource({"178956971", "715827882", "2147483647"})
    void theLargestDisplaysHaveOneCandidateEach(int pixels) {
        for (long[] candidates : ShownFrames.evenly(span(0, 1920), RATE, 24, pixels)) {
            assertThat(candidates).hasSize(1);
        }
    }

    /** 20 million pixels are looked at: 24 moments of 208,333 are 4, one pixel more leaves 3; five is the most. */
    @ParameterizedTest
    @CsvSource({"1, 5", "166666, 5", "166667, 4", "208333, 4", "208334, 3", "833334, 1"})
    void choiceIsAsWideAsTimeAllows(int pixels, int candidates) {
        assertThat(ShownFrames.evenly(span(0, 19_200), RATE, 24, pixels)[7]).hasSize(candidates);
    }

    /** Light that comes round every two seconds, or every second, is caught at different places. */
    @ParameterizedTest
    @CsvSource({"80", "40", "20", "60"})
    void catchALightThatRunsRoundAtDifferentPlaces(int period) {
        long[][] moments = ShownFrames.evenly(span(0, 1920), RATE, 24, 1_000_000);
        long tenths = Arrays.stream(moments)
                .mapToLong(candidates -> candidates[0])
                .map(frame -> frame % period * 10 / period)
                .distinct()
                .count();
        assertThat(tenths).isGreaterThanOrEqualTo(5);
    }

    /** 7 frames in 3 parts of 2 1/3. */
    @Test
    void startInsideTheSpan() {
        assertThat(ShownFrames.evenly(span(100, 107), RATE, 3, 10)).isDeepEqualTo(new long[][] {{100}, {102}, {104}});
        assertThat(ShownFrames.evenly(span(5, 9), RATE, 1, 10)).isDeepEqualTo(new long[][] {{5}});
        assertThat(ShownFrames.evenly(span(5, 5), RATE, 24, 10)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"0, 1, 24", "3, 7, 4", "10, 33, 24", "0, 86400000, 100000"})
    void riseAndStayInside(long first, long end, int count) {
        long[][] moments = ShownFrames.evenly(span(first, end), RATE, count, 20);
        assertThat(moments.length).isEqualTo((int) Math.min(count, end - first));
        long[] frames = Arrays.stream(moments).flatMapToLong(Arrays::stream).toArray();
        assertThat(frames[0]).isEqualTo(first);
        for (int i = 1; i < frames.length; i++) {
            assertThat(frames[i]).isGreaterThan(frames[i - 1]).isLessThan(end);
        }
    }

    @ParameterizedTest
    @CsvSource({"1920, 4800, 1", "4800, 4800, 1", "4801, 4800, 2", "9600, 4800, 2", "9601, 4800, 3", "100, 1, 100"})
    void aColumnStandsForSoManyFrames(long frames, int most, long expected) {
        assertThat(ShownFrames.framesPerColumn(scene(1), span(7, 7 + frames), most))
                .isEqualTo(expected);
    }

    /** 100 million dots, 100,000 rows and less than 130 dots round them: above 850 columns fit, but no 1000. */
    @Test
    void manyPixelsLeaveRoomForFewColumns() {
        long distance = ShownFrames.framesPerColumn(scene(100_000), span(0, 4800), 4800);
        assertThat(4800 / distance).isBetween(800L, 1000L);
    }

    @Test
    void everyNthBeginsWithTheFirst() {
        assertThat(ShownFrames.everyNth(span(3, 12), 4)).containsExactly(3, 7, 11);
        assertThat(ShownFrames.everyNth(span(3, 11), 4)).containsExactly(3, 7);
        assertThat(ShownFrames.everyNth(span(3, 5), 1)).containsExactly(3, 4);
    }

    private static FrameList span(long first, long end) {
        return FrameList.of(new FrameSpan(first, end));
    }

    private static PreviewScene scene(int pixels) {
        return new PreviewScene("Test", new double[pixels], new double[pixels], List.of(), frame -> frame / 40.0);
    }

    /** A frame of no pixel leaves as much choice as one of a single pixel. */
    @Test
    void framesOfNoPixelHaveMomentsToo() {
        assertThat(ShownFrames.evenly(span(0, 1920), RATE, 24, 0))
                .isDeepEqualTo(ShownFrames.evenly(span(0, 1920), RATE, 24, 1));
    }
}

package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import org.duskloom.engine.time.FrameSpan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Cues that are seen at the same time, against comparing all of them. */
class DraftTimesTest {
    private static final BitSet PIXEL = BitSet.valueOf(new long[] {1});

    private static CueDraft cue(long firstFrame, long frames) {
        FrameSpan span = new FrameSpan(firstFrame, firstFrame + frames);
        return new CueDraft(
                new PlannedCue.Body(null, null, new PlannedCue.CueSpan(span, 1), null, null, null, List.of(), null),
                PIXEL);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void findsAllThatMeet(long seed) {
        Random random = new Random(seed);
        List<CueDraft> cues = new ArrayList<>();
        DraftTimes times = new DraftTimes();
        for (int i = 0; i < 300; i++) {
            CueDraft cue = cue(random.nextInt(1000), random.nextInt(1 << random.nextInt(10)));
            assertThat(times.near(cue))
                    .containsAll(cues.stream().filter(cue::meets).toList());
            cues.add(cue);
            times.add(cue);
        }
    }

    /** What is asked does not grow with the show: of ten thousand after each other, those beside. */
    @Test
    void findsFewThatDoNot() {
        DraftTimes times = new DraftTimes();
        for (int i = 0; i < 10_000; i++) {
            times.add(cue(7L * i, 7));
        }
        assertThat(times.near(cue(35_000, 7))).hasSizeBetween(1, 4);
    }

    /** A cue without a frame meets nothing, though it lies within another. */
    @Test
    void nothingMeetsACueWithoutAFrame() {
        assertThat(cue(5, 0).meets(cue(0, 10))).isFalse();
        assertThat(cue(0, 10).meets(cue(5, 0))).isFalse();
        assertThat(cue(0, 6).meets(cue(5, 1))).isTrue();
    }
}

package org.duskloom.engine.preview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.FrameSpan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Moments of a light that runs round ten places: frame n has it at n modulo 10. */
class PickedMomentsTest {
    private final List<Long> picked = new ArrayList<>();
    private final List<Integer> levels = new ArrayList<>();

    /** Frames 20 and 40 look like frame 0; of the others 23 is as far from it as 28, and 47 differs from both. */
    @Test
    void picksWhatDiffersFromAllBefore() {
        assertThat(picked(new long[][] {{0}, {20, 23, 28}, {40, 43, 47}})).containsExactly(0L, 23L, 47L);
    }

    /** By levels of one pixel: 10, then out of 12, 90 and 60 the one that is farthest, then what is far from both. */
    @Test
    void farthestIsByLevels() {
        PickedMoments moments = moments(new long[][] {{0}, {1, 2, 3}, {4, 5, 6}});
        int[] light = {10, 12, 90, 60, 14, 52, 88};
        for (int frame = 0; frame < light.length; frame++) {
            moments.frame(frame, new byte[] {0, (byte) light[frame], 0}, 0, 3);
        }
        assertThat(picked).containsExactly(0L, 2L, 5L);
        assertThat(levels).containsExactly(10, 90, 52);
    }

    /** The last candidate comes in the array of others, at its place there. */
    @Test
    void handsOverTheFrameThatItPicked() {
        PickedMoments moments = moments(new long[][] {{0}, {1, 2}});
        byte[] batch = {0, 9, 0, 0, 20, 0, 0, 77, 0};
        moments.frame(0, batch, 0, 3);
        moments.frame(1, batch, 3, 3);
        moments.frame(2, batch, 6, 3);
        assertThat(levels).containsExactly(9, 77);
    }

    @Test
    void passesOverOthersAndTellsWhatIsMissing() {
        PickedMoments moments = moments(new long[][] {{3, 5}});
        moments.frame(2, new byte[3], 0, 3);
        moments.frame(3, new byte[3], 0, 3);
        moments.frame(4, new byte[3], 0, 3);
        assertThatThrownBy(moments::requireComplete).hasMessageContaining("frame 5");
        assertThatThrownBy(() -> moments.frame(6, new byte[3], 0, 3)).isInstanceOf(IllegalStateException.class);
        moments.frame(5, new byte[3], 0, 3);
        moments.requireComplete();
        assertThat(picked).containsExactly(3L);
    }

    @Test
    void framesMustRise() {
        assertThatThrownBy(() -> moments(new long[][] {{3}, {3}})).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> moments(new long[][] {})).hasMessage("no frames");
        assertThatThrownBy(() -> moments(new long[][] {{0}, {}})).hasMessage("a panel without a frame");
        assertThatThrownBy(() -> moments(new long[][] {{}})).isInstanceOf(IllegalArgumentException.class);
    }

    /** Nothing differs: of frames that are all dark the earliest candidate of each moment is taken. */
    @Test
    void ofFramesThatAreAlikeTheEarliestIsTaken() {
        PickedMoments moments = moments(new long[][] {{0}, {1, 2, 3}, {4, 5, 6}});
        for (long frame = 0; frame < 7; frame++) {
            moments.frame(frame, new byte[3], 0, 3);
        }
        moments.requireComplete();
        assertThat(picked).containsExactly(0L, 1L, 4L);
    }

    /** Spans of any length, also shorter than the panels and one frame long: a frame for each panel, all different. */
    @Test
    void spansOfAnyLengthFillTheirPanels() {
        SplittableRandom random = new SplittableRandom(26);
        for (int length = 1; length < 260; length++) {
            long first = random.nextInt(1000);
            FrameSpan span = new FrameSpan(first, first + length);
            long[][] candidates = ShownFrames.evenly(FrameList.of(span), FrameRate.of(40), 24, 1);
            picked.clear();
            PickedMoments moments = moments(candidates);
            for (long frame = first; frame < first + length; frame++) {
                moments.frame(frame, new byte[] {0, (byte) random.nextInt(256), 0}, 0, 3);
            }
            moments.requireComplete();
            assertThat(picked).hasSize(Math.min(24, length)).isSorted().doesNotHaveDuplicates();
            for (int panel = 0; panel < candidates.length; panel++) {
                assertThat(candidates[panel]).contains(picked.get(panel));
            }
        }
    }

    /** After the last candidate there is nothing more to pick, and frames that still come are passed over. */
    @Test
    void framesAfterTheLastCandidateArePassedOver() {
        PickedMoments moments = moments(new long[][] {{0}, {1, 2}});
        for (long frame = 0; frame < 9; frame++) {
            moments.frame(frame, new byte[] {0, (byte) (20 * frame), 0}, 0, 3);
        }
        moments.requireComplete();
        assertThat(picked).containsExactly(0L, 2L);
    }

    /** The 24 before it count: what looks like frame 0 is as good as new once 24 others lie between, not after 23. */
    @ParameterizedTest
    @CsvSource({"23, 1", "24, 0"})
    void whatLiesFarBackIsForgotten(int between, int taken) {
        long[][] candidates = new long[between + 2][];
        for (int panel = 0; panel <= between; panel++) {
            candidates[panel] = new long[] {panel};
        }
        candidates[between + 1] = new long[] {between + 1, between + 2};
        PickedMoments moments = moments(candidates);
        moments.frame(0, new byte[] {0, 100, 0}, 0, 3);
        for (int frame = 1; frame <= between; frame++) {
            moments.frame(frame, new byte[] {0, (byte) 200, 0}, 0, 3);
        }
        moments.frame(between + 1, new byte[] {0, 100, 0}, 0, 3);
        moments.frame(between + 2, new byte[] {0, (byte) 150, 0}, 0, 3);
        assertThat(picked.get(between + 1)).isEqualTo(between + 1 + taken);
    }

    /** Of 4096 pixels each is looked at, of 4097 every second one, the first and the last among them. */
    @ParameterizedTest
    @CsvSource({"4096, 1, true", "4096, 4095, true", "4097, 0, true", "4097, 4096, true", "4097, 1, false"})
    void ofManyPixelsSomeAreLookedAt(int pixels, int lit, boolean seen) {
        PickedMoments moments = moments(new long[][] {{0}, {1, 2}});
        byte[] dark = new byte[3 * pixels];
        byte[] bright = dark.clone();
        bright[3 * lit + 2] = 1;
        moments.frame(0, dark, 0, dark.length);
        moments.frame(1, dark, 0, dark.length);
        moments.frame(2, bright, 0, bright.length);
        assertThat(picked).containsExactly(0L, seen ? 2L : 1L);
    }

    private List<Long> picked(long[][] candidates) {
        PickedMoments moments = moments(candidates);
        for (long frame = 0; frame < 50; frame++) {
            byte[] rgb = new byte[30];
            rgb[3 * (int) (frame % 10)] = (byte) 200;
            moments.frame(frame, rgb, 0, rgb.length);
        }
        moments.requireComplete();
        return picked;
    }

    private PickedMoments moments(long[][] candidates) {
        return new PickedMoments(candidates, (frame, rgb, offset) -> {
            picked.add(frame);
            levels.add(rgb[offset + 1] & 255);
        });
    }
}

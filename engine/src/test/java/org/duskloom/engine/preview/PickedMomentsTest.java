package org.duskloom.engine.preview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

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
        assertThatThrownBy(() -> moments(new long[][] {})).isInstanceOf(IllegalArgumentException.class);
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

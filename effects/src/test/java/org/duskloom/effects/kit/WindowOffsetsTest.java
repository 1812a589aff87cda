package org.duskloom.effects.kit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WindowOffsetsTest {
    private static final WindowOffsets FOUR = new WindowOffsets(new float[] {0.25f, 0.75f, 0, 0.5f});

    /** The pixel whose windows start earliest comes first. */
    @Test
    void hasTheGreatestOffsetFirst() {
        int[] pixels = {FOUR.pixelOfSlot(0), FOUR.pixelOfSlot(1), FOUR.pixelOfSlot(2), FOUR.pixelOfSlot(3)};
        assertThat(pixels).containsExactly(1, 3, 0, 2);
        assertThat(FOUR.pixelCount()).isEqualTo(4);
    }

    /**
     * After 0.25 passes the pixel with the offset 0.75 has come to its next window, after 0.5 the one with 0.5 too, and
     * so on; a whole pass is one window for each of the four.
     */
    @ParameterizedTest
    @CsvSource({
        "0, 0, 0",
        "0, 0.24, 0",
        "0, 0.25, 1",
        "0, 0.5, 2",
        "0, 0.6, 2",
        "0, 0.75, 3",
        "0, 0.99, 3",
        "1, 0, 4",
        "7, 0.5, 30",
        "-1, 0.5, -2"
    })
    void countsTheWindowsThatHaveBegun(long wholePasses, float fraction, long begun) {
        assertThat(FOUR.begun(wholePasses, fraction)).isEqualTo(begun);
    }

    /**
     * For every pixel, what the count says is its window is floor(passes + offset), also where offsets are the same.
     */
    @Test
    void saysWhichWindowEachPixelIsIn() {
        float[] offsets = {0.5f, 0.5f, 0.125f, 0.5f, 0.875f};
        WindowOffsets windows = new WindowOffsets(offsets);
        for (double passes = -3; passes < 3; passes += 0.0625) {
            long whole = (long) Math.floor(passes);
            long begun = windows.begun(whole, (float) (passes - whole));
            for (int slot = 0; slot < 5; slot++) {
                long window = Math.floorDiv(begun - 1 - slot, 5L) + 1;
                assertThat(window).isEqualTo((long) Math.floor(passes + offsets[windows.pixelOfSlot(slot)]));
            }
        }
    }
}

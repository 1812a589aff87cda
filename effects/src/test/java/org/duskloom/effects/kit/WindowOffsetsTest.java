package org.duskloom.effects.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
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

    /** Of thousands of pixels, more than there are cells to find them by, as counting one by one says. */
    @Test
    void countsAnyNumberOfPixels() {
        for (int count : new int[] {1, 2, 3, 4095, 4096, 9001}) {
            Random random = new Random(count);
            float[] offsets = new float[count];
            for (int pixel = 0; pixel < count; pixel++) {
                offsets[pixel] = random.nextBoolean() ? random.nextFloat() : random.nextInt(64) / 64f;
            }
            WindowOffsets windows = new WindowOffsets(offsets);
            for (int i = 0; i <= 200; i++) {
                float fraction = i % 2 == 0 ? i / 200f : random.nextFloat();
                long over = 0;
                for (float offset : offsets) {
                    over += Fractions.wholeOfSum(offset, fraction) > 0 ? 1 : 0;
                }
                assertThat(windows.begun(0, fraction))
                        .as("%s pixels at %s", count, fraction)
                        .isEqualTo(over);
            }
        }
    }
}

package org.duskloom.effects.twinkle;

import java.util.Comparator;
import java.util.stream.IntStream;
import org.duskloom.effects.kit.Fractions;
import org.duskloom.engine.random.StableHash;

/**
 * When the windows of each pixel start, and the pixels in the order in which they come to their next window. Immutable.
 *
 * <p>The pixels have slots, the greatest offset first. In a pass, slot 0 comes to its next window first, the last slot last.
 * So how many windows have begun, counted over all pixels, says which window each pixel is in.
 */
final class WindowOffsets {
    private static final int OFFSET_DRAW = 1;

    private final float[] offsets;
    private final float[] offsetOfSlot;
    private final int[] pixelOfSlot;

    WindowOffsets(int[] pixelKeys) {
        offsets = new float[pixelKeys.length];
        for (int pixel = 0; pixel < offsets.length; pixel++) {
            offsets[pixel] = StableHash.unitFloat(StableHash.draw(pixelKeys[pixel], OFFSET_DRAW));
        }
        pixelOfSlot = IntStream.range(0, offsets.length)
                .boxed()
                .sorted(Comparator.comparing((Integer pixel) -> -offsets[pixel]))
                .mapToInt(Integer::intValue)
                .toArray();
        offsetOfSlot = new float[offsets.length];
        for (int slot = 0; slot < offsets.length; slot++) {
            offsetOfSlot[slot] = offsets[pixelOfSlot[slot]];
        }
    }

    int pixelCount() {
        return offsets.length;
    }

    /** Of each pixel, in [0, 1). */
    float[] ofPixels() {
        return offsets;
    }

    int pixelOfSlot(int slot) {
        return pixelOfSlot[slot];
    }

    /**
     * How many windows have begun: pixels times whole passes, plus the slots that have already come to their next window.
     *
     * @param passFraction in [0, 1]; the same float that the fractions of the pixels are computed from
     */
    long begun(long wholePasses, float passFraction) {
        int over = 0;
        int notOver = offsetOfSlot.length;
        while (over < notOver) {
            int middle = (over + notOver) >>> 1;
            if (Fractions.wholeOfSum(offsetOfSlot[middle], passFraction) > 0) {
                over = middle + 1;
            } else {
                notOver = middle;
            }
        }
        return wholePasses * offsetOfSlot.length + over;
    }
}

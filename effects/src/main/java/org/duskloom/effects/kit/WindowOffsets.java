package org.duskloom.effects.kit;

import java.util.Arrays;

/**
 * When windows of time of one pass each start for each pixel, and the pixels in the order in which they come to their
 * next window. With it a brush can keep what depends on pixel and window alone, and draw it again only when a window
 * starts. Immutable.
 *
 * <p>The pixels have slots, the greatest offset first. In a pass, slot 0 comes to its next window first, the last slot
 * last. So how many windows have begun, counted over all pixels, says which window each pixel is in.
 */
public final class WindowOffsets {
    private static final int MOST_CELLS = 4096;

    private final float[] offsets;
    private final float[] offsetOfSlot;
    private final int[] pixelOfSlot;
    /** How many slots have an offset of so many cells or more, of which a pass has a power of 2. */
    private final int[] slotsFromCell;

    /**
     * Windows that start so many passes early.
     *
     * @param offsets of each pixel, in [0, 1); kept
     */
    public WindowOffsets(float[] offsets) {
        this.offsets = offsets;
        pixelOfSlot = byFallingOffset(offsets);
        offsetOfSlot = new float[offsets.length];
        for (int slot = 0; slot < offsets.length; slot++) {
            offsetOfSlot[slot] = offsets[pixelOfSlot[slot]];
        }
        int cells = Math.min(MOST_CELLS, Integer.highestOneBit(Math.max(1, offsets.length)));
        slotsFromCell = slotsFromCell(offsetOfSlot, cells);
    }

    /** Those of the same offset in their order. The bits of floats from 0 on rise with them; of a zero none is set. */
    private static int[] byFallingOffset(float[] offsets) {
        long[] keyed = new long[offsets.length];
        for (int pixel = 0; pixel < keyed.length; pixel++) {
            keyed[pixel] =
                    (long) (Integer.MAX_VALUE - Float.floatToIntBits(offsets[pixel] + 0f)) << Integer.SIZE | pixel;
        }
        Arrays.sort(keyed);
        int[] pixels = new int[keyed.length];
        for (int slot = 0; slot < keyed.length; slot++) {
            pixels[slot] = (int) keyed[slot];
        }
        return pixels;
    }

    private static int[] slotsFromCell(float[] falling, int cells) {
        int[] slots = new int[cells + 1];
        int slot = 0;
        for (int cell = cells; cell >= 0; cell--) {
            while (slot < falling.length && falling[slot] * cells >= cell) {
                slot++;
            }
            slots[cell] = slot;
        }
        return slots;
    }

    /** How many pixels there are, and slots. */
    public int pixelCount() {
        return offsets.length;
    }

    /** Of each pixel, in [0, 1). */
    public float[] ofPixels() {
        return offsets;
    }

    /** The pixel of a slot. */
    public int pixelOfSlot(int slot) {
        return pixelOfSlot[slot];
    }

    /**
     * How many windows have begun: pixels times whole passes, plus the slots that have already come to their next
     * window.
     *
     * @param passFraction in [0, 1]; the same float that the fractions of the pixels are computed from
     */
    public long begun(long wholePasses, float passFraction) {
        // Where the sum is further from 1 than a cell no rounding matters, and the cells say which side it is on.
        int cells = slotsFromCell.length - 1;
        int cell = (int) ((1f - passFraction) * cells);
        int over = slotsFromCell[Math.min(cells, cell + 2)];
        int notOver = slotsFromCell[Math.max(0, cell - 1)];
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

package org.duskloom.engine.color;

import java.util.Arrays;

/**
 * Encodes linear light to 8-bit sRGB codes: exactly {@code floor(255 * Srgb.encode(linear) + 0.5)} for every float in
 * [0, 1], at the cost of one table look-up. Below 0 and NaN give 0, above 1 gives 255.
 *
 * <p>Positive floats stand in the order of their bits. The table cuts those from 2^-13, below which every code is 0, to 1
 * into cells of 2^16 floats, so narrow that a cell holds at most one float where the code rises. The cell's entry is the
 * code at its start, shifted left by 16, plus as much as makes the sum with a float's low 16 bits carry into the code
 * from that float on. The table goes on below and above, so that planes need no clamping, which would double the cost.
 */
public final class SrgbEncoder {
    private static final float SMALLEST = 0x1p-13f;
    private static final int CELL_BITS = 16;
    private static final int LOW_MASK = (1 << CELL_BITS) - 1;
    private static final int FIRST_CELL = Float.floatToRawIntBits(SMALLEST) >>> CELL_BITS;
    private static final int LAST_CELL = Float.floatToRawIntBits(1f) >>> CELL_BITS;

    /** All floats below 2 without their sign; a power of two, so that the compiler can leave out the check of the index. */
    private static final int TABLE_SIZE = Float.floatToRawIntBits(2f) >>> CELL_BITS;

    private static final int[] TABLE = table();

    private SrgbEncoder() {}

    /** The code, 0 to 255, of one value. */
    public static int code(float linear) {
        float atLeastSmallest = linear > SMALLEST ? linear : SMALLEST;
        return codeWithinTable(atLeastSmallest < 1f ? atLeastSmallest : 1f);
    }

    /**
     * Encodes the pixels from {@code fromPixel} up to but not including {@code toPixel}: three bytes each, red, green,
     * blue, the first at {@code rgbOffset}. Values must be finite, at least 0 and below 2, but for rounding: more than
     * -2^-13.
     *
     * @throws IndexOutOfBoundsException if an array is too short
     */
    public static void encode(
            float[] red, float[] green, float[] blue, int fromPixel, int toPixel, byte[] rgb, int rgbOffset) {
        // One loop for each channel: a loop over all three costs a tenth more.
        encode(red, fromPixel, toPixel, rgb, rgbOffset);
        encode(green, fromPixel, toPixel, rgb, rgbOffset + 1);
        encode(blue, fromPixel, toPixel, rgb, rgbOffset + 2);
    }

    private static void encode(float[] plane, int fromPixel, int toPixel, byte[] rgb, int rgbOffset) {
        int at = rgbOffset;
        for (int pixel = fromPixel; pixel < toPixel; pixel++) {
            rgb[at] = (byte) codeWithinTable(plane[pixel]);
            at += 3;
        }
    }

    private static int codeWithinTable(float linear) {
        int bits = Float.floatToRawIntBits(linear);
        return TABLE[bits >>> CELL_BITS & TABLE_SIZE - 1] + (bits & LOW_MASK) >>> CELL_BITS;
    }

    private static int[] table() {
        int[] table = new int[TABLE_SIZE];
        for (int cell = FIRST_CELL; cell <= LAST_CELL; cell++) {
            table[cell] = entry(cell << CELL_BITS);
        }
        Arrays.fill(table, LAST_CELL + 1, TABLE_SIZE, 255 << CELL_BITS);
        return table;
    }

    private static int entry(int firstBits) {
        int code = exactCode(firstBits);
        int lastBits = firstBits | LOW_MASK;
        int rise = exactCode(lastBits) - code;
        if (rise > 1) {
            throw new AssertionError("the cell at " + Float.intBitsToFloat(firstBits) + " is too wide");
        }
        int carry = rise == 0 ? 0 : LOW_MASK + 1 - (firstRise(firstBits, lastBits, code) & LOW_MASK);
        return (code << CELL_BITS) + carry;
    }

    /** The bits of the smallest float in the cell whose code is above the given one. */
    private static int firstRise(int firstBits, int lastBits, int code) {
        int below = firstBits;
        int above = lastBits;
        while (above - below > 1) {
            int middle = (below + above) >>> 1;
            if (exactCode(middle) > code) {
                above = middle;
            } else {
                below = middle;
            }
        }
        return above;
    }

    private static int exactCode(int bits) {
        return (int) Math.floor(255 * Srgb.encode(Float.intBitsToFloat(bits)) + 0.5);
    }
}

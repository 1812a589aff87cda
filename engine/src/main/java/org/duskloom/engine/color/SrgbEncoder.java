package org.duskloom.engine.color;

import java.util.Arrays;

/**
 * Encodes linear light to 8-bit sRGB codes: exactly {@code floor(255 * Srgb.encode(linear) + 0.5)} for every float in
 * [0, 1], at the cost of one table look-up. Below 0 gives 0, above 1 gives 255.
 *
 * <p>Positive floats stand in the order of their bits. The table cuts them into cells of 2^16 floats, so narrow that a
 * cell holds at most one float where the code rises. The cell's entry is the code at its start, shifted left by 16,
 * plus as much as makes the sum with a float's low 16 bits carry into the code from that float on; less the bits that
 * all floats of the cell begin with, so that all bits of a float can be added and none has to be masked. The table has
 * an entry for all bits that a float may begin with, so that planes need no clamping, which would double the cost.
 */
public final class SrgbEncoder {
    /** Below it every code is 0. */
    private static final float SMALLEST = 0x1p-13f;

    private static final int CELL_BITS = 16;
    private static final int LOW_MASK = (1 << CELL_BITS) - 1;
    private static final int FIRST_CELL = Float.floatToRawIntBits(SMALLEST) >>> CELL_BITS;
    private static final int LAST_CELL = Float.floatToRawIntBits(1f) >>> CELL_BITS;
    private static final int FIRST_NEGATIVE_CELL = 1 << CELL_BITS - 1;

    /** One entry for each 16 bits, so that the compiler can leave out the check of the index. */
    private static final int[] TABLE = table();

    private SrgbEncoder() {}

    /** The code, 0 to 255, of one value; 0 for NaN. */
    public static int code(float linear) {
        float atLeastSmallest = linear > SMALLEST ? linear : SMALLEST;
        return inTable(atLeastSmallest < 1f ? atLeastSmallest : 1f);
    }

    /**
     * Encodes the first pixels of three planes: three bytes each, red, green, blue. Values must not be NaN.
     *
     * @param rgbOffset where the first byte goes
     * @throws IndexOutOfBoundsException if an array is too short
     */
    public static void encode(float[] red, float[] green, float[] blue, int pixelCount, byte[] rgb, int rgbOffset) {
        encode(red, green, blue, 0, pixelCount, rgb, rgbOffset);
    }

    /** The same for the pixels from one up to another; the first byte is that of the first of these. */
    public static void encode(float[] red, float[] green, float[] blue, int from, int to, byte[] rgb, int rgbOffset) {
        // One loop of pixels for each channel: one over all three costs more.
        for (int channel = 0; channel < 3; channel++) {
            float[] values = channel == 0 ? red : channel == 1 ? green : blue;
            encode(values, from, to, rgb, rgbOffset + channel);
        }
    }

    private static void encode(float[] values, int from, int to, byte[] rgb, int rgbOffset) {
        int done = encodeFours(values, from, to, rgb, rgbOffset);
        int at = rgbOffset + 3 * (done - from);
        for (int pixel = done; pixel < to; pixel++) {
            rgb[at] = (byte) inTable(values[pixel]);
            at += 3;
        }
    }

    /** Four pixels at a time: the compiler does not unroll a loop whose counters grow by different steps. */
    private static int encodeFours(float[] values, int from, int to, byte[] rgb, int rgbOffset) {
        int at = rgbOffset;
        int end = from + (to - from & -4);
        for (int i = from; i < end; i += 4) {
            rgb[at] = (byte) inTable(values[i]);
            rgb[at + 3] = (byte) inTable(values[i + 1]);
            rgb[at + 6] = (byte) inTable(values[i + 2]);
            rgb[at + 9] = (byte) inTable(values[i + 3]);
            at += 12;
        }
        return end;
    }

    private static int inTable(float value) {
        int bits = Float.floatToRawIntBits(value);
        return bits + TABLE[bits >>> CELL_BITS] >>> CELL_BITS;
    }

    private static int[] table() {
        int[] table = new int[1 << CELL_BITS];
        for (int cell = FIRST_CELL; cell <= LAST_CELL; cell++) {
            table[cell] = entry(cell << CELL_BITS);
        }
        Arrays.fill(table, LAST_CELL + 1, FIRST_NEGATIVE_CELL, 255 << CELL_BITS);
        for (int cell = 0; cell < table.length; cell++) {
            table[cell] -= cell << CELL_BITS;
        }
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

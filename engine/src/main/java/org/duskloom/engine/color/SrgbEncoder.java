package org.duskloom.engine.color;

/**
 * Encodes linear light to 8-bit sRGB codes: exactly {@code floor(255 * Srgb.encode(linear) + 0.5)} for every float in
 * [0, 1], at the cost of one table look-up. Below 0 and NaN give 0, above 1 gives 255.
 *
 * <p>Positive floats stand in the order of their bits. The table cuts those from 2^-13, below which every code is 0, to 1
 * into cells of 2^16 floats, so narrow that a cell holds at most one float where the code rises. The cell's entry is the
 * code at its start, shifted left by 16, plus as much as makes the sum with a float's low 16 bits carry into the code
 * from that float on.
 */
public final class SrgbEncoder {
    private static final int SMALLEST_BITS = Float.floatToRawIntBits(0x1p-13f);
    private static final int ONE_BITS = Float.floatToRawIntBits(1f);
    private static final int CELL_BITS = 16;
    private static final int LOW_MASK = (1 << CELL_BITS) - 1;

    /** A power of two above the number of cells, so that the compiler can leave out the check of the index. */
    private static final int TABLE_SIZE = 2048;

    private static final int[] TABLE = table();

    private SrgbEncoder() {}

    /** The code, 0 to 255, of one value. */
    public static int code(float linear) {
        int place = Float.floatToRawIntBits(linear) - SMALLEST_BITS;
        if (Integer.compareUnsigned(place, ONE_BITS - SMALLEST_BITS) >= 0) {
            return linear >= 1f ? 255 : 0;
        }
        return TABLE[place >>> CELL_BITS & TABLE_SIZE - 1] + (place & LOW_MASK) >>> CELL_BITS;
    }

    /**
     * Encodes the pixels from {@code fromPixel} up to but not including {@code toPixel}: three bytes each, red, green,
     * blue, the first at {@code rgbOffset}.
     *
     * @throws IndexOutOfBoundsException if an array is too short
     */
    public static void encode(
            float[] red, float[] green, float[] blue, int fromPixel, int toPixel, byte[] rgb, int rgbOffset) {
        int at = rgbOffset;
        for (int pixel = fromPixel; pixel < toPixel; pixel++) {
            rgb[at] = (byte) code(red[pixel]);
            rgb[at + 1] = (byte) code(green[pixel]);
            rgb[at + 2] = (byte) code(blue[pixel]);
            at += 3;
        }
    }

    private static int[] table() {
        int[] table = new int[TABLE_SIZE];
        for (int bits = SMALLEST_BITS; bits < ONE_BITS; bits += 1 << CELL_BITS) {
            table[bits - SMALLEST_BITS >>> CELL_BITS] = entry(bits);
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

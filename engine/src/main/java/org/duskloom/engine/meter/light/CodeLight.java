package org.duskloom.engine.meter.light;

import org.duskloom.engine.color.Srgb;

/**
 * The light of sRGB codes as whole numbers, so that sums are exact and do not depend on their order. {@link #ONE} is
 * full light. Of a colour in linear light two numbers are told by one sum over three tables: in the lower half of the
 * long its relative luminance (WCAG 2.2), in the upper half R - G - B, which is below 0 for most colours and at least
 * three quarters of R for a saturated red.
 */
final class CodeLight {
    /**
     * Full light: as fine as the sums of a group of pixels leave room for, of which R - G - B may come to -2 each. What
     * is told is right to 0.3 millionths of full light, and of a grey to 0.06.
     */
    static final int ONE = 1 << 23;

    private static final double RED_WEIGHT = 0.2126;
    private static final double GREEN_WEIGHT = 0.7152;
    private static final double BLUE_WEIGHT = 0.0722;
    private static final int CODES = 256;
    private static final int CODE = 0xFF;
    private static final int HALF = 32;

    /**
     * What to add up for the codes of red, of green from {@link #GREEN} on and of blue from {@link #BLUE} on. One
     * table, so that a loop needs one register for where it lies.
     */
    static final long[] PAIRS = new long[3 * CODES];

    static final int GREEN = CODES;
    static final int BLUE = 2 * CODES;

    /** Red light alone. */
    private static final int[] RED_ALONE = new int[CODES];

    private static final double[] LINEAR = new double[CODES];

    static {
        for (int code = 0; code < CODES; code++) {
            LINEAR[code] = Srgb.decode(code / 255.0);
            int all = units(LINEAR[code]);
            RED_ALONE[code] = all;
            int red = units(RED_WEIGHT * LINEAR[code]);
            int green = units(GREEN_WEIGHT * LINEAR[code]);
            PAIRS[code] = pair(red, all);
            PAIRS[GREEN + code] = pair(green, -all);
            PAIRS[BLUE + code] = pair(all - red - green, -all);
        }
    }

    private CodeLight() {}

    private static long pair(int luminance, int excess) {
        return ((long) excess << HALF) + luminance;
    }

    /** Light as a whole number. */
    static int units(double light) {
        return (int) Math.round(light * ONE);
    }

    /** Both numbers of a pixel. */
    static long of(byte[] rgb, int at) {
        return PAIRS[rgb[at] & CODE] + PAIRS[GREEN + (rgb[at + 1] & CODE)] + PAIRS[BLUE + (rgb[at + 2] & CODE)];
    }

    /** The red light of pixels in a row, summed up. */
    static long red(byte[] rgb, int at, int pixels) {
        long sum = 0;
        for (int i = at; i < at + 3 * pixels; i += 3) {
            sum += RED_ALONE[rgb[i] & CODE];
        }
        return sum;
    }

    /** The relative luminance of a colour, or of what is summed up. */
    static int luminance(long sum) {
        return (int) sum;
    }

    /** R - G - B of a colour, or of what is summed up. */
    static int redExcess(long sum) {
        return (int) (sum >> HALF);
    }

    /** Red, green and blue of a pixel in linear light, 0 to 1. */
    static void linear(byte[] rgb, int at, double[] color) {
        color[0] = LINEAR[rgb[at] & CODE];
        color[1] = LINEAR[rgb[at + 1] & CODE];
        color[2] = LINEAR[rgb[at + 2] & CODE];
    }

    /** Red, green and blue in linear light from luminance, R - G - B and red as whole numbers. */
    static void linear(int luminance, int redExcess, int red, double[] color) {
        double others = red - redExcess;
        double green = (luminance - RED_WEIGHT * red - BLUE_WEIGHT * others) / (GREEN_WEIGHT - BLUE_WEIGHT);
        color[0] = (double) red / ONE;
        color[1] = Math.max(0, Math.min(green, others)) / ONE;
        color[2] = Math.max(0, others / ONE - color[1]);
    }
}

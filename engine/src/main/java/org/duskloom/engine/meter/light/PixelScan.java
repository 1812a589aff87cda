package org.duskloom.engine.meter.light;

import java.util.Arrays;

/**
 * Adds up the light of some pixels in a row and finds those that may have made a change. That is nearly all that a
 * frame costs, so nothing is decided by a branch, as nobody can foretell which pixel has risen or fallen: a table is
 * looked up in one loop, and the next, over whole numbers, are such that compilers make vector instructions of them.
 */
final class PixelScan {
    /** The most pixels at a time: their sums are halves of a long, as {@link CodeLight} tells a colour by one. */
    static final int MOST = 128;

    /** How many longs hold a bit for each of {@link #MOST} pixels. */
    static final int WORDS = MOST / Long.SIZE;

    private static final int CODE = 0xFF;
    private static final int GREEN = CodeLight.GREEN;
    private static final int BLUE = CodeLight.BLUE;

    /** So many pixels are looked up in one step; places in the frame and in the arrays are checked once for them. */
    private static final int TOGETHER = 4;

    /** So many pixels are asked at once whether any of them has been found: mostly none has. */
    private static final int ASKED = 8;

    private final LuminanceSwings luminance;
    private final RedSwings reds;

    private final int[] values;
    private final int[] excess;

    /** Below 0 where a pixel is found; and where it is by any of the two. */
    private final int[] turning;

    private final int[] reddish;
    private final int[] found;

    /** A bit for each pixel that is found. */
    private final long[] turned = new long[WORDS];

    private final long[] reddened = new long[WORDS];

    PixelScan(int pixels, LuminanceSwings luminance, RedSwings reds) {
        this.luminance = luminance;
        this.reds = reds;
        values = new int[pixels];
        excess = new int[pixels];
        turning = new int[pixels];
        reddish = new int[pixels];
        found = new int[pixels];
    }

    /**
     * Looks up the light of pixels.
     *
     * @param offset where the codes of pixel 0 stand
     * @param end the pixel behind the last one, {@value #MOST} behind the first at most
     * @return luminance and R - G - B of all of them, as {@link CodeLight} tells them
     */
    long lookUp(byte[] rgb, int offset, int first, int end) {
        long[] table = CodeLight.PAIRS;
        int[] light = values;
        int[] more = excess;
        long pairs = 0;
        int at = offset + 3 * first;
        int i = first;
        for (; i <= end - TOGETHER; i += TOGETHER, at += 3 * TOGETHER) {
            long a = table[rgb[at] & CODE] + table[GREEN + (rgb[at + 1] & CODE)] + table[BLUE + (rgb[at + 2] & CODE)];
            long b = table[rgb[at + 3] & CODE]
                    + table[GREEN + (rgb[at + 4] & CODE)]
                    + table[BLUE + (rgb[at + 5] & CODE)];
            long c = table[rgb[at + 6] & CODE]
                    + table[GREEN + (rgb[at + 7] & CODE)]
                    + table[BLUE + (rgb[at + 8] & CODE)];
            long d = table[rgb[at + 9] & CODE]
                    + table[GREEN + (rgb[at + 10] & CODE)]
                    + table[BLUE + (rgb[at + 11] & CODE)];
            light[i] = CodeLight.luminance(a);
            more[i] = CodeLight.redExcess(a);
            light[i + 1] = CodeLight.luminance(b);
            more[i + 1] = CodeLight.redExcess(b);
            light[i + 2] = CodeLight.luminance(c);
            more[i + 2] = CodeLight.redExcess(c);
            light[i + 3] = CodeLight.luminance(d);
            more[i + 3] = CodeLight.redExcess(d);
            pairs += a + b + (c + d);
        }
        for (; i < end; i++, at += 3) {
            long pair = CodeLight.of(rgb, at);
            light[i] = CodeLight.luminance(pair);
            more[i] = CodeLight.redExcess(pair);
            pairs += pair;
        }
        return pairs;
    }

    /** Decides about pixels that have been looked up: the more at a time, the better; as many as stay near, at best. */
    void decide(int first, int end) {
        luminance.follow(first, end, values, turning);
        reds.sift(first, end, values, excess, reddish);
        join(first, end, turning, reddish, found);
    }

    private static void join(int first, int end, int[] one, int[] other, int[] both) {
        for (int i = first; i < end; i++) {
            both[i] = one[i] | other[i];
        }
    }

    /**
     * Notes which pixels have been found.
     *
     * @param end the pixel behind the last one, {@value #MOST} behind the first at most
     */
    void note(int first, int end) {
        Arrays.fill(turned, 0);
        Arrays.fill(reddened, 0);
        int i = first;
        for (; i <= end - ASKED; i += ASKED) {
            int any = found[i] | found[i + 1] | found[i + 2] | found[i + 3];
            if ((any | found[i + 4] | found[i + 5] | found[i + 6] | found[i + 7]) < 0) {
                int bit = i - first;
                turned[bit / Long.SIZE] |= signs(turning, i) << bit;
                reddened[bit / Long.SIZE] |= signs(reddish, i) << bit;
            }
        }
        for (; i < end; i++) {
            int bit = i - first;
            turned[bit / Long.SIZE] |= (long) (turning[i] >>> 31) << bit;
            reddened[bit / Long.SIZE] |= (long) (reddish[i] >>> 31) << bit;
        }
    }

    /** A bit for each of {@value #ASKED} numbers, set where it is below 0. */
    private static long signs(int[] numbers, int first) {
        return numbers[first] >>> 31
                | numbers[first + 1] >>> 30 & 1 << 1
                | numbers[first + 2] >>> 29 & 1 << 2
                | numbers[first + 3] >>> 28 & 1 << 3
                | numbers[first + 4] >>> 27 & 1 << 4
                | numbers[first + 5] >>> 26 & 1 << 5
                | numbers[first + 6] >>> 25 & 1 << 6
                | numbers[first + 7] >>> 24 & 1 << 7;
    }

    /**
     * Those that may have made a change of luminance: a bit for each pixel, from the first.
     *
     * @param word which {@value Long#SIZE} pixels, below {@link #WORDS}
     */
    long turned(int word) {
        return turned[word];
    }

    /** Those that may have made a change of red. */
    long reddened(int word) {
        return reddened[word];
    }

    /** The luminance of a pixel. */
    int value(int pixel) {
        return values[pixel];
    }

    /** R - G - B of a pixel. */
    int redExcess(int pixel) {
        return excess[pixel];
    }
}

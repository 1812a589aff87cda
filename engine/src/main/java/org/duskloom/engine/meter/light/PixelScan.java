package org.duskloom.engine.meter.light;

/**
 * Adds up the light of some pixels in a row and finds those that may have made a change. That is nearly all that a
 * frame costs, so nothing is decided by a branch, as nobody can foretell which pixel has risen or fallen: a table is
 * looked up in one loop, and the next, over whole numbers, are such that compilers make vector instructions of them.
 */
final class PixelScan {
    /** The most to look up at a time: their sums are halves of a long, as {@link CodeLight} tells a colour by one. */
    static final int MOST = 128;

    private static final int CODE = 0xFF;
    private static final int GREEN = CodeLight.GREEN;
    private static final int BLUE = CodeLight.BLUE;

    /** So many pixels are looked up in one step; places in the frame and in the arrays are checked once for them. */
    private static final int TOGETHER = 4;

    /** So many pixels are asked at once whether any of them has been found. */
    private static final int ASKED = 8;

    private final LuminanceSwings luminance;
    private final RedSwings reds;

    private final int[] values;
    private final int[] excess;

    /** Below 0 where a pixel is found. */
    private final int[] signs;

    /** Those that are found, and room for one that is not. */
    private final int[] found;

    private int foundCount;

    /** Where there are some, and room for where there are none. */
    private final int[] some;

    PixelScan(int pixels, LuminanceSwings luminance, RedSwings reds) {
        this.luminance = luminance;
        this.reds = reds;
        values = new int[pixels];
        excess = new int[pixels];
        signs = new int[pixels];
        found = new int[pixels + 1];
        some = new int[pixels / ASKED + 1];
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

    /** Forgets what has been found. */
    void clear() {
        foundCount = 0;
    }

    /**
     * Decides about pixels that have been looked up: the more at a time, the better; as many as stay near, at best. To
     * be called of pixels in their order.
     */
    void decide(int first, int end) {
        luminance.follow(first, end, values, signs);
        reds.sift(first, end, values, excess, signs);
        list(first, end);
    }

    /**
     * Whatever is asked is written down, and the next one over it unless it is found: first a few pixels at once, of
     * which mostly none is found, then each of those where any is.
     */
    private void list(int first, int end) {
        int[] below = signs;
        int count = 0;
        int i = first;
        for (; i <= end - ASKED; i += ASKED) {
            some[count] = i;
            int any = below[i] | below[i + 1] | below[i + 2] | below[i + 3];
            count += (any | below[i + 4] | below[i + 5] | below[i + 6] | below[i + 7]) >>> 31;
        }
        for (int k = 0; k < count; k++) {
            listEach(some[k], some[k] + ASKED);
        }
        listEach(i, end);
    }

    private void listEach(int first, int end) {
        int count = foundCount;
        for (int i = first; i < end; i++) {
            found[count] = i;
            count += signs[i] >>> 31;
        }
        foundCount = count;
    }

    /** How many pixels may have made a change. */
    int foundCount() {
        return foundCount;
    }

    /** One of them, which are numbered from 0 in their order. */
    int found(int index) {
        return found[index];
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

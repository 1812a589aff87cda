package org.duskloom.engine.meter.light;

/**
 * Adds up the light of some pixels in a row and finds those that may have made a change. That is nearly all that a
 * frame costs, so nothing is decided by a branch, as nobody can foretell which pixel has risen or fallen: tables are
 * looked up in one loop, and the next, over whole numbers, is one that compilers make vector instructions of.
 */
final class PixelScan {
    /** The most pixels at a time: their sums are halves of a long, as {@link CodeLight} tells a colour by one. */
    static final int MOST = 128;

    private static final int CODE = 0xFF;

    /** So many pixels are asked at once whether any of them has been found. */
    private static final int TOGETHER = 8;

    private final LuminanceSwings luminance;
    private final RedSwings reds;

    private final int[] values;
    private final int[] excess;

    /** Below 0 where a pixel is found. */
    private final int[] turning;

    private final int[] reddish;

    private boolean anyReddish;

    /** What is added up: luminance, R - G - B and red, as {@link CodeLight} tells them. */
    private final long[] sums = new long[3];

    PixelScan(int pixels, LuminanceSwings luminance, RedSwings reds) {
        this.luminance = luminance;
        this.reds = reds;
        values = new int[pixels];
        excess = new int[pixels];
        turning = new int[pixels];
        reddish = new int[pixels];
    }

    /**
     * Looks at pixels.
     *
     * @param offset where the codes of pixel 0 stand
     * @param end the pixel behind the last one
     */
    void look(byte[] rgb, int offset, int first, int end) {
        lookUp(rgb, offset, first, end);
        luminance.follow(first, end, values, turning);
        anyReddish = reds.sift(first, end, values, excess, reddish);
    }

    private void lookUp(byte[] rgb, int offset, int first, int end) {
        long pairs = 0;
        int reddest = 0;
        int i = first;
        for (int at = offset + 3 * first, behind = offset + 3 * end; at < behind; at += 3) {
            int r = rgb[at] & CODE;
            long pair = CodeLight.RED[r] + CodeLight.GREEN[rgb[at + 1] & CODE] + CodeLight.BLUE[rgb[at + 2] & CODE];
            values[i] = CodeLight.luminance(pair);
            excess[i] = CodeLight.redExcess(pair);
            i++;
            pairs += pair;
            reddest += CodeLight.RED_ALONE[r];
        }
        sums[0] = CodeLight.luminance(pairs);
        sums[1] = CodeLight.redExcess(pairs);
        sums[2] = reddest;
    }

    long sum(int index) {
        return sums[index];
    }

    /**
     * Notes the pixels that may have made a change of luminance.
     *
     * @return how many there are
     */
    int turning(int first, int end, int[] noted) {
        return found(turning, first, end, noted);
    }

    /** Notes the pixels that may have made a change of red. */
    int reddish(int first, int end, int[] noted) {
        return anyReddish ? found(reddish, first, end, noted) : 0;
    }

    /** The numbers of those that are below 0: none, mostly, of {@value #TOGETHER}, so that is asked first. */
    private static int found(int[] belowZero, int first, int end, int[] noted) {
        int found = 0;
        int start = first;
        for (; start <= end - TOGETHER; start += TOGETHER) {
            int signs = belowZero[start] >>> 31
                    | belowZero[start + 1] >>> 30 & 1 << 1
                    | belowZero[start + 2] >>> 29 & 1 << 2
                    | belowZero[start + 3] >>> 28 & 1 << 3
                    | belowZero[start + 4] >>> 27 & 1 << 4
                    | belowZero[start + 5] >>> 26 & 1 << 5
                    | belowZero[start + 6] >>> 25 & 1 << 6
                    | belowZero[start + 7] >>> 24 & 1 << 7;
            for (; signs != 0; signs &= signs - 1) {
                noted[found++] = start + Integer.numberOfTrailingZeros(signs);
            }
        }
        for (; start < end; start++) {
            if (belowZero[start] < 0) {
                noted[found++] = start;
            }
        }
        return found;
    }

    int value(int pixel) {
        return values[pixel];
    }

    int redExcess(int pixel) {
        return excess[pixel];
    }
}

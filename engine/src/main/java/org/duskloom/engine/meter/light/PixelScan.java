package org.duskloom.engine.meter.light;

/**
 * Adds up the light of some pixels in a row and finds those that may have made a change. That is nearly all that a
 * frame costs, so nothing is decided by a branch, as nobody can foretell which pixel has risen or fallen: tables are
 * looked up in one loop, and the next, over whole numbers, is one that compilers make vector instructions of.
 */
final class PixelScan {
    /** The most pixels at a time. */
    static final int MOST = 128;

    private static final int CODE = 0xFF;

    private final LuminanceSwings luminance;
    private final RedSwings reds;
    private final int[] values;
    private final int[] excess;
    private final int[] red;
    private final int[] turning;
    private final int[] reddish;

    /** What is added up: luminance, R - G - B and red, as {@link CodeLight} tells them. */
    private final long[] sums = new long[3];

    PixelScan(int pixels, LuminanceSwings luminance, RedSwings reds) {
        this.luminance = luminance;
        this.reds = reds;
        values = new int[pixels];
        excess = new int[pixels];
        red = new int[pixels];
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
        reds.sift(first, end, excess, red, reddish);
    }

    private void lookUp(byte[] rgb, int offset, int first, int end) {
        long light = 0;
        long reds = 0;
        long reddest = 0;
        for (int i = first; i < end; i++) {
            int at = offset + 3 * i;
            int r = rgb[at] & CODE;
            long pair = CodeLight.RED[r] + CodeLight.GREEN[rgb[at + 1] & CODE] + CodeLight.BLUE[rgb[at + 2] & CODE];
            values[i] = CodeLight.luminance(pair);
            excess[i] = CodeLight.redExcess(pair);
            red[i] = CodeLight.RED_ALONE[r];
            light += CodeLight.luminance(pair);
            reds += CodeLight.redExcess(pair);
            reddest += CodeLight.RED_ALONE[r];
        }
        sums[0] = light;
        sums[1] = reds;
        sums[2] = reddest;
    }

    long sum(int index) {
        return sums[index];
    }

    /**
     * Notes the pixels that may have made a change of luminance. Every pixel is written down, but only behind the right
     * ones is the place for the next moved on.
     *
     * @return how many there are
     */
    int turning(int first, int end, int[] noted) {
        return sifted(turning, first, end, noted);
    }

    /** Notes the pixels that may have made a change of red. */
    int reddish(int first, int end, int[] noted) {
        return sifted(reddish, first, end, noted);
    }

    private static int sifted(int[] belowZero, int first, int end, int[] noted) {
        int count = 0;
        for (int pixel = first; pixel < end; pixel++) {
            noted[count] = pixel;
            count += belowZero[pixel] >>> (Integer.SIZE - 1);
        }
        return count;
    }

    int value(int pixel) {
        return values[pixel];
    }

    int redExcess(int pixel) {
        return excess[pixel];
    }
}

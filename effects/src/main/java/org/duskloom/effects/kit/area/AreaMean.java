package org.duskloom.effects.kit.area;

import java.util.Arrays;
import org.duskloom.effects.kit.Motion;

/**
 * The mean of a picture over a box anywhere: over the cell of a light, but at least over one pixel where the picture
 * shall look smooth, which is bilinear interpolation. Beyond its edges the picture is transparent, or repeats. For one
 * thread.
 */
final class AreaMean {
    private static final int CHANNELS = LightImage.CHANNELS;

    /** A cell that is covered by less than this touches the picture by rounding only. */
    private static final double NOTHING = 1e-9;

    private final boolean repeats;
    private final double leastBox;
    private final Axis across;
    private final Axis down;
    private final double[] sums = new double[CHANNELS];

    /**
     * Prepares for a reel.
     *
     * @param width of its pictures, in their own pixels
     * @param height likewise
     */
    AreaMean(int width, int height, AreaKernel.Style style) {
        repeats = style.repeats();
        leastBox = style.sharp() ? 0 : 1;
        across = new Axis(width, repeats);
        down = new Axis(height, repeats);
    }

    /** Goes to cells of a size, in pixels of the reel's pictures. */
    void begin(double cellWidth, double cellHeight) {
        across.begin(Math.max(leastBox, cellWidth), cellWidth);
        down.begin(Math.max(leastBox, cellHeight), cellHeight);
    }

    /**
     * The light that a cell takes.
     *
     * @param picture of the reel, or one that is reduced to fewer pixels
     * @param shareX the middle of the box, as a share of the picture's width
     * @param shareY as a share of its height, from the top
     * @param target takes red, green, blue and alpha
     */
    void light(SummedLight picture, double shareX, double shareY, float[] target) {
        double x = repeats ? Motion.fraction(shareX) : shareX;
        double y = repeats ? Motion.fraction(shareY) : shareY;
        double covered = repeats ? 1 : covered(x, y);
        double all = covered > NOTHING ? sum(picture, x, y) : 0;
        double share = all > 0 ? covered / all : 0;
        if (share == 0) {
            Arrays.fill(target, 0, CHANNELS, 0f);
            return;
        }
        for (int channel = 0; channel < CHANNELS - 1; channel++) {
            target[channel] = (float) Math.min(1, sums[channel] * share);
        }
        target[CHANNELS - 1] = LightImage.alpha(sums[CHANNELS - 1] * share);
    }

    private double covered(double x, double y) {
        return across.touches(x) && down.touches(y) ? across.covered(x) * down.covered(y) : 0;
    }

    private double sum(SummedLight picture, double x, double y) {
        across.turnTo(picture.width());
        down.turnTo(picture.height());
        return picture.add(across.low(x), down.low(y), across.high(x), down.high(y), sums);
    }

    /** One side of the picture. */
    private static final class Axis {
        private final int sourceLength;
        private final boolean repeats;
        /** Half a box, in the reel's pixels. */
        private double reach;
        /** Half a cell, as a share of the picture. */
        private double cellReach;

        private int length;
        /** Half a box, in pixels of the picture, which may be reduced. */
        private double reachInPicture;

        Axis(int sourceLength, boolean repeats) {
            this.sourceLength = sourceLength;
            this.repeats = repeats;
        }

        void begin(double box, double cell) {
            reach = (repeats ? Math.min(box, sourceLength) : box) / 2;
            cellReach = cell / sourceLength / 2;
            length = 0;
        }

        /** Whether any of the cell lies on the picture. */
        boolean touches(double share) {
            return share + cellReach > 0 && share - cellReach < 1;
        }

        /**
         * How much of the cell lies on the picture, which it touches. What rounding decides is not asked for by a
         * branch, which no processor could guess.
         */
        double covered(double share) {
            double low = share - cellReach;
            double high = share + cellReach;
            double overlap = (high < 1 ? high : 1) - (low > 0 ? low : 0);
            return Math.min(1, overlap / (2 * cellReach));
        }

        /** Goes to a picture of a length, which may be reduced. */
        void turnTo(int pictureLength) {
            if (length != pictureLength) {
                length = pictureLength;
                reachInPicture = reach * ((double) length / sourceLength);
            }
        }

        /** Where the box begins, in pixels of the picture. */
        double low(double share) {
            double low = share * length - reachInPicture;
            return repeats || low > 0 ? low : 0;
        }

        double high(double share) {
            double high = share * length + reachInPicture;
            return repeats || high < length ? high : length;
        }
    }
}

package org.duskloom.effects.kit.area;

import org.duskloom.effects.kit.Motion;

/**
 * The exact mean of a picture over a box anywhere: over the cell of a light, but at least over one pixel where the picture
 * shall look smooth, which is bilinear interpolation. Beyond its edges the picture is transparent, or repeats. So that a box
 * never takes in more than some hundred pixels, the picture is first reduced to pixels of an eighth of the box.
 */
final class AreaMean {
    private static final int CHANNELS = LightImage.CHANNELS;
    private static final int PIXELS_OF_A_BOX = 8;

    /** A cell that is covered by less than this touches the picture by rounding only. */
    private static final double NOTHING = 1e-9;

    private final LightImage image;
    private final boolean repeats;
    private final Axis across;
    private final Axis down;

    private AreaMean(LightImage image, boolean repeats, Axis across, Axis down) {
        this.image = image;
        this.repeats = repeats;
        this.across = across;
        this.down = down;
    }

    /** Prepares a picture for lights of a footprint. */
    static AreaMean of(LightImage source, Footprint footprint, AreaKernel.Style style) {
        double least = style.sharp() ? 0 : 1;
        double boxWidth = Math.max(least, footprint.cellWidth());
        double boxHeight = Math.max(least, footprint.cellHeight());
        BoxFilter.Side across = reduced(source.width(), boxWidth);
        BoxFilter.Side down = reduced(source.height(), boxHeight);
        return new AreaMean(
                BoxFilter.filter(source, across, down, style.repeats()),
                style.repeats(),
                new Axis(source.width(), across.count(), boxWidth, footprint.cellWidth(), style.repeats()),
                new Axis(source.height(), down.count(), boxHeight, footprint.cellHeight(), style.repeats()));
    }

    private static BoxFilter.Side reduced(int length, double box) {
        if (box <= PIXELS_OF_A_BOX) {
            return BoxFilter.Side.unchanged(length);
        }
        int count = Math.max(1, (int) Math.ceil(length * (PIXELS_OF_A_BOX / box)));
        return count < length ? new BoxFilter.Side(count, (double) length / count) : BoxFilter.Side.unchanged(length);
    }

    /**
     * The light that a cell takes.
     *
     * @param shareX the middle of the box, as a share of the picture's width
     * @param shareY as a share of its height, from the top
     * @param target takes red, green, blue and alpha
     */
    void light(double shareX, double shareY, float[] target) {
        double x = repeats ? Motion.fraction(shareX) : shareX;
        double y = repeats ? Motion.fraction(shareY) : shareY;
        double covered = repeats ? 1 : across.covered(x) * down.covered(y);
        double[] sums = new double[CHANNELS];
        double all = covered > NOTHING ? sum(x, y, sums) : 0;
        double share = all > 0 ? covered / all : 0;
        for (int channel = 0; channel < CHANNELS - 1; channel++) {
            target[channel] = (float) (sums[channel] * share);
        }
        target[CHANNELS - 1] = LightImage.alpha(sums[CHANNELS - 1] * share);
    }

    /** Adds up what lies in the box; gives its size within the picture. */
    private double sum(double shareX, double shareY, double[] sums) {
        double left = across.low(shareX);
        double right = across.high(shareX);
        double top = down.low(shareY);
        double bottom = down.high(shareY);
        double all = 0;
        for (int row = (int) Math.floor(top); row < bottom; row++) {
            double rowShare = Math.min(bottom, row + 1.0) - Math.max(top, row);
            int first = (repeats ? Math.floorMod(row, image.height()) : row) * image.width();
            for (int column = (int) Math.floor(left); column < right; column++) {
                double share = rowShare * (Math.min(right, column + 1.0) - Math.max(left, column));
                int pixel = first + (repeats ? Math.floorMod(column, image.width()) : column);
                for (int channel = 0; channel < CHANNELS; channel++) {
                    sums[channel] += share * image.light()[pixel * CHANNELS + channel];
                }
                all += share;
            }
        }
        return all;
    }

    /** One side of the picture; lengths in pixels of the reduced picture. */
    private static final class Axis {
        private final boolean repeats;
        private final int length;
        private final double reach;
        /** Half a cell, as a share of the picture. */
        private final double cellReach;

        Axis(int sourceLength, int length, double box, double cell, boolean repeats) {
            this.repeats = repeats;
            this.length = length;
            double reduction = (double) length / sourceLength;
            reach = (repeats ? Math.min(box, sourceLength) : box) * reduction / 2;
            cellReach = cell / sourceLength / 2;
        }

        /** How much of the cell lies on the picture. */
        double covered(double share) {
            double overlap = Math.min(1, share + cellReach) - Math.max(0, share - cellReach);
            return Math.min(1, Math.max(0, overlap / (2 * cellReach)));
        }

        double low(double share) {
            double low = share * length - reach;
            return repeats ? low : Math.max(0, low);
        }

        double high(double share) {
            double high = share * length + reach;
            return repeats ? high : Math.min(length, high);
        }
    }
}

package org.duskloom.effects.kit.area;

import java.util.Arrays;

/**
 * A picture whose light over any box is found in as much time whatever the size of the box. A box of few pixels is
 * added up pixel by pixel; a larger one is found from sums over all that lies left of and above each pixel's corner, of
 * which it takes the four at its own corners (F. C. Crow, "Summed-area tables for texture mapping", SIGGRAPH 1984).
 * Between corners of pixels these sums are bilinear, since pixels are squares of even light, so both ways are exact.
 * Immutable.
 */
final class SummedLight {
    private static final int CHANNELS = LightImage.CHANNELS;

    /** A box of no more pixels than this, in parts too, is added up; that costs as much as four corners of a table. */
    private static final int FEW_PIXELS = 16;

    private final LightImage image;
    private final boolean repeats;
    private final int rowOfTable;
    /** Sums at the corners of pixels, row by row; null where all boxes are added up. */
    private final double[] sums;

    private SummedLight(LightImage image, boolean repeats, double[] sums) {
        this.image = image;
        this.repeats = repeats;
        this.rowOfTable = (image.width() + 1) * CHANNELS;
        this.sums = sums;
    }

    /** A picture whose boxes are added up, however large: it takes no more memory. */
    static SummedLight plain(LightImage image, boolean repeats) {
        return new SummedLight(image, repeats, null);
    }

    /** A picture for boxes of any size. */
    static SummedLight withTable(LightImage image, boolean repeats) {
        int row = (image.width() + 1) * CHANNELS;
        double[] sums = new double[row * (image.height() + 1)];
        double[] left = new double[CHANNELS];
        int pixel = 0;
        for (int above = CHANNELS; above < row * image.height(); above += CHANNELS) {
            Arrays.fill(left, 0);
            for (int column = 0; column < image.width(); column++, above += CHANNELS, pixel += CHANNELS) {
                for (int channel = 0; channel < CHANNELS; channel++) {
                    left[channel] += image.light()[pixel + channel];
                    sums[above + row + channel] = sums[above + channel] + left[channel];
                }
            }
        }
        return new SummedLight(image, repeats, sums);
    }

    int width() {
        return image.width();
    }

    int height() {
        return image.height();
    }

    /**
     * Adds up the light in a box, each pixel by how much of it lies within. Where the picture does not repeat, no box
     * may reach over its edges; where it does, none may be larger than it.
     *
     * @param left in pixels from the left edge
     * @param top in pixels from the upper edge
     * @param light takes the sums, which are not below 0
     * @return how many pixels the box has
     */
    double add(double left, double top, double right, double bottom, double[] light) {
        int firstColumn = (int) Math.floor(left);
        int firstRow = (int) Math.floor(top);
        int columns = (int) Math.ceil(right) - firstColumn;
        int rows = (int) Math.ceil(bottom) - firstRow;
        if (sums == null || (long) columns * rows <= FEW_PIXELS) {
            return addUp(firstColumn, columns, firstRow, rows, left, top, right, bottom, light);
        }
        Arrays.fill(light, 0);
        addTiles(left, top, right, bottom, light);
        for (int channel = 0; channel < CHANNELS; channel++) {
            light[channel] = Math.max(0, light[channel]);
        }
        return (right - left) * (bottom - top);
    }

    private double addUp(
            int firstColumn,
            int columns,
            int firstRow,
            int rows,
            double left,
            double top,
            double right,
            double bottom,
            double[] light) {
        float[] pixels = image.light();
        double red = 0;
        double green = 0;
        double blue = 0;
        double alpha = 0;
        double all = 0;
        for (int row = 0; row < rows; row++) {
            double rowShare = part(row, rows, firstRow, top, bottom);
            int rowStart = within(firstRow + row, image.height()) * image.width();
            for (int column = 0; column < columns; column++) {
                double share = rowShare * part(column, columns, firstColumn, left, right);
                int pixel = (rowStart + within(firstColumn + column, image.width())) * CHANNELS;
                red += share * pixels[pixel];
                green += share * pixels[pixel + 1];
                blue += share * pixels[pixel + 2];
                alpha += share * pixels[pixel + 3];
                all += share;
            }
        }
        light[0] = red;
        light[1] = green;
        light[2] = blue;
        light[3] = alpha;
        return all;
    }

    /** How much of a row or a column lies within a side of a box, by its number among those that the box touches. */
    private static double part(int number, int count, int first, double low, double high) {
        double from = number == 0 ? low : first + number;
        double to = number == count - 1 ? high : first + number + 1.0;
        return to - from;
    }

    /** Where a row or a column lies in a picture that goes on beyond its edges; the same if it lies within. */
    private static int within(int place, int length) {
        return place >= 0 && place < length ? place : Math.floorMod(place, length);
    }

    /** Adds what of the box lies on each repetition of the picture. */
    private void addTiles(double left, double top, double right, double bottom, double[] light) {
        int width = image.width();
        int height = image.height();
        for (double y = top; y < bottom; ) {
            double tileTop = Math.floor(y / height) * height;
            double tileBottom = Math.min(bottom, tileTop + height);
            for (double x = left; x < right; ) {
                double tileLeft = Math.floor(x / width) * width;
                double tileRight = Math.min(right, tileLeft + width);
                addCorner(tileRight - tileLeft, tileBottom - tileTop, 1, light);
                addCorner(x - tileLeft, tileBottom - tileTop, -1, light);
                addCorner(tileRight - tileLeft, y - tileTop, -1, light);
                addCorner(x - tileLeft, y - tileTop, 1, light);
                x = tileRight;
            }
            y = tileBottom;
        }
    }

    /** Adds the sum over all that lies left of and above a place. */
    private void addCorner(double x, double y, int sign, double[] light) {
        int column = Math.min(image.width() - 1, (int) x);
        int row = Math.min(image.height() - 1, (int) y);
        double right = x - column;
        double below = (y - row) * sign;
        double above = sign - below;
        double c = (1 - right) * above;
        double d = right * above;
        double e = (1 - right) * below;
        double f = right * below;
        int p = row * rowOfTable + column * CHANNELS;
        int q = p + rowOfTable;
        for (int channel = 0; channel < CHANNELS; channel++) {
            light[channel] += sums[p + channel] * c
                    + sums[p + CHANNELS + channel] * d
                    + sums[q + channel] * e
                    + sums[q + CHANNELS + channel] * f;
        }
    }
}

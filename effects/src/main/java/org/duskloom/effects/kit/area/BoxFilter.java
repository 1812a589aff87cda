package org.duskloom.effects.kit.area;

/**
 * Means of a picture over boxes, along one of its sides after the other: exact for a picture whose pixels are squares
 * of even light. A box that reaches over the edge is cut there, or goes on at the other edge where the picture repeats.
 */
final class BoxFilter {
    private static final int CHANNELS = LightImage.CHANNELS;

    private BoxFilter() {}

    /**
     * How one side is filtered: as many boxes as there shall be pixels, their middles spread evenly.
     *
     * @param count at least 1
     * @param box length of a box, in pixels of the source; above 0
     */
    record Side(int count, double box) {
        /** Leaves a side as it is. */
        static Side unchanged(int length) {
            return new Side(length, 1);
        }

        private boolean isUnchanged(int length) {
            return count == length && box == 1;
        }
    }

    /** The means of a picture. */
    static LightImage filter(LightImage image, Side across, Side down, boolean repeats) {
        LightImage narrowed = across.isUnchanged(image.width()) ? image : acrossOnly(image, across, repeats);
        return down.isUnchanged(image.height()) ? narrowed : downOnly(narrowed, down, repeats);
    }

    private static LightImage acrossOnly(LightImage image, Side side, boolean repeats) {
        float[] target = new float[side.count * image.height() * CHANNELS];
        Run run = new Run(image.light(), CHANNELS, image.width(), repeats);
        for (int i = 0; i < side.count; i++) {
            double middle = (i + 0.5) * image.width() / side.count;
            for (int row = 0; row < image.height(); row++) {
                run.mean(row * image.width() * CHANNELS, middle, side.box, target, (row * side.count + i) * CHANNELS);
            }
        }
        return new LightImage(side.count, image.height(), target);
    }

    private static LightImage downOnly(LightImage image, Side side, boolean repeats) {
        int width = image.width();
        float[] target = new float[side.count * width * CHANNELS];
        Run run = new Run(image.light(), width * CHANNELS, image.height(), repeats);
        for (int i = 0; i < side.count; i++) {
            double middle = (i + 0.5) * image.height() / side.count;
            for (int column = 0; column < width; column++) {
                run.mean(column * CHANNELS, middle, side.box, target, (i * width + column) * CHANNELS);
            }
        }
        return new LightImage(width, side.count, target);
    }

    /** Pixels in a row or a column. */
    private record Run(float[] light, int step, int length, boolean repeats) {

        /** The mean of the box about a place, of the run that begins at an index. */
        void mean(int first, double middle, double box, float[] target, int at) {
            double reach = (repeats ? Math.min(box, length) : box) / 2;
            double low = repeats ? middle - reach : Math.max(0, middle - reach);
            double high = repeats ? middle + reach : Math.min(length, middle + reach);
            double red = 0;
            double green = 0;
            double blue = 0;
            double alpha = 0;
            double all = 0;
            for (int pixel = (int) Math.floor(low); pixel < high; pixel++) {
                double share = Math.min(high, pixel + 1.0) - Math.max(low, pixel);
                int from = first + (repeats ? Math.floorMod(pixel, length) : pixel) * step;
                red += share * light[from];
                green += share * light[from + 1];
                blue += share * light[from + 2];
                alpha += share * light[from + 3];
                all += share;
            }
            target[at] = (float) (red / all);
            target[at + 1] = (float) (green / all);
            target[at + 2] = (float) (blue / all);
            target[at + 3] = LightImage.alpha(alpha / all);
        }
    }
}

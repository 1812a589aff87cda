package org.duskloom.effects.kit.area;

/**
 * How a picture is reduced to fewer pixels: each the exact mean of what it stands for. In steps of an eighth of an
 * octave, so that members whose lights are nearly as far apart share a picture.
 *
 * @param across least length of a new pixel, in pixels of the picture; 1 leaves them as they are
 * @param down likewise
 */
record Reduction(double across, double down) {
    private static final double LN_2 = StrictMath.log(2);
    private static final int STEPS_OF_AN_OCTAVE = 8;

    /**
     * The reduction to pixels of at least a length, or a little shorter; none where they would be shorter than a pixel.
     */
    static Reduction of(double across, double down) {
        return new Reduction(step(across), step(down));
    }

    private static double step(double length) {
        if (length <= 1) {
            return 1;
        }
        double steps = Math.floor(StrictMath.log(length) / LN_2 * STEPS_OF_AN_OCTAVE);
        return StrictMath.pow(2, steps / STEPS_OF_AN_OCTAVE);
    }

    /** A reduction that goes further. */
    Reduction by(double times) {
        return new Reduction(across * times, down * times);
    }

    /** What is left of a picture. */
    Size size(int width, int height) {
        return new Size(count(width, across), count(height, down));
    }

    private static int count(int length, double pixel) {
        return Math.max(1, (int) Math.ceil(length / pixel));
    }

    /**
     * How many pixels a reduced picture has; where these are the same, so are the pictures.
     *
     * @param columns at least 1
     * @param rows at least 1
     */
    record Size(int columns, int rows) {
        double pixels() {
            return (double) columns * rows;
        }

        /** A picture reduced to it, each pixel the exact mean of what it stands for. */
        LightImage apply(LightImage image, boolean repeats) {
            return BoxFilter.filter(image, side(image.width(), columns), side(image.height(), rows), repeats);
        }

        private static BoxFilter.Side side(int length, int count) {
            return count < length
                    ? new BoxFilter.Side(count, (double) length / count)
                    : BoxFilter.Side.unchanged(length);
        }
    }
}

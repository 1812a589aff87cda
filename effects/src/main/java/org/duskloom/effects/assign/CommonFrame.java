package org.duskloom.effects.assign;

/**
 * The frame of reference in which two sets of points are paired: the box round both lies about 0, and its longest half
 * side is 1.
 *
 * @param x the middle of the box
 * @param y likewise
 * @param z likewise
 * @param unit the longest half side; 1 where all points lie at one place
 */
record CommonFrame(double x, double y, double z, double unit) {
    /** How fine places are told apart. Far above the rounding of coordinates, far below what can be seen. */
    private static final double GRID = 0x1p-24;

    /** In radians. Large against the grid, so that it decides between pairings that differ by rounding only. */
    private static final double A_LITTLE = 1e-6;

    private static final double A_LITTLE_RIGHT = 2e-9;
    private static final double A_LITTLE_UP = 1e-9;

    /** The frame for two sets, of one point at least. */
    static CommonFrame of(Points from, Points to) {
        double[] middle = new double[Points.AXES];
        double unit = 0;
        for (int axis = 0; axis < Points.AXES; axis++) {
            double least = Double.POSITIVE_INFINITY;
            double greatest = Double.NEGATIVE_INFINITY;
            for (double[] values : new double[][] {from.along(axis), to.along(axis)}) {
                for (double value : values) {
                    least = Math.min(least, value);
                    greatest = Math.max(greatest, value);
                }
            }
            middle[axis] = least + (greatest - least) / 2;
            unit = Math.max(unit, (greatest - least) / 2);
        }
        return new CommonFrame(middle[0], middle[1], middle[2], unit > 0 ? unit : 1);
    }

    /** Points as they lie in the frame, on a fine grid. */
    Points placed(Points points) {
        return new Points(placed(points.x(), x), placed(points.y(), y), placed(points.z(), z));
    }

    private double[] placed(double[] values, double middle) {
        double[] placed = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            // Adding 0 makes -0 the same as 0.
            placed[i] = Math.rint((values[i] - middle) / unit / GRID) * GRID + 0.0;
        }
        return placed;
    }

    /**
     * Points of the frame turned clockwise by very little, and moved to the left and down by less: of pairings to them
     * that were equally long, the one is now the shortest that goes counter-clockwise, or to the right and up.
     */
    static Points turnedALittle(Points points) {
        double[] x = new double[points.count()];
        double[] y = new double[points.count()];
        for (int i = 0; i < x.length; i++) {
            x[i] = points.x()[i] + A_LITTLE * points.y()[i] - A_LITTLE_RIGHT;
            y[i] = points.y()[i] - A_LITTLE * points.x()[i] - A_LITTLE_UP;
        }
        return new Points(x, y, points.z());
    }
}

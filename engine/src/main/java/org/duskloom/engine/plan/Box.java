package org.duskloom.engine.plan;

import org.duskloom.engine.map.Positions;

/**
 * A bounding box, by its centre and half-sides, in stage units.
 *
 * @param centreX centre
 * @param centreY centre
 * @param centreZ centre
 * @param halfX half of its side along x
 * @param halfY half of its side along y
 * @param halfZ half of its side along z
 */
record Box(double centreX, double centreY, double centreZ, double halfX, double halfY, double halfZ) {
    /** The box round some pixels; at least one. */
    static Box round(int[] pixels, Positions positions) {
        double[] low = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        double[] high = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (int pixel : pixels) {
            widen(low, high, 0, positions.x(pixel));
            widen(low, high, 1, positions.y(pixel));
            widen(low, high, 2, positions.z(pixel));
        }
        return new Box(
                middle(low, high, 0),
                middle(low, high, 1),
                middle(low, high, 2),
                half(low, high, 0),
                half(low, high, 1),
                half(low, high, 2));
    }

    /** The longest half-side. */
    double longestHalf() {
        return Math.max(halfX, Math.max(halfY, halfZ));
    }

    private static void widen(double[] low, double[] high, int axis, double value) {
        low[axis] = Math.min(low[axis], value);
        high[axis] = Math.max(high[axis], value);
    }

    private static double middle(double[] low, double[] high, int axis) {
        return low[axis] + (high[axis] - low[axis]) / 2;
    }

    private static double half(double[] low, double[] high, int axis) {
        return (high[axis] - low[axis]) / 2;
    }
}

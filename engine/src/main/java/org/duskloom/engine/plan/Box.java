package org.duskloom.engine.plan;

import java.util.Arrays;
import org.duskloom.engine.map.Positions;

/**
 * A bounding box, by its centre and half-sides, in stage units. A side that is no longer than the rounding of turned
 * coordinates counts as none, so that a straight line of pixels is one whichever way it is turned.
 *
 * @param centreX centre
 * @param centreY centre
 * @param centreZ centre
 * @param halfX half of its side along x
 * @param halfY half of its side along y
 * @param halfZ half of its side along z
 * @param samePlace the greatest distance at which two pixels count as lying side by side; above zero
 */
record Box(double centreX, double centreY, double centreZ, double halfX, double halfY, double halfZ, double samePlace) {
    /** A share of the longest half-side that cannot be seen. */
    private static final double UNSEEN = 1e-6;

    /** A share of a coordinate's size that may be rounding: some thousand units in the last place of a double. */
    private static final double ROUNDING = 1e-12;

    /** The box round some pixels; at least one. */
    static Box round(int[] pixels, Positions positions) {
        return round(pixels, GroundAxes.of(positions));
    }

    /** The box round some pixels along some axes; at least one. */
    static Box round(int[] pixels, GroundAxes axes) {
        double[] low = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        double[] high = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (int pixel : pixels) {
            widen(low, high, 0, axes.x(pixel));
            widen(low, high, 1, axes.y(pixel));
            widen(low, high, 2, axes.z(pixel));
        }
        return between(low, high);
    }

    private static Box between(double[] low, double[] high) {
        double[] centre = new double[3];
        double[] half = new double[3];
        double farthest = Double.MIN_NORMAL;
        for (int axis = 0; axis < 3; axis++) {
            half[axis] = (high[axis] - low[axis]) / 2;
            centre[axis] = low[axis] + half[axis];
            farthest = Math.max(farthest, Math.max(Math.abs(low[axis]), Math.abs(high[axis])));
        }
        double longest = Arrays.stream(half).max().orElseThrow();
        double samePlace = Math.max(UNSEEN * longest, ROUNDING * farthest);
        return new Box(
                centre[0],
                centre[1],
                centre[2],
                half[0] > samePlace ? half[0] : 0,
                half[1] > samePlace ? half[1] : 0,
                half[2] > samePlace ? half[2] : 0,
                samePlace);
    }

    /** The longest half-side. */
    double longestHalf() {
        return Math.max(halfX, Math.max(halfY, halfZ));
    }

    private static void widen(double[] low, double[] high, int axis, double value) {
        low[axis] = Math.min(low[axis], value);
        high[axis] = Math.max(high[axis], value);
    }
}

package org.duskloom.engine.survey.fit;

import java.util.Arrays;
import org.duskloom.engine.map.Positions;

/** How far points spread. */
final class Extent {
    private Extent() {}

    /**
     * In how many directions points spread by more than measuring errors may feign, 0 to 3: a mirror image across the
     * thinnest direction changes the places by twice the spread, which has to be a few standard deviations in all.
     *
     * @param points the points
     * @param which which of them
     * @param sigma the measuring error in each coordinate
     */
    static int rank(Positions points, int[] which, double sigma) {
        Moments moments = new Moments();
        for (int i : which) {
            double x = points.x(i);
            double y = points.y(i);
            double z = points.z(i);
            moments.add(x, y, z, x, y, z);
        }
        // The products of coordinates with themselves: singular values are the squared spreads.
        Svd3 spread = Svd3.of(moments.aboutMeans().cross());
        double least = 4 * sigma * sigma;
        return (spread.first() > least ? 1 : 0) + (spread.second() > least ? 1 : 0) + (spread.third() > least ? 1 : 0);
    }

    static double distance(Positions points, int a, int b) {
        double dx = points.x(a) - points.x(b);
        double dy = points.y(a) - points.y(b);
        double dz = points.z(a) - points.z(b);
        return Math.sqrt(dx * dx + dy * dy + dz * dz);
    }

    /** The median distance from a point to the next one, of so many; 0 for a single point. */
    static double medianStep(Positions points, int first, int count) {
        double[] steps = new double[Math.max(0, count - 1)];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = distance(points, first + i, first + i + 1);
        }
        Arrays.sort(steps);
        return steps.length == 0 ? 0 : steps[steps.length / 2];
    }

    /** The diagonal of the box round the points. */
    static double diagonal(Positions points) {
        double[] low = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        double[] high = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (int i = 0; i < points.size(); i++) {
            double[] point = {points.x(i), points.y(i), points.z(i)};
            for (int axis = 0; axis < 3; axis++) {
                low[axis] = Math.min(low[axis], point[axis]);
                high[axis] = Math.max(high[axis], point[axis]);
            }
        }
        double x = high[0] - low[0];
        double y = high[1] - low[1];
        double z = high[2] - low[2];
        return Math.sqrt(x * x + y * y + z * z);
    }
}

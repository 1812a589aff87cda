package org.duskloom.engine.meter.light;

import java.util.Arrays;
import java.util.Comparator;

/** How far each of many places is from its nearest neighbour. */
final class PixelSpacing {
    private PixelSpacing() {}

    /**
     * The distances.
     *
     * @param most what is given for places that have no neighbour as near as that
     */
    static double[] nearest(double[] x, double[] y, double most) {
        Integer[] order = new Integer[x.length];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.comparingDouble(i -> x[i]));
        double[] nearest = new double[x.length];
        Arrays.fill(nearest, most);
        for (int i = 0; i < order.length; i++) {
            int one = order[i];
            // A neighbour to the left has looked at this one already.
            for (int j = i + 1; j < order.length && x[order[j]] - x[one] < most; j++) {
                int other = order[j];
                double dx = x[other] - x[one];
                double dy = y[other] - y[one];
                double distance = Math.sqrt(dx * dx + dy * dy);
                nearest[one] = Math.min(nearest[one], distance);
                nearest[other] = Math.min(nearest[other], distance);
            }
        }
        return nearest;
    }
}

package org.duskloom.engine.sheet;

import java.util.Arrays;

/** How far apart pixels are along the wire. */
final class HoleSpacing {
    private HoleSpacing() {}

    /** The median distance from one pixel to the next; 40 mm where there is none. */
    static double median(double[] x, double[] y) {
        double[] steps = new double[Math.max(0, x.length - 1)];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = StrictMath.hypot(x[i + 1] - x[i], y[i + 1] - y[i]);
        }
        Arrays.sort(steps);
        double median = steps.length == 0 ? 0 : steps[steps.length / 2];
        return median > 0 ? median : 40;
    }
}

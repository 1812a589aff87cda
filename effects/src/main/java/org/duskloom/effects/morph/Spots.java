package org.duskloom.effects.morph;

import org.duskloom.effects.assign.Points;

/**
 * Places in space, the three coordinates of each side by side: whoever asks for one finds all of it in one line of the
 * processor's cache.
 */
final class Spots {
    static final int AXES = Points.AXES;

    private Spots() {}

    /** The places of some points, given by number. */
    static double[] of(Points all, int[] numbers) {
        double[] spots = new double[AXES * numbers.length];
        for (int axis = 0; axis < AXES; axis++) {
            double[] along = all.along(axis);
            for (int i = 0; i < numbers.length; i++) {
                spots[AXES * i + axis] = along[numbers[i]];
            }
        }
        return spots;
    }

    /** The square of the distance of one of some places from one of others. */
    static double squaredDistance(double[] spots, int spot, double[] others, int other) {
        double dx = spots[AXES * spot] - others[AXES * other];
        double dy = spots[AXES * spot + 1] - others[AXES * other + 1];
        double dz = spots[AXES * spot + 2] - others[AXES * other + 2];
        return dx * dx + dy * dy + dz * dz;
    }

    /** The places at a share of the way from some to others. */
    static void between(double[] starts, double[] ends, double share, double[] spots) {
        double left = 1 - share;
        for (int i = 0; i < starts.length; i++) {
            spots[i] = starts[i] * left + ends[i] * share;
        }
    }
}

package org.duskloom.effects.morph;

import org.duskloom.effects.assign.Points;

/**
 * Places in space. The two coordinates that face the audience stand side by side, so that whoever asks for a place
 * finds them in one line of the processor's cache; the third is left out where all of a display hangs at 0, which saves
 * a third of the memory that a frame walks through.
 *
 * @param plane x and y of each place
 * @param depths z of each place; none where it is 0 for all
 */
record Spots(double[] plane, double[] depths) {
    /** How many coordinates of each place stand side by side. */
    static final int SIDE_BY_SIDE = 2;

    /** Room for so many places, with or without their third coordinate. */
    static Spots room(int count, boolean flat) {
        return new Spots(new double[SIDE_BY_SIDE * count], new double[flat ? 0 : count]);
    }

    /**
     * The places of some points, given by number.
     *
     * @param flat whether z is 0 for all of them, and is left out
     */
    static Spots of(Points all, int[] numbers, boolean flat) {
        Spots spots = room(numbers.length, flat);
        for (int i = 0; i < numbers.length; i++) {
            spots.plane[SIDE_BY_SIDE * i] = all.x()[numbers[i]];
            spots.plane[SIDE_BY_SIDE * i + 1] = all.y()[numbers[i]];
            if (!flat) {
                spots.depths[i] = all.z()[numbers[i]];
            }
        }
        return spots;
    }

    /** Whether the third coordinate is left out. */
    boolean isFlat() {
        return depths.length == 0;
    }

    double x(int spot) {
        return plane[SIDE_BY_SIDE * spot];
    }

    double y(int spot) {
        return plane[SIDE_BY_SIDE * spot + 1];
    }

    double z(int spot) {
        return isFlat() ? 0 : depths[spot];
    }

    /** The square of the distance of one of some places from one of others, z left out. */
    static double flatSquare(double[] plane, int spot, double[] otherPlane, int other) {
        double dx = plane[SIDE_BY_SIDE * spot] - otherPlane[SIDE_BY_SIDE * other];
        double dy = plane[SIDE_BY_SIDE * spot + 1] - otherPlane[SIDE_BY_SIDE * other + 1];
        return dx * dx + dy * dy;
    }

    /** The square of the distance of one of these places from one of others; none of them are flat. */
    double squaredDistance(int spot, Spots others, int other) {
        double dz = depths[spot] - others.depths[other];
        return flatSquare(plane, spot, others.plane, other) + dz * dz;
    }

    /** Sets these to the places at a share of the way from some to others, of which none may be more. */
    void setBetween(Spots starts, Spots ends, double share) {
        between(starts.plane, ends.plane, share, plane);
        between(starts.depths, ends.depths, share, depths);
    }

    private static void between(double[] starts, double[] ends, double share, double[] between) {
        double left = 1 - share;
        for (int i = 0; i < starts.length; i++) {
            between[i] = starts[i] * left + ends[i] * share;
        }
    }
}

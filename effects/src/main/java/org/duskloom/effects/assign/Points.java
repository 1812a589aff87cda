package org.duskloom.effects.assign;

import java.util.Objects;

/**
 * Places in space, each known by its number.
 *
 * @param x to the right
 * @param y up
 * @param z toward the audience
 */
public record Points(double[] x, double[] y, double[] z) {
    /** How many axes there are. */
    public static final int AXES = 3;

    public Points {
        Objects.requireNonNull(x, "x");
        if (y.length != x.length || z.length != x.length) {
            throw new IllegalArgumentException(x.length + ", " + y.length + " and " + z.length + " coordinates");
        }
    }

    /** The points with these numbers, in this order. */
    public Points picked(int[] numbers) {
        return new Points(picked(x, numbers), picked(y, numbers), picked(z, numbers));
    }

    /** How many there are. */
    public int count() {
        return x.length;
    }

    /** The coordinates along one of the three axes. */
    public double[] along(int axis) {
        return switch (axis) {
            case 0 -> x;
            case 1 -> y;
            default -> z;
        };
    }

    /** The axis along which some of the points, given by number, reach farthest; the first of equals. */
    public int longestAxis(int[] numbers, int from, int to) {
        int longest = 0;
        double length = 0;
        for (int axis = 0; axis < AXES; axis++) {
            double extent = extent(axis, numbers, from, to);
            if (extent > length) {
                longest = axis;
                length = extent;
            }
        }
        return longest;
    }

    /** How far some of the points, given by number, reach along an axis. */
    public double extent(int axis, int[] numbers, int from, int to) {
        double[] values = along(axis);
        double least = values[numbers[from]];
        double greatest = least;
        for (int i = from + 1; i < to; i++) {
            double value = values[numbers[i]];
            least = Math.min(least, value);
            greatest = Math.max(greatest, value);
        }
        return greatest - least;
    }

    /** The square of the distance from one of these points to one of others. */
    public double squaredDistance(int number, Points others, int otherNumber) {
        double dx = x[number] - others.x[otherNumber];
        double dy = y[number] - others.y[otherNumber];
        double dz = z[number] - others.z[otherNumber];
        return dx * dx + dy * dy + dz * dz;
    }

    private static double[] picked(double[] values, int[] numbers) {
        double[] picked = new double[numbers.length];
        for (int i = 0; i < numbers.length; i++) {
            picked[i] = values[numbers[i]];
        }
        return picked;
    }
}

package org.duskloom.engine.map;

import java.util.Arrays;

/** The coordinates of all pixels in one frame of reference, by global pixel index. Immutable; equal by content. */
public final class Positions {
    private final double[] x;
    private final double[] y;
    private final double[] z;

    /**
     * @param x one value per pixel
     * @param y one value per pixel
     * @param z one value per pixel
     * @throws IllegalArgumentException if the lengths differ or a value is not finite
     */
    public Positions(double[] x, double[] y, double[] z) {
        this(x.clone(), y.clone(), z.clone(), true);
    }

    private Positions(double[] x, double[] y, double[] z, boolean owned) {
        if (x.length != y.length || x.length != z.length) {
            throw new IllegalArgumentException(
                    "x, y and z have " + x.length + ", " + y.length + " and " + z.length + " values");
        }
        this.x = finite(x);
        this.y = finite(y);
        this.z = finite(z);
    }

    /** The same without a copy, for arrays that nobody else keeps. */
    static Positions owning(double[] x, double[] y, double[] z) {
        return new Positions(x, y, z, true);
    }

    /** How many pixels. */
    public int size() {
        return x.length;
    }

    /** x of a pixel. */
    public double x(int pixel) {
        return x[pixel];
    }

    /** y of a pixel. */
    public double y(int pixel) {
        return y[pixel];
    }

    /** z of a pixel. */
    public double z(int pixel) {
        return z[pixel];
    }

    /** How far it is straight from one pixel to another. */
    public double distance(int from, int to) {
        double dx = x[to] - x[from];
        double dy = y[to] - y[from];
        double dz = z[to] - z[from];
        return Math.sqrt(dx * dx + dy * dy + dz * dz);
    }

    private static double[] finite(double[] values) {
        for (double value : values) {
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException("a coordinate is " + value);
            }
        }
        return values;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Positions that
                && Arrays.equals(x, that.x)
                && Arrays.equals(y, that.y)
                && Arrays.equals(z, that.z);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * Arrays.hashCode(x) + Arrays.hashCode(y)) + Arrays.hashCode(z);
    }
}

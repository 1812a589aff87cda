package org.duskloom.engine.map;

import java.util.Arrays;

/** Coordinates while rows are read, in the order of the rows. */
final class GrowingPositions {
    private double[] x = new double[256];
    private double[] y = new double[256];
    private double[] z = new double[256];
    private int size;

    void add(double nextX, double nextY, double nextZ) {
        if (size == x.length) {
            x = Arrays.copyOf(x, size * 2);
            y = Arrays.copyOf(y, size * 2);
            z = Arrays.copyOf(z, size * 2);
        }
        x[size] = nextX;
        y[size] = nextY;
        z[size] = nextZ;
        size++;
    }

    int size() {
        return size;
    }

    /** The rows named, in that order. */
    Positions inOrder(int[] rows) {
        return Positions.owning(pick(x, rows), pick(y, rows), pick(z, rows));
    }

    private static double[] pick(double[] values, int[] rows) {
        double[] picked = new double[rows.length];
        for (int i = 0; i < rows.length; i++) {
            picked[i] = values[rows[i]];
        }
        return picked;
    }
}

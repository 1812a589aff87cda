package org.duskloom.engine.survey.fit;

/**
 * The singular value decomposition A = U diag(first, second, third) V^T of a matrix of three rows and columns: U and V are
 * orthogonal, the singular values fall and are not below 0. Found by one-sided Jacobi turns (M. R. Hestenes, Journal of
 * the Society for Industrial and Applied Mathematics 6(1), 1958), which keep small singular values exact. The same bits on
 * every machine.
 *
 * @param u the left singular vectors as columns
 * @param first the largest singular value
 * @param second the middle one
 * @param third the smallest one
 * @param v the right singular vectors as columns
 */
record Svd3(Linear3 u, double first, double second, double third, Linear3 v) {
    private static final int MAX_SWEEPS = 40;

    /** The distance from 1 to the next larger number. */
    private static final double ROUNDING = 0x1p-52;

    /** A column shorter than this share of the longest one is rounding. */
    private static final double NOTHING = 1e-14;

    static Svd3 of(Linear3 a) {
        double[][] columns = {{a.xx(), a.yx(), a.zx()}, {a.xy(), a.yy(), a.zy()}, {a.xz(), a.yz(), a.zz()}};
        double[][] right = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
        for (int sweep = 0; sweep < MAX_SWEEPS && sweep(columns, right); sweep++) {}
        order(columns, right, 0, 1);
        order(columns, right, 1, 2);
        order(columns, right, 0, 1);
        double[] values = {length(columns[0]), length(columns[1]), length(columns[2])};
        return new Svd3(
                left(columns, values),
                values[0],
                values[1],
                values[2],
                Linear3.ofColumns(right[0], right[1], right[2]));
    }

    /** Turns every pair of columns once; whether any was not yet at a right angle. */
    private static boolean sweep(double[][] columns, double[][] right) {
        boolean turned = turn(columns, right, 0, 1);
        turned |= turn(columns, right, 0, 2);
        return turned | turn(columns, right, 1, 2);
    }

    private static boolean turn(double[][] columns, double[][] right, int i, int j) {
        double alpha = dot(columns[i], columns[i]);
        double beta = dot(columns[j], columns[j]);
        double gamma = dot(columns[i], columns[j]);
        if (gamma == 0 || Math.abs(gamma) <= ROUNDING * Math.sqrt(alpha) * Math.sqrt(beta)) {
            return false;
        }
        double zeta = (beta - alpha) / (2 * gamma);
        double tangent = (zeta < 0 ? -1 : 1) / (Math.abs(zeta) + Math.sqrt(1 + zeta * zeta));
        double cosine = 1 / Math.sqrt(1 + tangent * tangent);
        mix(columns[i], columns[j], cosine, cosine * tangent);
        mix(right[i], right[j], cosine, cosine * tangent);
        return true;
    }

    private static void mix(double[] a, double[] b, double cosine, double sine) {
        for (int k = 0; k < 3; k++) {
            double before = a[k];
            a[k] = cosine * before - sine * b[k];
            b[k] = sine * before + cosine * b[k];
        }
    }

    private static void order(double[][] columns, double[][] right, int i, int j) {
        if (length(columns[i]) < length(columns[j])) {
            swap(columns, i, j);
            swap(right, i, j);
        }
    }

    private static void swap(double[][] columns, int i, int j) {
        double[] kept = columns[i];
        columns[i] = columns[j];
        columns[j] = kept;
    }

    /** The columns at length 1; those that vanish are replaced by ones at right angles to the others. */
    private static Linear3 left(double[][] columns, double[] values) {
        double least = NOTHING * values[0];
        double[] x = values[0] > 0 ? unit(columns[0], values[0]) : new double[] {1, 0, 0};
        double[] y = values[1] > least ? unit(columns[1], values[1]) : acrossTo(x);
        double[] z = values[2] > least ? unit(columns[2], values[2]) : cross(x, y);
        return Linear3.ofColumns(x, y, z);
    }

    private static double[] acrossTo(double[] x) {
        int smallest = 0;
        for (int k = 1; k < 3; k++) {
            smallest = Math.abs(x[k]) < Math.abs(x[smallest]) ? k : smallest;
        }
        double[] axis = new double[3];
        axis[smallest] = 1;
        double[] across = cross(x, axis);
        return unit(across, length(across));
    }

    private static double[] unit(double[] a, double length) {
        return new double[] {a[0] / length, a[1] / length, a[2] / length};
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    private static double length(double[] a) {
        return Math.sqrt(dot(a, a));
    }
}

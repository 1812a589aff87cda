package org.duskloom.engine.survey.fit;

import org.joml.Matrix3d;
import org.joml.Matrix3dc;
import org.joml.Vector3d;

/**
 * The singular value decomposition A = U diag(first, second, third) V^T of a matrix of three rows and columns: U and V
 * are orthogonal, the singular values fall and are not below 0. Found by one-sided Jacobi turns (M. R. Hestenes,
 * Journal of the Society for Industrial and Applied Mathematics 6(1), 1958), which keep small singular values exact.
 * The same bits on every machine.
 *
 * @param u the left singular vectors as columns
 * @param first the largest singular value
 * @param second the middle one
 * @param third the smallest one
 * @param v the right singular vectors as columns
 */
record Svd3(Matrix3dc u, double first, double second, double third, Matrix3dc v) {
    private static final int MAX_SWEEPS = 40;

    /** The distance from 1 to the next larger number. */
    private static final double ROUNDING = 0x1p-52;

    /** A column shorter than this share of the longest one is rounding. */
    private static final double NOTHING = 1e-14;

    static Svd3 of(Matrix3dc a) {
        Vector3d[] columns = columns(a);
        Vector3d[] right = columns(Rotations.IDENTITY);
        for (int sweep = 0; sweep < MAX_SWEEPS && sweep(columns, right); sweep++) {}
        order(columns, right, 0, 1);
        order(columns, right, 1, 2);
        order(columns, right, 0, 1);
        double[] values = {columns[0].length(), columns[1].length(), columns[2].length()};
        Matrix3d v = new Matrix3d(right[0], right[1], right[2]);
        return new Svd3(left(columns, values), values[0], values[1], values[2], v);
    }

    private static Vector3d[] columns(Matrix3dc a) {
        return new Vector3d[] {
            a.getColumn(0, new Vector3d()), a.getColumn(1, new Vector3d()), a.getColumn(2, new Vector3d())
        };
    }

    /** Turns every pair of columns once; whether any was not yet at a right angle. */
    private static boolean sweep(Vector3d[] columns, Vector3d[] right) {
        boolean turned = turn(columns, right, 0, 1);
        turned |= turn(columns, right, 0, 2);
        return turned | turn(columns, right, 1, 2);
    }

    private static boolean turn(Vector3d[] columns, Vector3d[] right, int i, int j) {
        double alpha = columns[i].lengthSquared();
        double beta = columns[j].lengthSquared();
        double gamma = columns[i].dot(columns[j]);
        if (gamma == 0 || Math.abs(gamma) <= ROUNDING * Math.sqrt(alpha) * Math.sqrt(beta)) {
            return false;
        }
        double zeta = (beta - alpha) / (2 * gamma);
        double tangent = (zeta < 0 ? -1 : 1) / (Math.abs(zeta) + Math.sqrt(1 + zeta * zeta));
        double cosine = 1 / Math.sqrt(1 + tangent * tangent);
        mix(columns, i, j, cosine, cosine * tangent);
        mix(right, i, j, cosine, cosine * tangent);
        return true;
    }

    private static void mix(Vector3d[] columns, int i, int j, double cosine, double sine) {
        Vector3d before = columns[i];
        columns[i] = before.mul(cosine, new Vector3d()).sub(columns[j].mul(sine, new Vector3d()));
        columns[j] = before.mul(sine, new Vector3d()).add(columns[j].mul(cosine, new Vector3d()));
    }

    private static void order(Vector3d[] columns, Vector3d[] right, int i, int j) {
        if (columns[i].length() < columns[j].length()) {
            swap(columns, i, j);
            swap(right, i, j);
        }
    }

    private static void swap(Vector3d[] columns, int i, int j) {
        Vector3d kept = columns[i];
        columns[i] = columns[j];
        columns[j] = kept;
    }

    /** The columns at length 1; those that vanish are replaced by ones at right angles to the others. */
    private static Matrix3d left(Vector3d[] columns, double[] values) {
        double least = NOTHING * values[0];
        Vector3d x = values[0] > 0 ? columns[0].div(values[0], new Vector3d()) : new Vector3d(1, 0, 0);
        Vector3d y = values[1] > least ? columns[1].div(values[1], new Vector3d()) : acrossTo(x);
        Vector3d z = values[2] > least ? columns[2].div(values[2], new Vector3d()) : x.cross(y, new Vector3d());
        return new Matrix3d(x, y, z);
    }

    private static Vector3d acrossTo(Vector3d x) {
        int smallest = 0;
        for (int k = 1; k < 3; k++) {
            smallest = Math.abs(x.get(k)) < Math.abs(x.get(smallest)) ? k : smallest;
        }
        Vector3d across = x.cross(new Vector3d().setComponent(smallest, 1), new Vector3d());
        return across.div(across.length());
    }
}

package org.duskloom.engine.locate;

/** Solves normal equations, by elimination (C. F. Gauss); their matrix is positive definite. */
final class Elimination {
    private Elimination() {}

    /**
     * The unknowns.
     *
     * @param rows an equation each: a factor for every unknown, then the right side; written over
     */
    static double[] solve(double[][] rows) {
        int n = rows.length;
        for (int pivot = 0; pivot < n; pivot++) {
            for (int row = pivot + 1; row < n; row++) {
                double factor = rows[row][pivot] / rows[pivot][pivot];
                for (int column = pivot; column <= n; column++) {
                    rows[row][column] -= factor * rows[pivot][column];
                }
            }
        }
        double[] unknowns = new double[n];
        for (int row = n - 1; row >= 0; row--) {
            double rest = rows[row][n];
            for (int column = row + 1; column < n; column++) {
                rest -= rows[row][column] * unknowns[column];
            }
            unknowns[row] = rest / rows[row][row];
        }
        return unknowns;
    }
}

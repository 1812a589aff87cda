package org.duskloom.engine.survey.fit;

/** The normal equations of a least-squares problem: small, symmetric, solved by Cholesky's method. */
final class NormalEquations {
    private static final double SMALLEST = 1e-12;

    private final int count;
    private final double[][] matrix;
    private final double[] right;

    /** @param count how many unknowns */
    NormalEquations(int count) {
        this.count = count;
        this.matrix = new double[count][count];
        this.right = new double[count];
    }

    /** One more equation: what the unknowns times the slopes should be, with its weight. */
    void add(double[] slopes, double residual, double weight) {
        for (int i = 0; i < count; i++) {
            double weighted = weight * slopes[i];
            right[i] += weighted * residual;
            for (int j = 0; j <= i; j++) {
                matrix[i][j] += weighted * slopes[j];
            }
        }
    }

    /** The unknowns, held back by that share of the diagonal. */
    double[] solution(double damping) {
        double[][] root = root(damping);
        return solved(root, right);
    }

    /** The standard deviations of the unknowns where weights are inverse variances. */
    double[] errors() {
        double[][] root = root(0);
        double[] errors = new double[count];
        for (int i = 0; i < count; i++) {
            double[] one = new double[count];
            one[i] = 1;
            errors[i] = Math.sqrt(Math.max(0, solved(root, one)[i]));
        }
        return errors;
    }

    private double[][] root(double damping) {
        double[][] root = new double[count][count];
        for (int i = 0; i < count; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = i == j ? matrix[i][i] * (1 + damping) : matrix[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= root[i][k] * root[j][k];
                }
                root[i][j] = i == j
                        ? Math.sqrt(Math.max(sum, SMALLEST * matrix[i][i] + Double.MIN_NORMAL))
                        : sum / root[j][j];
            }
        }
        return root;
    }

    private double[] solved(double[][] root, double[] of) {
        double[] unknowns = new double[count];
        for (int i = 0; i < count; i++) {
            double sum = of[i];
            for (int k = 0; k < i; k++) {
                sum -= root[i][k] * unknowns[k];
            }
            unknowns[i] = sum / root[i][i];
        }
        for (int i = count - 1; i >= 0; i--) {
            double sum = unknowns[i];
            for (int k = i + 1; k < count; k++) {
                sum -= root[k][i] * unknowns[k];
            }
            unknowns[i] = sum / root[i][i];
        }
        return unknowns;
    }
}

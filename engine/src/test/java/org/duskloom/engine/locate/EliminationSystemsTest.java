package org.duskloom.engine.locate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Systems whose matrix is symmetric and positive definite, as those of normal equations are. */
class EliminationSystemsTest {
    /** A product of a matrix with itself turned over, and a little of each unknown. */
    private static double[][] matrix(int n, Random random) {
        double[][] any = new double[n][n];
        for (double[] row : any) {
            for (int i = 0; i < n; i++) {
                row[i] = random.nextGaussian();
            }
        }
        double[][] matrix = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < n; k++) {
                for (double[] row : any) {
                    matrix[i][k] += row[i] * row[k];
                }
            }
            matrix[i][i] += 0.5;
        }
        return matrix;
    }

    private static double[][] rows(double[][] matrix, double[] unknowns, int[] order) {
        int n = order.length;
        double[][] rows = new double[n][n + 1];
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < n; k++) {
                rows[i][k] = matrix[order[i]][order[k]];
                rows[i][n] += rows[i][k] * unknowns[order[k]];
            }
        }
        return rows;
    }

    /** Whatever is put in comes out, in whichever order the unknowns are asked for. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 8})
    void findsWhatWasPutIn(int n) {
        Random random = new Random(n);
        for (int run = 0; run < 100; run++) {
            double[][] matrix = matrix(n, random);
            double[] unknowns = random.doubles(n, -5, 5).toArray();
            int turn = random.nextInt(n);
            int[] order = new int[n];
            for (int i = 0; i < n; i++) {
                order[i] = (i + turn) % n;
            }
            double[] found = Elimination.solve(rows(matrix, unknowns, order));
            for (int i = 0; i < n; i++) {
                assertThat(found[i]).isCloseTo(unknowns[order[i]], within(1e-9));
            }
        }
    }

    /** D. Hilbert (1894), from memory: row sums of the inverse of his matrix of three rows are 3, -24 and 30. */
    @Test
    void solvesTheMatrixOfHilbert() {
        double[][] rows = {{1, 1 / 2.0, 1 / 3.0, 1}, {1 / 2.0, 1 / 3.0, 1 / 4.0, 1}, {1 / 3.0, 1 / 4.0, 1 / 5.0, 1}};
        assertThat(Elimination.solve(rows)).containsExactly(new double[] {3, -24, 30}, within(1e-10));
    }

    @Test
    void nothingToFindIsNothing() {
        assertThat(Elimination.solve(new double[0][])).isEmpty();
    }
}

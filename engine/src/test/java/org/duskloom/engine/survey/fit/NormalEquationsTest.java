package org.duskloom.engine.survey.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;

class NormalEquationsTest {
    /** Against hipparchus, which goes another way: the decomposition into Q and R. */
    @Test
    void solvesAsALibraryDoes() {
        Random random = new Random(3);
        double[][] slopes = new double[30][4];
        double[] residuals = new double[30];
        NormalEquations equations = new NormalEquations(4);
        for (int i = 0; i < slopes.length; i++) {
            for (int k = 0; k < 4; k++) {
                slopes[i][k] = random.nextGaussian();
            }
            residuals[i] = random.nextGaussian();
            double weight = 1 + random.nextDouble();
            equations.add(slopes[i], residuals[i], weight);
            residuals[i] *= Math.sqrt(weight);
            for (int k = 0; k < 4; k++) {
                slopes[i][k] *= Math.sqrt(weight);
            }
        }
        RealMatrix matrix = new Array2DRowRealMatrix(slopes);
        double[] solution = new QRDecomposition(matrix)
                .getSolver()
                .solve(new ArrayRealVector(residuals))
                .toArray();
        assertThat(equations.solution(0)).containsExactly(solution, within(1e-12));
        RealMatrix inverse = new QRDecomposition(matrix.transpose().multiply(matrix))
                .getSolver()
                .getInverse();
        for (int k = 0; k < 4; k++) {
            assertThat(equations.errors()[k]).isCloseTo(Math.sqrt(inverse.getEntry(k, k)), within(1e-12));
        }
    }

    /** A number that nothing speaks of stays where it is. */
    @Test
    void leavesAloneWhatNothingDecides() {
        NormalEquations equations = new NormalEquations(2);
        equations.add(new double[] {2, 0}, 6, 1);
        assertThat(equations.solution(0)).containsExactly(3, 0);
        // Held back by as much again: half the way.
        assertThat(equations.solution(1)[0]).isCloseTo(1.5, within(1e-12));
    }
}

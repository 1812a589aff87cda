package org.duskloom.engine.survey.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.joml.Matrix3d;
import org.joml.Matrix3dc;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class Svd3Test {
    /**
     * The covariance of the example of Umeyama 1991. Closed form of the singular values of [[a, b], [c, d]]: half the
     * sum and half the difference of sqrt((a+d)^2 + (b-c)^2) = sqrt(52)/9 and sqrt((a-d)^2 + (b+c)^2) = 10/9.
     */
    @Test
    void findsTheSingularValuesOfUmeyamasExample() {
        Svd3 svd = Svd3.of(Rotations.ofRows(-2 / 9.0, 2 / 9.0, 0, -2 / 9.0, 8 / 9.0, 0, 0, 0, 0));
        assertThat(svd.first()).isCloseTo((10 + Math.sqrt(52)) / 18, within(1e-15));
        assertThat(svd.second()).isCloseTo((10 - Math.sqrt(52)) / 18, within(1e-15));
        assertThat(svd.third()).isZero();
        assertDecomposes(Rotations.ofRows(-2 / 9.0, 2 / 9.0, 0, -2 / 9.0, 8 / 9.0, 0, 0, 0, 0), svd);
    }

    /** A A^T of [[3, 2, 2], [2, 3, -2]] is [[17, 8], [8, 17]] with eigenvalues 25 and 9: singular values 5, 3 and 0. */
    @Test
    void findsWholeSingularValues() {
        Matrix3dc a = Rotations.ofRows(3, 2, 2, 2, 3, -2, 0, 0, 0);
        Svd3 svd = Svd3.of(a);
        assertThat(svd.first()).isCloseTo(5, within(1e-14));
        assertThat(svd.second()).isCloseTo(3, within(1e-14));
        assertThat(svd.third()).isCloseTo(0, within(1e-14));
        assertDecomposes(a, svd);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 1e-150, 1e150})
    void decomposesAnyMatrix(double size) {
        Random random = new Random(7);
        for (int trial = 0; trial < 500; trial++) {
            Matrix3dc a = random(random, size);
            Svd3 svd = Svd3.of(a);
            assertDecomposes(a, svd);
            // The product of the singular values is the size of the determinant.
            assertThat(svd.first() / size * (svd.second() / size) * (svd.third() / size))
                    .isCloseTo(Math.abs(scaled(a, 1 / size).determinant()), within(1e-13));
        }
    }

    @Test
    void completesTheVectorsOfMatricesOfLowerRank() {
        Random random = new Random(8);
        for (int trial = 0; trial < 200; trial++) {
            double[] u = {random.nextGaussian(), random.nextGaussian(), random.nextGaussian()};
            double[] v = {random.nextGaussian(), random.nextGaussian(), random.nextGaussian()};
            Matrix3dc line = Rotations.ofRows(
                    u[0] * v[0],
                    u[0] * v[1],
                    u[0] * v[2],
                    u[1] * v[0],
                    u[1] * v[1],
                    u[1] * v[2],
                    u[2] * v[0],
                    u[2] * v[1],
                    u[2] * v[2]);
            assertDecomposes(line, Svd3.of(line));
        }
        assertDecomposes(scaled(Rotations.IDENTITY, 0), Svd3.of(scaled(Rotations.IDENTITY, 0)));
        assertDecomposes(Rotations.IDENTITY, Svd3.of(Rotations.IDENTITY));
    }

    /** Columns of lengths that differ by 1e12: a method that goes through A^T A would lose the smallest one wholly. */
    @Test
    void keepsSmallSingularValues() {
        Matrix3dc turned = Points.rotation(0.3, 0.5, 0.7).scale(1, 1e-6, 1e-12, new Matrix3d());
        Svd3 svd = Svd3.of(turned.mul(Points.rotation(1, 2, 3), new Matrix3d()));
        assertThat(svd.second()).isCloseTo(1e-6, within(1e-15));
        assertThat(svd.third()).isCloseTo(1e-12, within(1e-15));
    }

    private static void assertDecomposes(Matrix3dc a, Svd3 svd) {
        assertThat(svd.first()).isGreaterThanOrEqualTo(svd.second());
        assertThat(svd.second()).isGreaterThanOrEqualTo(svd.third());
        assertThat(svd.third()).isGreaterThanOrEqualTo(0);
        Matrix3dc product = svd.u()
                .scale(svd.first(), svd.second(), svd.third(), new Matrix3d())
                .mul(svd.v().transpose(new Matrix3d()), new Matrix3d());
        assertThat(largestDifference(product, a)).isLessThanOrEqualTo(4e-15 * svd.first());
        assertThat(largestDifference(
                        svd.u().mul(svd.u().transpose(new Matrix3d()), new Matrix3d()), Rotations.IDENTITY))
                .isLessThan(1e-12);
        assertThat(largestDifference(
                        svd.v().mul(svd.v().transpose(new Matrix3d()), new Matrix3d()), Rotations.IDENTITY))
                .isLessThan(1e-14);
    }

    private static double largestDifference(Matrix3dc a, Matrix3dc b) {
        double largest = 0;
        double[] left = values(a);
        double[] right = values(b);
        for (int i = 0; i < left.length; i++) {
            largest = Math.max(largest, Math.abs(left[i] - right[i]));
        }
        return largest;
    }

    private static double[] values(Matrix3dc a) {
        return new double[] {a.m00(), a.m10(), a.m20(), a.m01(), a.m11(), a.m21(), a.m02(), a.m12(), a.m22()};
    }

    private static Matrix3dc scaled(Matrix3dc a, double factor) {
        return a.scale(factor, factor, factor, new Matrix3d());
    }

    private static Matrix3dc random(Random random, double size) {
        double[] v = new double[9];
        for (int i = 0; i < 9; i++) {
            v[i] = size * random.nextGaussian();
        }
        return Rotations.ofRows(v[0], v[1], v[2], v[3], v[4], v[5], v[6], v[7], v[8]);
    }
}

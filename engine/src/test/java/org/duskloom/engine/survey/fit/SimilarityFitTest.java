package org.duskloom.engine.survey.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.duskloom.engine.survey.Dimensions.DEEP;
import static org.duskloom.engine.survey.Dimensions.FLAT;
import static org.duskloom.engine.survey.fit.Handedness.MIRRORED;
import static org.duskloom.engine.survey.fit.Handedness.PROPER;
import static org.duskloom.engine.survey.fit.Sizing.FREE;
import static org.duskloom.engine.survey.fit.Sizing.KEPT;

import java.util.Random;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.survey.Dimensions;
import org.joml.Matrix3d;
import org.joml.Matrix3dc;
import org.joml.Vector3d;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * S. Umeyama, IEEE Transactions on Pattern Analysis and Machine Intelligence 13(4):376-380, 1991, equations 34 to 43.
 */
class SimilarityFitTest {
    private static final Positions TRIANGLE = Points.flat(0, 0, 1, 0, 0, 2);
    private static final Positions MIRRORED_TRIANGLE = Points.flat(0, 0, -1, 0, 0, 2);

    /**
     * The example of the paper: a triangle and its mirror image. R = [[3, 2], [-2, 3]]/sqrt(13), c = sqrt(13)/5, t =
     * (-0.8, 0.4). The mean squared error 8/15 follows from its definition (equation 34 and closed form 43), as 1.6
     * summed over three points; it is not the figure that the paper prints beside the example.
     */
    @Test
    void fitsUmeyamasExample() {
        SimilarityFit fit = SimilarityFit.of(TRIANGLE, MIRRORED_TRIANGLE, FLAT, PROPER, FREE);
        assertSimilarity(fit.similarity(), 3 / Math.sqrt(13), -2 / Math.sqrt(13), Math.sqrt(13) / 5, -0.8, 0.4);
        assertThat(fit.squaredError() / 3).isCloseTo(8 / 15.0, within(1e-12));
        assertThat(Points.squaredDistances(fit.similarity().of(TRIANGLE), MIRRORED_TRIANGLE))
                .isCloseTo(1.6, within(1e-12));
        assertThat(fit.rank()).isEqualTo(2);
        assertThat(fit.isUnique()).isTrue();
    }

    /** Without the guard against mirroring the same example fits exactly. */
    @Test
    void fitsTheMirrorImageExactlyWhereItMayMirror() {
        SimilarityFit fit = SimilarityFit.of(TRIANGLE, MIRRORED_TRIANGLE, FLAT, MIRRORED, FREE);
        assertThat(fit.squaredError()).isCloseTo(0, within(1e-15));
        assertThat(fit.similarity().rotation().determinant()).isCloseTo(-1, within(1e-15));
        assertThat(fit.similarity().scale()).isCloseTo(1, within(1e-15));
    }

    /** The same example laid into space, where turning it over by 180 degrees about y is a proper rotation. */
    @Test
    void turnsAFlatTriangleOverInSpace() {
        SimilarityFit fit = SimilarityFit.of(TRIANGLE, MIRRORED_TRIANGLE, DEEP, PROPER, FREE);
        assertThat(fit.squaredError()).isCloseTo(0, within(1e-15));
        assertThat(fit.similarity().rotation().determinant()).isCloseTo(1, within(1e-15));
        assertThat(fit.similarity().rotation().m22()).isCloseTo(-1, within(1e-15));
    }

    /** 90 degrees about z, scale 2, shift (1, 2, 3): exact by construction, worked by hand. */
    @Test
    void fitsExactlyInSpace() {
        Positions from = Points.deep(0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0, 1);
        Positions to = Points.deep(1, 2, 3, 1, 4, 3, -1, 2, 3, 1, 2, 5);
        assertQuarterTurn(SimilarityFit.of(from, to, DEEP, PROPER, FREE), 3);
    }

    /** The same map on points of a plane: singular values 3.893418, 0.481582, 0, and still a proper rotation. */
    @Test
    void fitsPlanarPointsInSpace() {
        Positions from = Points.deep(0, 0, 0, 1, 0, 0, 0, 1, 0, 2, 3, 0);
        Positions to = Points.deep(1, 2, 3, 1, 4, 3, -1, 2, 3, -5, 6, 3);
        assertQuarterTurn(SimilarityFit.of(from, to, DEEP, PROPER, FREE), 2);
        PairSpread spread = PairSpread.aboutMeans(from, to, new Vector3d(0.75, 1, 0), new Vector3d(-1, 3.5, 3));
        Svd3 svd = Svd3.of(spread.cross().scale(0.25, 0.25, 0.25, new Matrix3d()));
        assertThat(svd.first()).isCloseTo(3.893418, within(1e-6));
        assertThat(svd.second()).isCloseTo(0.481582, within(1e-6));
        assertThat(svd.third()).isCloseTo(0, within(1e-15));
    }

    private static void assertQuarterTurn(SimilarityFit fit, int rank) {
        assertSimilarity(fit.similarity(), 0, 1, 2, 1, 2);
        assertThat(fit.similarity().shift().z()).isCloseTo(3, within(1e-14));
        assertThat(fit.similarity().rotation().m22()).isCloseTo(1, within(1e-14));
        assertThat(fit.squaredError()).isCloseTo(0, within(1e-13));
        assertThat(fit.rank()).isEqualTo(rank);
        assertThat(fit.isUnique()).isTrue();
    }

    /** Values computed from the equations of the paper with 30 digits. */
    @Test
    void fitsNoisyPoints() {
        Positions from = Points.flat(0, 0, 4, 0, 4, 3, 0, 3);
        Positions to = Points.flat(1.1, .9, 3.1, 4.4, .5, 5.9, -1.5, 2.5);
        SimilarityFit fit = SimilarityFit.of(from, to, FLAT, PROPER, FREE);
        assertSimilarity(fit.similarity(), 0.505360618, 0.862908249, 1.001265200, 1.084, 0.938);
        assertThat(fit.squaredError() / 4).isCloseTo(0.00105, within(1e-9));
    }

    private static void assertSimilarity(
            Similarity fit, double cosine, double sine, double scale, double shiftX, double shiftY) {
        assertThat(fit.rotation().m00()).isCloseTo(cosine, within(1e-9));
        assertThat(fit.rotation().m01()).isCloseTo(sine, within(1e-9));
        assertThat(fit.rotation().m10()).isCloseTo(-sine, within(1e-9));
        assertThat(fit.rotation().m11()).isCloseTo(cosine, within(1e-9));
        assertThat(fit.scale()).isCloseTo(scale, within(1e-9));
        assertThat(fit.shift().x()).isCloseTo(shiftX, within(1e-9));
        assertThat(fit.shift().y()).isCloseTo(shiftY, within(1e-9));
    }

    /** A least-squares fit is exact for exact points, whatever the map. */
    @ParameterizedTest
    @EnumSource(Handedness.class)
    void findsTheMapThatMadeThePoints(Handedness handedness) {
        Random random = new Random(11);
        for (int trial = 0; trial < 300; trial++) {
            Positions from = Points.random(random, 3 + random.nextInt(5), 200, DEEP);
            Similarity made = randomMap(random, handedness);
            SimilarityFit fit = SimilarityFit.of(from, made.of(from), DEEP, handedness, FREE);
            if (fit.rank() == 3) {
                assertThat(Points.squaredDistances(fit.similarity().of(from), made.of(from)))
                        .isLessThan(1e-14);
                assertThat(fit.similarity().scale()).isCloseTo(made.scale(), within(1e-11));
            }
        }
    }

    /** At the least sum of squares, any small change of any parameter leaves more. */
    @ParameterizedTest
    @EnumSource(Dimensions.class)
    void leavesLeast(Dimensions dimensions) {
        Random random = new Random(12);
        for (int trial = 0; trial < 100; trial++) {
            Positions from = Points.random(random, 6, 100, dimensions);
            Positions to = Points.random(random, 6, 100, dimensions);
            for (Handedness handedness : Handedness.values()) {
                SimilarityFit fit = SimilarityFit.of(from, to, dimensions, handedness, FREE);
                assertThat(Points.squaredDistances(fit.similarity().of(from), to))
                        .isCloseTo(fit.squaredError(), within(1e-7));
                assertThat(leastNearby(fit.similarity(), from, to, dimensions)).isGreaterThan(fit.squaredError());
            }
        }
    }

    private static double leastNearby(Similarity s, Positions from, Positions to, Dimensions dimensions) {
        double least = Double.POSITIVE_INFINITY;
        for (int axis = 0; axis < (dimensions == FLAT ? 1 : 3); axis++) {
            for (double angle : new double[] {-1e-3, 1e-3}) {
                Matrix3dc nudge = Points.rotation(axis == 0 ? angle : 0, axis == 1 ? angle : 0, axis == 2 ? angle : 0);
                // About the mean of the points that are moved, or the shift would change as well.
                Similarity turned = new Similarity(nudge.mul(s.rotation(), new Matrix3d()), s.scale(), new Vector3d());
                least = Math.min(least, Points.squaredDistances(recentred(turned, from, to), to));
            }
        }
        for (double factor : new double[] {0.999, 1.001}) {
            Similarity scaled = new Similarity(s.rotation(), s.scale() * factor, new Vector3d());
            least = Math.min(least, Points.squaredDistances(recentred(scaled, from, to), to));
        }
        Similarity moved = new Similarity(s.rotation(), s.scale(), s.shift().add(1e-3, 0, 0, new Vector3d()));
        return Math.min(least, Points.squaredDistances(moved.of(from), to));
    }

    private static Positions recentred(Similarity s, Positions from, Positions to) {
        Positions mapped = s.of(from);
        double[] dx = new double[3];
        for (int i = 0; i < to.size(); i++) {
            dx[0] += (to.x(i) - mapped.x(i)) / to.size();
            dx[1] += (to.y(i) - mapped.y(i)) / to.size();
            dx[2] += (to.z(i) - mapped.z(i)) / to.size();
        }
        return new Similarity(Rotations.IDENTITY, 1, new Vector3d(dx)).of(mapped);
    }

    /** With the scale kept, R is the same and only the error changes: it grows by n*sx^2*(c-1)^2. */
    @Test
    void keepsTheScaleIfAsked() {
        SimilarityFit free = SimilarityFit.of(TRIANGLE, MIRRORED_TRIANGLE, FLAT, PROPER, FREE);
        SimilarityFit kept = SimilarityFit.of(TRIANGLE, MIRRORED_TRIANGLE, FLAT, PROPER, KEPT);
        assertThat(kept.similarity().scale()).isEqualTo(1);
        assertThat(kept.similarity().rotation()).isEqualTo(free.similarity().rotation());
        double c = free.similarity().scale();
        assertThat(kept.squaredError())
                .isCloseTo(free.squaredError() + 3 * (10 / 9.0) * (c - 1) * (c - 1), within(1e-12));
    }

    @Test
    void saysWhereTheTurnIsNotFixed() {
        Positions line = Points.deep(0, 0, 0, 1, 1, 1, 2, 2, 2);
        SimilarityFit collinear = SimilarityFit.of(line, line, DEEP, PROPER, FREE);
        assertThat(collinear.rank()).isEqualTo(1);
        assertThat(collinear.isUnique()).isFalse();
        Positions flatLine = Points.flat(0, 0, 1, 1, 2, 2);
        SimilarityFit flat = SimilarityFit.of(flatLine, flatLine, FLAT, PROPER, FREE);
        assertThat(flat.rank()).isEqualTo(1);
        assertThat(flat.isUnique()).isTrue();
        Positions place = Points.flat(3, 4, 3, 4);
        SimilarityFit point = SimilarityFit.of(place, place, FLAT, PROPER, FREE);
        assertThat(point.rank()).isZero();
        assertThat(point.isUnique()).isFalse();
        assertThat(point.similarity().scale()).isEqualTo(1);
    }

    /** A square against the same square run through backwards matches no turn better than another. */
    @Test
    void saysWhereEveryTurnFitsEqually() {
        Positions square = Points.flat(1, 0, 0, 1, -1, 0, 0, -1);
        Positions backwards = Points.flat(1, 0, 0, -1, -1, 0, 0, 1);
        assertThat(SimilarityFit.of(square, backwards, FLAT, PROPER, KEPT).isUnique())
                .isFalse();
        assertThat(SimilarityFit.of(square, backwards, FLAT, MIRRORED, KEPT).isUnique())
                .isTrue();
    }

    /** Far from the origin the means are taken off first, so that no digits are lost. */
    @Test
    void fitsFarFromTheOrigin() {
        Positions from = new Similarity(Rotations.IDENTITY, 1, new Vector3d(1e8, -1e8, 0)).of(TRIANGLE);
        SimilarityFit fit = SimilarityFit.of(from, TRIANGLE, FLAT, PROPER, KEPT);
        assertThat(fit.squaredError()).isCloseTo(0, within(1e-12));
        assertThat(fit.similarity().shift().x()).isEqualTo(-1e8);
    }

    @Test
    void refusesPointsWithoutPartners() {
        assertThatThrownBy(() -> SimilarityFit.of(TRIANGLE, Points.flat(0, 0), FLAT, PROPER, FREE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("3 points for 1");
        assertThatThrownBy(() -> SimilarityFit.of(Points.flat(), Points.flat(), FLAT, PROPER, FREE))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static Similarity randomMap(Random random, Handedness handedness) {
        Matrix3dc rotation =
                Points.rotation(6.3 * random.nextDouble(), 6.3 * random.nextDouble(), 6.3 * random.nextDouble());
        return new Similarity(
                rotation.scale(1, 1, handedness.sign(), new Matrix3d()),
                0.1 + 3 * random.nextDouble(),
                new Vector3d(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).mul(100));
    }
}

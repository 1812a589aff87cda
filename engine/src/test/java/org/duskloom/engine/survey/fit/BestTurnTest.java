package org.duskloom.engine.survey.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.survey.Dimensions;
import org.joml.Matrix3d;
import org.joml.Matrix3dc;
import org.joml.Vector3d;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Best turns against the definition: no turn that is tried gives a larger sum of products, summed pair by pair. */
class BestTurnTest {
    private static final int POINTS = 9;
    private static final int TRIED = 2000;

    private final Random random = new Random(11);
    private Positions from;
    private Positions to;

    private Matrix3dc cross(Dimensions dimensions) {
        from = Points.random(random, POINTS, 3, dimensions);
        to = Points.random(random, POINTS, 3, dimensions);
        return crossOf(from, to);
    }

    private static Matrix3dc crossOf(Positions from, Positions to) {
        Moments moments = new Moments();
        for (int i = 0; i < from.size(); i++) {
            moments.add(from.x(i), from.y(i), from.z(i), to.x(i), to.y(i), to.z(i));
        }
        return moments.aboutOrigin().cross();
    }

    private double match(Matrix3dc rotation) {
        double sum = 0;
        for (int i = 0; i < from.size(); i++) {
            Vector3d turned = rotation.transform(new Vector3d(from.x(i), from.y(i), from.z(i)));
            sum += turned.x * to.x(i) + turned.y * to.y(i) + turned.z * to.z(i);
        }
        return sum;
    }

    private Matrix3dc any(Dimensions dimensions, Handedness handedness) {
        double angle = 2 * Math.PI * random.nextDouble();
        Matrix3dc turn = dimensions == Dimensions.FLAT
                ? Points.rotation(angle, 0, 0)
                : Points.rotation(angle, 2 * Math.PI * random.nextDouble(), 2 * Math.PI * random.nextDouble());
        return turn.mul(Rotations.ofRows(1, 0, 0, 0, handedness.sign(), 0, 0, 0, 1), new Matrix3d());
    }

    @ParameterizedTest
    @CsvSource({"FLAT, PROPER", "FLAT, MIRRORED", "DEEP, PROPER", "DEEP, MIRRORED"})
    void noOtherTurnMatchesBetter(Dimensions dimensions, Handedness handedness) {
        for (int set = 0; set < 10; set++) {
            BestTurn best = BestTurn.of(cross(dimensions), dimensions, handedness);
            Matrix3d square = best.rotation().transpose(new Matrix3d()).mul(best.rotation(), new Matrix3d());
            assertThat(Rotations.squaredDifference(square, Rotations.IDENTITY)).isLessThan(1e-24);
            assertThat(best.rotation().determinant()).isCloseTo(handedness.sign(), within(1e-12));
            assertThat(match(best.rotation())).isCloseTo(best.match(), within(1e-9));
            for (int i = 0; i < TRIED; i++) {
                assertThat(match(any(dimensions, handedness))).isLessThanOrEqualTo(best.match() + 1e-9);
            }
        }
    }

    /** A single point, points on a line and points of a plane: what is left open is said. */
    @ParameterizedTest
    @CsvSource({
        "FLAT, 0 0 0 0 0 0, 0, false", "FLAT, 1 2 0 2 4 0, 1, true", "FLAT, 1 0 0 0 1 0, 2, true",
        "DEEP, 0 0 0 0 0 0, 0, false", "DEEP, 1 2 3 2 4 6, 1, false", "DEEP, 1 0 0 0 1 0, 2, true"
    })
    void whatPointsLeaveOpenIsSaid(Dimensions dimensions, String coordinates, int rank, boolean isUnique) {
        double[] xyz = Arrays.stream(coordinates.split(" "))
                .mapToDouble(Double::parseDouble)
                .toArray();
        Positions points = Points.deep(xyz);
        BestTurn best = BestTurn.of(crossOf(points, points), dimensions, Handedness.PROPER);
        assertThat(best.rank()).isEqualTo(rank);
        assertThat(best.isUnique()).isEqualTo(isUnique);
        assertThat(best.rotation().determinant()).isCloseTo(1, within(1e-12));
    }

    /** Among quarters the best of those that are allowed; all angles and all ways find at least as much. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void formsAllowTheTurnsThatTheySay(boolean halfIsNone) {
        for (int set = 0; set < 50; set++) {
            Matrix3dc cross = cross(Dimensions.DEEP);
            double[] quarter = new double[4];
            for (int i = 0; i < 4; i++) {
                quarter[i] = match(Points.rotation(i * Math.PI / 2, 0, 0));
            }
            double none = halfIsNone ? Math.max(quarter[0], quarter[2]) : quarter[0];
            double odd = Math.max(quarter[1], quarter[3]);
            assertFit(cross, Turn.STAYS, halfIsNone, none);
            assertFit(cross, Turn.QUARTER, halfIsNone, halfIsNone ? odd : Math.max(odd, quarter[2]));
            TurnFit free = TurnFit.of(cross, Turn.FREE, halfIsNone, halfIsNone);
            assertThat(free.match()).isGreaterThanOrEqualTo(Math.max(odd, Math.max(quarter[0], quarter[2])) - 1e-9);
            assertThat(match(free.rotation())).isCloseTo(free.match(), within(1e-9));
            double radians = Math.toRadians(free.degrees());
            assertThat(free.degrees()).isBetween(0.0, 360.0).isNotEqualTo(360);
            assertThat(match(Points.rotation(radians, 0, 0))).isCloseTo(free.match(), within(1e-9));
            TurnFit allWays = TurnFit.of(cross, Turn.ALL_WAYS, halfIsNone, halfIsNone);
            assertThat(allWays.match()).isGreaterThanOrEqualTo(free.match() - 1e-9);
            assertThat(match(allWays.rotation())).isCloseTo(allWays.match(), within(1e-9));
        }
    }

    private void assertFit(Matrix3dc cross, Turn turn, boolean halfIsNone, double expected) {
        TurnFit fit = TurnFit.of(cross, turn, halfIsNone, halfIsNone);
        assertThat(fit.match()).isCloseTo(expected, within(1e-9));
        assertThat(match(fit.rotation())).isCloseTo(expected, within(1e-9));
        assertThat(fit.degrees() % 90).as("exact").isZero();
        assertThat(match(Points.rotation(Math.toRadians(fit.degrees()), 0, 0))).isCloseTo(expected, within(1e-9));
    }

    /** What is left over at the scale that is taken is what it is point by point, and at no other scale it is less. */
    @ParameterizedTest
    @EnumSource
    void noOtherScaleLeavesLess(Sizing sizing) {
        for (int set = 0; set < 50; set++) {
            Matrix3dc cross = cross(Dimensions.DEEP);
            PairSpread spread = PairSpread.aboutMeans(from, to, new Vector3d(), new Vector3d());
            BestTurn best = BestTurn.of(cross, Dimensions.DEEP, Handedness.PROPER);
            double scale = spread.scale(best.match(), sizing);
            double left = spread.left(best.match(), sizing);
            assertThat(scale).isGreaterThanOrEqualTo(sizing == Sizing.WITHIN_REASON ? 0.25 : 0);
            if (sizing == Sizing.WITHIN_REASON && best.match() < 0.25 * spread.from()) {
                assertThat(left).isInfinite();
                continue;
            }
            assertThat(leftAt(best.rotation(), scale)).isCloseTo(left, within(1e-9));
            for (double other = 0; other < 4 && sizing != Sizing.KEPT; other += 0.01) {
                assertThat(leftAt(best.rotation(), other)).isGreaterThanOrEqualTo(left - 1e-9);
            }
        }
    }

    private double leftAt(Matrix3dc rotation, double scale) {
        return Points.squaredDistances(new Similarity(rotation, scale, new Vector3d()).of(from), to);
    }

    /** A thing that is built four times as large, or at a quarter, is still thought of; one that is larger is not. */
    @Test
    void sizesBeyondReasonLeaveEverything() {
        PairSpread spread = new PairSpread(2, 10, 160, Rotations.IDENTITY);
        assertThat(spread.left(40, Sizing.WITHIN_REASON)).isZero();
        assertThat(spread.left(40.01, Sizing.WITHIN_REASON)).isInfinite();
        assertThat(spread.left(2.5, Sizing.WITHIN_REASON)).isFinite();
        assertThat(spread.left(2.49, Sizing.WITHIN_REASON)).isInfinite();
        assertThat(spread.left(Double.NaN, Sizing.WITHIN_REASON)).isInfinite();
    }
}

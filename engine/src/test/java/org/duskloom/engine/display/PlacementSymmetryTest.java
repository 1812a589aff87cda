package org.duskloom.engine.display;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.duskloom.engine.map.Positions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds of placements whatever their numbers are. */
class PlacementSymmetryTest {
    private static final double EPS = 1e-9;
    private static final Positions CLOUD = cloud();

    private static Positions cloud() {
        Random random = new Random(5);
        return new Positions(
                random.doubles(40, -500, 500).toArray(),
                random.doubles(40, -500, 500).toArray(),
                random.doubles(40, -500, 500).toArray());
    }

    private static Positions turned(Positions own, double turn, double tilt, double yaw) {
        return new Placement(Mirror.NONE, 1, turn, tilt, yaw, 0, 0, 0).stageFromOwn(own);
    }

    private static void assertNear(Positions actual, Positions expected) {
        assertThat(actual.size()).isEqualTo(expected.size());
        for (int i = 0; i < actual.size(); i++) {
            assertThat(actual.x(i)).isCloseTo(expected.x(i), within(EPS));
            assertThat(actual.y(i)).isCloseTo(expected.y(i), within(EPS));
            assertThat(actual.z(i)).isCloseTo(expected.z(i), within(EPS));
        }
    }

    @Test
    void aShapeAsDrawnStaysAsItIs() {
        assertThat(Placement.at(0, 0, 0).stageFromOwn(CLOUD)).isEqualTo(CLOUD);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 30, 45, 90, 123.4, 180, -77, 3600})
    void everyTurnIsUndoneByItsOpposite(double degrees) {
        assertNear(turned(turned(CLOUD, degrees, 0, 0), -degrees, 0, 0), CLOUD);
        assertNear(turned(turned(CLOUD, 0, degrees, 0), 0, -degrees, 0), CLOUD);
        assertNear(turned(turned(CLOUD, 0, 0, degrees), 0, 0, -degrees), CLOUD);
        // Turn, tilt and yaw follow each other, so they are undone from the last to the first.
        Positions all = turned(CLOUD, degrees, 20, -50);
        assertNear(turned(turned(turned(all, 0, 0, 50), 0, -20, 0), -degrees, 0, 0), CLOUD);
    }

    /** Whole turns are nothing, to the last bit, wherever the angle counts from. */
    @ParameterizedTest
    @CsvSource({"90, 450", "-90, 270", "180, -180", "0, 3600", "37, 397", "12.5, -347.5", "0, -360"})
    void wholeTurnsChangeNoBit(double degrees, double same) {
        assertThat(turned(CLOUD, same, same, same)).isEqualTo(turned(CLOUD, degrees, degrees, degrees));
    }

    /** Euler: a turn in the plane added to another is the turn of their sum. */
    @ParameterizedTest
    @CsvSource({"10, 25", "90, 90", "-170, 300", "0.25, 0.5"})
    void turnsAddUp(double first, double second) {
        assertNear(turned(turned(CLOUD, first, 0, 0), second, 0, 0), turned(CLOUD, first + second, 0, 0));
        assertNear(turned(turned(CLOUD, 0, 0, first), 0, 0, second), turned(CLOUD, 0, 0, first + second));
    }

    /** Two mirrors that stand at a right angle are half a turn. */
    @Test
    void mirroringBothAxesIsHalfATurn() {
        Positions x = new Placement(Mirror.X, 1, 0, 0, 0, 0, 0, 0).stageFromOwn(CLOUD);
        assertThat(new Placement(Mirror.Y, 1, 0, 0, 0, 0, 0, 0).stageFromOwn(x)).isEqualTo(turned(CLOUD, 180, 0, 0));
        assertThat(new Placement(Mirror.X, 1, 0, 0, 0, 0, 0, 0).stageFromOwn(x)).isEqualTo(CLOUD);
    }

    /**
     * The determinant of the three axes is the volume of a cube of 1: the scale three times by itself, below 0 where
     * the shape is the other way round.
     */
    @ParameterizedTest
    @EnumSource(Mirror.class)
    void onlyAMirrorTurnsAShapeInsideOut(Mirror mirror) {
        Positions axes = new Positions(new double[] {1, 0, 0, 0}, new double[] {0, 1, 0, 0}, new double[] {0, 0, 1, 0});
        Positions p = new Placement(mirror, 2.5, 33, -70, 140, 0, 0, 0).stageFromOwn(axes);
        double volume = p.x(0) * (p.y(1) * p.z(2) - p.z(1) * p.y(2))
                - p.y(0) * (p.x(1) * p.z(2) - p.z(1) * p.x(2))
                + p.z(0) * (p.x(1) * p.y(2) - p.y(1) * p.x(2));
        assertThat(volume).isCloseTo((mirror == Mirror.NONE ? 1 : -1) * 15.625, within(EPS));
        assertThat(p.x(3)).isZero();
        assertThat(p.y(3)).isZero();
        assertThat(p.z(3)).isZero();
    }

    /** All distances grow by the scale and by nothing else. */
    @ParameterizedTest
    @ValueSource(doubles = {0.001, 0.5, 1, 25.4, 1000})
    void keepsTheShapeButForTheScale(double scale) {
        Positions placed = new Placement(Mirror.Y, scale, 61, 12, -8, 3000, -2000, 100).stageFromOwn(CLOUD);
        for (int i = 1; i < CLOUD.size(); i++) {
            assertThat(SpacingJumps.distance(placed, 0, i) / SpacingJumps.distance(CLOUD, 0, i))
                    .isCloseTo(scale, within(scale * 1e-6));
        }
    }

    /** Reversing turns the order of the pixels round and nothing else, and writes nothing beside its own stretch. */
    @Test
    void aReversedPropHangsAtTheSamePlaces() {
        PlacementMatrix matrix = new PlacementMatrix(new Placement(Mirror.X, 2, 30, 40, 50, 6, 7, 8));
        double[][] stage = new double[3][82];
        matrix.place(CLOUD, false, stage, 1);
        matrix.place(CLOUD, true, stage, 41);
        for (double[] along : stage) {
            assertThat(along[0]).isZero();
            assertThat(along[81]).isZero();
            for (int i = 0; i < 40; i++) {
                assertThat(along[80 - i]).isEqualTo(along[1 + i]);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, 0, -0.0, Double.NaN, Double.POSITIVE_INFINITY})
    void aScaleIsAboveNothing(double scale) {
        assertThatThrownBy(() -> new Placement(Mirror.NONE, scale, 0, 0, 0, 0, 0, 0))
                .isInstanceOf(IllegalArgumentException.class);
    }
}

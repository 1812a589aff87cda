package org.duskloom.engine.display;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Properties;
import java.util.Random;
import org.duskloom.engine.map.Positions;
import org.joml.Matrix4d;
import org.joml.Vector3d;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PlacementTest {
    private static Positions point(double x, double y, double z) {
        return new Positions(new double[] {x}, new double[] {y}, new double[] {z});
    }

    /**
     * What becomes of (1, 2, 3), worked by hand: quarter turns change two coordinates for each other, one with a
     * sign.
     */
    @ParameterizedTest
    @CsvSource({
        "NONE, 1,   0,   0,   0,  1,  2,  3",
        "X,    1,   0,   0,   0, -1,  2,  3",
        "Y,    1,   0,   0,   0,  1, -2,  3",
        "NONE, 2,   0,   0,   0,  2,  4,  6",
        // Counter-clockwise as the audience sees it: right goes up, up goes left.
        "NONE, 1,  90,   0,   0, -2,  1,  3",
        "NONE, 1, -90,   0,   0,  2, -1,  3",
        "NONE, 1, 180,   0,   0, -1, -2,  3",
        "NONE, 1, 450,   0,   0, -2,  1,  3",
        // The top comes toward the audience, what was toward the audience goes down.
        "NONE, 1,   0,  90,   0,  1, -3,  2",
        "NONE, 1,   0, -90,   0,  1,  3, -2",
        // Seen from above counter-clockwise: what faced the audience goes right, right goes away from the audience.
        "NONE, 1,   0,   0,  90,  3,  2, -1",
        "NONE, 1,   0,   0, 270, -3,  2,  1"
    })
    void quarterTurnsAreExact(
            Mirror mirror, double scale, double turn, double tilt, double yaw, double x, double y, double z) {
        Placement placement = new Placement(mirror, scale, turn, tilt, yaw, 1000.1, -7, 0.3);
        Positions placed = placement.stageFromOwn(point(1, 2, 3));
        assertThat(placed).isEqualTo(point(x + 1000.1, y - 7, z + 0.3));
    }

    /**
     * (1, 2, 3), step by step: mirror x (-1, 2, 3); scale 10 (-10, 20, 30); turn 90 (-20, -10, 30); tilt 90 (-20,
     * -30, -10); yaw 90 (-10, -30, 20); move (100, 200, 300) (90, 170, 320). Each pair of neighbouring steps
     * exchanged gives something else: turn before mirror would mirror y, move before scale would be ten times as far,
     * and so on.
     */
    @Test
    void stepsFollowEachOtherInTheirOrder() {
        Placement all = new Placement(Mirror.X, 10, 90, 90, 90, 100, 200, 300);
        assertThat(all.stageFromOwn(point(1, 2, 3))).isEqualTo(point(90, 170, 320));
        // Turn, then tilt: (1, 0, 0) goes up, then toward the audience. Tilt, then turn would leave it up.
        assertThat(new Placement(Mirror.NONE, 1, 90, 90, 0, 0, 0, 0).stageFromOwn(point(1, 0, 0)))
                .isEqualTo(point(0, 0, 1));
        // Tilt, then yaw: up goes toward the audience, then right. Yaw, then tilt would leave it toward the audience.
        assertThat(new Placement(Mirror.NONE, 1, 0, 90, 90, 0, 0, 0).stageFromOwn(point(0, 1, 0)))
                .isEqualTo(point(1, 0, 0));
        // Mirror, then turn: right goes left, then down. Turn, then mirror would leave it up.
        assertThat(new Placement(Mirror.X, 1, 90, 0, 0, 0, 0, 0).stageFromOwn(point(1, 0, 0)))
                .isEqualTo(point(0, -1, 0));
    }

    /** JOML by its own words: its rotations are right-handed, and the last one called is applied first. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void equalsJomlUsedByItself(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 200; round++) {
            double[] v = random.doubles(8, -1000, 1000).toArray();
            double scale = 0.1 + random.nextDouble() * 5;
            Mirror mirror = Mirror.values()[random.nextInt(3)];
            Matrix4d matrix = new Matrix4d()
                    .translate(v[0], v[1], v[2])
                    .rotateY(Math.toRadians(v[3]))
                    .rotateX(Math.toRadians(v[4]))
                    .rotateZ(Math.toRadians(v[5]))
                    .scale(scale);
            matrix.scale(mirror == Mirror.X ? -1 : 1, mirror == Mirror.Y ? -1 : 1, 1);
            Vector3d expected = matrix.transformPosition(new Vector3d(v[6], v[7], v[0]));
            Positions placed = new Placement(mirror, scale, v[5], v[4], v[3], v[0], v[1], v[2])
                    .stageFromOwn(point(v[6], v[7], v[0]));
            assertThat(placed.x(0)).isCloseTo(expected.x, within(1e-8));
            assertThat(placed.y(0)).isCloseTo(expected.y, within(1e-8));
            assertThat(placed.z(0)).isCloseTo(expected.z, within(1e-8));
        }
    }

    /** Rotations keep distances, scaling multiplies them. */
    @Test
    void keepsDistancesButForTheScale() {
        Positions own = new Positions(new double[] {0, 3}, new double[] {0, 4}, new double[] {0, 12});
        Positions placed = new Placement(Mirror.Y, 2.5, 33, -21, 77, 5, 6, 7).stageFromOwn(own);
        assertThat(SpacingJumps.distance(placed, 0, 1)).isCloseTo(2.5 * 13, within(1e-12));
    }

    @Test
    void refusesWhatIsNoPlacement() {
        assertThatThrownBy(() -> new Placement(Mirror.NONE, 0, 0, 0, 0, 0, 0, 0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Placement.at(Double.NaN, 0, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void knowsTheSystemPropertiesThatWouldAlterIt() {
        Properties properties = new Properties();
        properties.setProperty("joml.nounsafe", "true");
        properties.setProperty("user.dir", "/");
        assertThat(PlacementMatrix.alteringProperty(properties)).isEmpty();
        properties.setProperty("joml.fastmath", "false");
        assertThat(PlacementMatrix.alteringProperty(properties)).contains("joml.fastmath");
    }
}

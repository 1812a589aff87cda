package org.duskloom.engine.survey.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.joml.Matrix3dc;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RotationsTest {
    @ParameterizedTest
    @CsvSource({
        "0, 0, 0",
        "30, 0, 0",
        "-90, 0, 0",
        "180, 0, 0",
        "0, 20, 0",
        "0, -89, 0",
        "0, 0, 45",
        "0, 0, -170",
        "10, 20, 30",
        "-100, 80, 170",
        "179, -45, -1"
    })
    void takesARotationApart(double turn, double tilt, double yaw) {
        double[] angles = Rotations.angles(Rotations.rotation(turn, tilt, yaw));
        assertThat(Rotations.normalized(angles[0] - turn)).isCloseTo(0, within(1e-9));
        assertThat(angles[1]).isCloseTo(tilt, within(1e-9));
        assertThat(Rotations.normalized(angles[2] - yaw)).isCloseTo(0, within(1e-9));
    }

    /** Tilted by a right angle, turn and yaw are about one axis: any pair with the right sum will do. */
    @ParameterizedTest
    @CsvSource({"25, 90, 10", "25, -90, 10", "0, 90, 0"})
    void takesATiltByARightAngleApart(double turn, double tilt, double yaw) {
        Matrix3dc rotation = Rotations.rotation(turn, tilt, yaw);
        double[] angles = Rotations.angles(rotation);
        assertThat(angles[1]).isCloseTo(tilt, within(1e-6));
        assertThat(angles[2]).isZero();
        assertThat(Rotations.squaredDifference(Rotations.rotation(angles[0], angles[1], angles[2]), rotation))
                .isCloseTo(0, within(1e-12));
    }

    /**
     * A tilt alone, a yaw alone and a turn alone turn by their own angle; a turn and a yaw by 90 degrees each by 120.
     */
    @ParameterizedTest
    @CsvSource({"40, 0, 0, 40", "0, 40, 0, 40", "0, 0, -40, 40", "90, 0, 90, 120", "180, 0, 0, 180", "0, 0, 0, 0"})
    void measuresTheAngle(double turn, double tilt, double yaw, double angle) {
        assertThat(Rotations.angle(Rotations.rotation(turn, tilt, yaw))).isCloseTo(angle, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "190, -170", "-190, 170", "180, 180", "-180, 180", "360, 0", "-540, 180", "725, 5"})
    void normalizes(double degrees, double normalized) {
        assertThat(Rotations.normalized(degrees)).isEqualTo(normalized);
    }
}

package org.duskloom.engine.survey.fit;

import java.util.Objects;
import org.duskloom.engine.map.Positions;

/**
 * A map of points that keeps all angles: y = scale * rotation * x + shift. What is named a rotation mirrors too where its
 * determinant is -1.
 */
record Similarity(Linear3 rotation, double scale, double shiftX, double shiftY, double shiftZ) {
    Similarity {
        Objects.requireNonNull(rotation, "rotation");
    }

    /** The map that turns and scales, and takes the one point to the other. */
    static Similarity taking(double[] from, double[] to, Linear3 rotation, double scale) {
        return new Similarity(
                rotation,
                scale,
                to[0] - scale * rotation.x(from[0], from[1], from[2]),
                to[1] - scale * rotation.y(from[0], from[1], from[2]),
                to[2] - scale * rotation.z(from[0], from[1], from[2]));
    }

    double x(double x, double y, double z) {
        return scale * rotation.x(x, y, z) + shiftX;
    }

    double y(double x, double y, double z) {
        return scale * rotation.y(x, y, z) + shiftY;
    }

    double z(double x, double y, double z) {
        return scale * rotation.z(x, y, z) + shiftZ;
    }

    /** Where all points go. */
    Positions of(Positions points) {
        double[][] mapped = new double[3][points.size()];
        for (int i = 0; i < points.size(); i++) {
            mapped[0][i] = x(points.x(i), points.y(i), points.z(i));
            mapped[1][i] = y(points.x(i), points.y(i), points.z(i));
            mapped[2][i] = z(points.x(i), points.y(i), points.z(i));
        }
        return new Positions(mapped[0], mapped[1], mapped[2]);
    }

    /** The angle of a turn about z in degrees, above -180 up to 180. */
    double turnDegrees() {
        return StrictMath.toDegrees(StrictMath.atan2(rotation.yx(), rotation.xx()));
    }
}

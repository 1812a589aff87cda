package org.duskloom.engine.survey.fit;

import java.util.Objects;
import org.duskloom.engine.map.Positions;
import org.joml.Matrix3dc;
import org.joml.Vector3d;
import org.joml.Vector3dc;

/**
 * A map of points that keeps all angles: y = scale * rotation * x + shift. What is named a rotation mirrors too where
 * its determinant is -1.
 */
record Similarity(Matrix3dc rotation, double scale, Vector3dc shift) {
    Similarity {
        Objects.requireNonNull(rotation, "rotation");
    }

    /** The map that turns and scales, and takes the one point to the other. */
    static Similarity taking(Vector3dc from, Vector3dc to, Matrix3dc rotation, double scale) {
        return new Similarity(
                rotation, scale, to.sub(rotation.transform(from, new Vector3d()).mul(scale), new Vector3d()));
    }

    /** Where a point goes. */
    Vector3d of(double x, double y, double z) {
        return rotation.transform(new Vector3d(x, y, z)).mul(scale).add(shift);
    }

    /** Where all points go. */
    Positions of(Positions points) {
        double[][] mapped = new double[3][points.size()];
        for (int i = 0; i < points.size(); i++) {
            Vector3d to = of(points.x(i), points.y(i), points.z(i));
            mapped[0][i] = to.x;
            mapped[1][i] = to.y;
            mapped[2][i] = to.z;
        }
        return new Positions(mapped[0], mapped[1], mapped[2]);
    }

    /** The angle of a turn about z in degrees, above -180 up to 180. */
    double turnDegrees() {
        return StrictMath.toDegrees(StrictMath.atan2(rotation.m01(), rotation.m00()));
    }
}

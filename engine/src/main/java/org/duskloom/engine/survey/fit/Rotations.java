package org.duskloom.engine.survey.fit;

import org.duskloom.engine.display.Mirror;
import org.duskloom.engine.display.Placement;
import org.duskloom.engine.map.Positions;
import org.joml.Matrix3d;
import org.joml.Matrix3dc;
import org.joml.Vector3d;

/**
 * Turns as a display writes them, and as matrices. Sines and cosines come from {@link StrictMath}, never from JOML,
 * whose own differ between JDKs. JOML's {@code m01} stands in column 0 and row 1: in the column of x and the row of y.
 */
final class Rotations {
    /** A cosine of the tilt below this leaves turn and yaw about one axis. */
    private static final double UPRIGHT = 1e-9;

    static final Matrix3dc IDENTITY = new Matrix3d();

    private static final Positions UNIT =
            new Positions(new double[] {1, 0, 0}, new double[] {0, 1, 0}, new double[] {0, 0, 1});

    private Rotations() {}

    /** A matrix written row by row. */
    static Matrix3d ofRows(
            double xx, double xy, double xz, double yx, double yy, double yz, double zx, double zy, double zz) {
        return new Matrix3d(xx, yx, zx, xy, yy, zy, xz, yz, zz);
    }

    /** A turn about z, counter-clockwise seen from where z points to. */
    static Matrix3d aboutZ(double cosine, double sine) {
        return new Matrix3d(cosine, sine, 0, -sine, cosine, 0, 0, 0, 1);
    }

    /** Turned about z, then tilted about x, then yawed about y; in degrees. */
    static Matrix3dc rotation(double turn, double tilt, double yaw) {
        Positions axes = new Placement(Mirror.NONE, 1, turn, tilt, yaw, 0, 0, 0).stageFromOwn(UNIT);
        return ofRows(
                axes.x(0), axes.x(1), axes.x(2), axes.y(0), axes.y(1), axes.y(2), axes.z(0), axes.z(1), axes.z(2));
    }

    /**
     * Turn, tilt and yaw in degrees that make this rotation; the tilt from -90 to 90. The inverse of {@link #rotation}:
     * the row of y of the product is (cos tilt sin turn, cos tilt cos turn, -sin tilt), the column of z is (sin yaw cos
     * tilt, -sin tilt, cos yaw cos tilt).
     */
    static double[] angles(Matrix3dc rotation) {
        double sine = Math.max(-1, Math.min(1, 0.0 - rotation.m21()));
        double tilt = StrictMath.toDegrees(StrictMath.asin(sine));
        double cosine = Math.sqrt(rotation.m01() * rotation.m01() + rotation.m11() * rotation.m11());
        if (cosine < UPRIGHT) {
            return new double[] {degrees(0.0 - rotation.m10(), rotation.m00()), tilt, 0};
        }
        return new double[] {degrees(rotation.m01(), rotation.m11()), tilt, degrees(rotation.m20(), rotation.m22())};
    }

    /** How far a rotation turns about its axis, in degrees from 0 to 180. */
    static double angle(Matrix3dc rotation) {
        double cosine = (rotation.m00() + rotation.m11() + rotation.m22() - 1) / 2;
        double x = rotation.m12() - rotation.m21();
        double y = rotation.m20() - rotation.m02();
        double z = rotation.m01() - rotation.m10();
        return degrees(Math.sqrt(x * x + y * y + z * z) / 2, cosine);
    }

    /** The sum of the squared differences of all elements. */
    static double squaredDifference(Matrix3dc a, Matrix3dc b) {
        Matrix3d difference = a.sub(b, new Matrix3d());
        double sum = 0;
        for (int column = 0; column < 3; column++) {
            sum += difference.getColumn(column, new Vector3d()).lengthSquared();
        }
        return sum;
    }

    /** The same angle above -180 up to 180 degrees. */
    static double normalized(double degrees) {
        double turn = degrees % 360;
        if (turn > 180) {
            return turn - 360;
        }
        return turn <= -180 ? turn + 360 : turn;
    }

    private static double degrees(double sine, double cosine) {
        return StrictMath.toDegrees(StrictMath.atan2(sine, cosine));
    }
}

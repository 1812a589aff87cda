package org.duskloom.engine.survey.fit;

import org.duskloom.engine.display.Mirror;
import org.duskloom.engine.display.Placement;
import org.duskloom.engine.map.Positions;

/** Turns as a display writes them, and as matrices. */
final class Axes {
    /** A cosine of the tilt below this leaves turn and yaw about one axis. */
    private static final double UPRIGHT = 1e-9;

    private static final Positions UNIT =
            new Positions(new double[] {1, 0, 0}, new double[] {0, 1, 0}, new double[] {0, 0, 1});

    private Axes() {}

    /** Turned about z, then tilted about x, then yawed about y; in degrees. */
    static Linear3 rotation(double turn, double tilt, double yaw) {
        Positions axes = new Placement(Mirror.NONE, 1, turn, tilt, yaw, 0, 0, 0).stageFromOwn(UNIT);
        return new Linear3(
                axes.x(0), axes.x(1), axes.x(2), axes.y(0), axes.y(1), axes.y(2), axes.z(0), axes.z(1), axes.z(2));
    }

    /**
     * Turn, tilt and yaw in degrees that make this rotation; the tilt from -90 to 90. The inverse of {@link #rotation}: the
     * row of y of the product is (cos tilt sin turn, cos tilt cos turn, -sin tilt), the column of z is (sin yaw cos tilt,
     * -sin tilt, cos yaw cos tilt).
     */
    static double[] angles(Linear3 rotation) {
        double sine = Math.max(-1, Math.min(1, 0.0 - rotation.yz()));
        double tilt = StrictMath.toDegrees(StrictMath.asin(sine));
        double cosine = Math.sqrt(rotation.yx() * rotation.yx() + rotation.yy() * rotation.yy());
        if (cosine < UPRIGHT) {
            return new double[] {degrees(0.0 - rotation.xy(), rotation.xx()), tilt, 0};
        }
        return new double[] {degrees(rotation.yx(), rotation.yy()), tilt, degrees(rotation.xz(), rotation.zz())};
    }

    /** How far a rotation turns about its axis, in degrees from 0 to 180. */
    static double angle(Linear3 rotation) {
        double cosine = (rotation.xx() + rotation.yy() + rotation.zz() - 1) / 2;
        double x = rotation.zy() - rotation.yz();
        double y = rotation.xz() - rotation.zx();
        double z = rotation.yx() - rotation.xy();
        return degrees(Math.sqrt(x * x + y * y + z * z) / 2, cosine);
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

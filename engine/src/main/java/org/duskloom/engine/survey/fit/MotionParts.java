package org.duskloom.engine.survey.fit;

import java.util.List;
import org.duskloom.engine.survey.CommonMotion;

/** Takes a rigid motion apart: how far it turns, and about what. */
final class MotionParts {
    private MotionParts() {}

    /**
     * A motion in words.
     *
     * @param props the names of the props
     * @param motion the motion, of points counted from the origin
     * @param points the points that it was fitted to, counted from the origin
     * @param isTurn whether it turns
     * @param errorDegrees of the angle
     * @param origin where the origin is on the stage
     */
    static CommonMotion of(
            List<String> props,
            Similarity motion,
            Moments points,
            boolean isTurn,
            double errorDegrees,
            double[] origin) {
        double[] from = points.fromMean();
        double[] to = points.toMean();
        CommonMotion.Point move = new CommonMotion.Point(to[0] - from[0], to[1] - from[1], to[2] - from[2]);
        if (!isTurn) {
            CommonMotion.Point middle =
                    new CommonMotion.Point(origin[0] + from[0], origin[1] + from[1], origin[2] + from[2]);
            return new CommonMotion(props, false, 0, errorDegrees, middle, new CommonMotion.Point(0, 0, 1), move);
        }
        double[] axis = axis(motion.rotation());
        double degrees = Axes.angle(motion.rotation());
        if (axis[2] < 0) {
            degrees = 0.0 - degrees;
            axis = new double[] {0.0 - axis[0], 0.0 - axis[1], 0.0 - axis[2]};
        }
        double[] pivot = pivot(from, to, axis, StrictMath.toRadians(degrees));
        return new CommonMotion(
                props,
                true,
                degrees,
                errorDegrees,
                new CommonMotion.Point(origin[0] + pivot[0], origin[1] + pivot[1], origin[2] + pivot[2]),
                new CommonMotion.Point(axis[0], axis[1], axis[2]),
                move);
    }

    /** The direction that stays: from the part of the matrix that changes its sign when transposed, or from its half turn. */
    private static double[] axis(Linear3 r) {
        double[] axis = {r.zy() - r.yz(), r.xz() - r.zx(), r.yx() - r.xy()};
        double length = Math.sqrt(axis[0] * axis[0] + axis[1] * axis[1] + axis[2] * axis[2]);
        if (length < 1e-9) {
            Linear3 u = Svd3.of(new Linear3(
                            r.xx() + 1, r.xy(), r.xz(), r.yx(), r.yy() + 1, r.yz(), r.zx(), r.zy(), r.zz() + 1))
                    .u();
            return new double[] {u.xx(), u.yx(), u.zx()};
        }
        return new double[] {axis[0] / length, axis[1] / length, axis[2] / length};
    }

    /**
     * The point of the axis nearest to a point that is moved by the turn: half way to where it comes to be, and from there at
     * a right angle to both by half the way times the cotangent of half the angle. A slide along the axis is left out.
     */
    private static double[] pivot(double[] from, double[] to, double[] axis, double radians) {
        double[] way = {to[0] - from[0], to[1] - from[1], to[2] - from[2]};
        double slide = way[0] * axis[0] + way[1] * axis[1] + way[2] * axis[2];
        for (int i = 0; i < 3; i++) {
            way[i] -= slide * axis[i];
        }
        double cotangent = StrictMath.cos(radians / 2) / StrictMath.sin(radians / 2);
        return new double[] {
            from[0] + way[0] / 2 + cotangent / 2 * (axis[1] * way[2] - axis[2] * way[1]),
            from[1] + way[1] / 2 + cotangent / 2 * (axis[2] * way[0] - axis[0] * way[2]),
            from[2] + way[2] / 2 + cotangent / 2 * (axis[0] * way[1] - axis[1] * way[0])
        };
    }
}

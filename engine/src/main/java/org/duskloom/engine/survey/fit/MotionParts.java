package org.duskloom.engine.survey.fit;

import java.util.List;
import org.duskloom.engine.survey.CommonMotion;
import org.joml.Matrix3d;
import org.joml.Matrix3dc;
import org.joml.Vector3d;
import org.joml.Vector3dc;

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
            Vector3dc origin) {
        Vector3d from = points.fromMean();
        Vector3d to = points.toMean();
        CommonMotion.Point move = point(to.sub(from, new Vector3d()));
        if (!isTurn) {
            return new CommonMotion(
                    props, false, 0, errorDegrees, point(from.add(origin)), new CommonMotion.Point(0, 0, 1), move);
        }
        Vector3d axis = axis(motion.rotation());
        double degrees = Rotations.angle(motion.rotation());
        if (axis.z < 0) {
            degrees = 0.0 - degrees;
            axis.negate();
        }
        Vector3d pivot = pivot(from, to, axis, StrictMath.toRadians(degrees)).add(origin);
        return new CommonMotion(props, true, degrees, errorDegrees, point(pivot), point(axis), move);
    }

    private static CommonMotion.Point point(Vector3dc at) {
        return new CommonMotion.Point(at.x(), at.y(), at.z());
    }

    /**
     * The direction that stays: from the part of the matrix that changes its sign when transposed, or from its half
     * turn.
     */
    private static Vector3d axis(Matrix3dc r) {
        Vector3d axis = new Vector3d(r.m12() - r.m21(), r.m20() - r.m02(), r.m01() - r.m10());
        if (axis.length() < 1e-9) {
            return Svd3.of(r.add(Rotations.IDENTITY, new Matrix3d())).u().getColumn(0, axis);
        }
        return axis.div(axis.length());
    }

    /**
     * The point of the axis nearest to a point that is moved by the turn: half way to where it comes to be, and from
     * there at a right angle to both by half the way times the cotangent of half the angle. A slide along the axis is
     * left out.
     */
    private static Vector3d pivot(Vector3dc from, Vector3dc to, Vector3dc axis, double radians) {
        Vector3d way = to.sub(from, new Vector3d());
        way.sub(axis.mul(way.dot(axis), new Vector3d()));
        double cotangent = StrictMath.cos(radians / 2) / StrictMath.sin(radians / 2);
        Vector3d aside = axis.cross(way, new Vector3d()).mul(cotangent / 2);
        return way.mul(0.5).add(from).add(aside);
    }
}

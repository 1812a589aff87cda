package org.duskloom.engine.survey.fit;

import org.duskloom.engine.display.Mirror;
import org.duskloom.engine.display.Placement;
import org.joml.Matrix3d;
import org.joml.Matrix3dc;
import org.joml.Vector3d;

/**
 * A fitted map as a placement of the display.
 *
 * @param placement how the prop stands then
 * @param turnedDegrees how far it is turned from its stance as the audience sees it, above -180 up to 180
 */
record Placed(Placement placement, double turnedDegrees) {
    /**
     * The placement that a reading leads to.
     *
     * @param reading the reading
     * @param similarity its map, from its stance
     * @param turn its turn
     */
    static Placed of(Candidate reading, Similarity similarity, TurnFit turn) {
        Placement from = reading.stance().placement();
        boolean mirrored = reading.form().mirrored();
        Mirror mirror = mirrored ? mirrored(from.mirror()) : from.mirror();
        if (reading.form().turn() == Turn.ALL_WAYS || !reading.stance().turnsInItsOwnPlane()) {
            return inSpace(reading.stance(), similarity, mirror);
        }
        double degrees = turn.degrees();
        if (mirrored && from.mirror() == Mirror.NONE && degrees > 90 && degrees < 270) {
            // The mirror image in x turned by 180 degrees is the one in y.
            mirror = Mirror.Y;
            degrees -= 180;
        }
        double turned = Rotations.normalized(degrees);
        double written = turned == 0 ? from.turnDegrees() : Rotations.normalized(from.turnDegrees() + turned);
        return new Placed(
                at(reading.stance(), similarity, mirror, written, from.tiltDegrees(), from.yawDegrees()), turned);
    }

    private static Mirror mirrored(Mirror from) {
        return from == Mirror.NONE ? Mirror.X : Mirror.NONE;
    }

    private static Placed inSpace(Stance stance, Similarity similarity, Mirror mirror) {
        Placement from = stance.placement();
        Matrix3dc mount = Rotations.rotation(0, from.tiltDegrees(), from.yawDegrees());
        Matrix3dc turn = Rotations.rotation(from.turnDegrees(), 0, 0);
        Matrix3dc seen = stance.stageFromFit() == Rotations.IDENTITY
                ? similarity.rotation().mul(mount, new Matrix3d())
                : mount.mul(similarity.rotation(), new Matrix3d());
        double[] angles = Rotations.angles(seen.mul(turn, new Matrix3d()));
        return new Placed(
                at(stance, similarity, mirror, angles[0], angles[1], angles[2]),
                Rotations.normalized(similarity.turnDegrees()));
    }

    private static Placement at(
            Stance stance, Similarity similarity, Mirror mirror, double turn, double tilt, double yaw) {
        Placement from = stance.placement();
        Matrix3dc axes = stance.stageFromFit();
        Vector3d shift = axes.transform(similarity.shift(), new Vector3d());
        return new Placement(
                mirror,
                from.scale() * similarity.scale(),
                turn,
                tilt,
                yaw,
                from.x() + shift.x,
                from.y() + shift.y,
                from.z() + shift.z);
    }
}

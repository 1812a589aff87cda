package org.duskloom.engine.survey.fit;

import org.duskloom.engine.display.Mirror;
import org.duskloom.engine.display.Placement;

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
        double turned = Axes.normalized(degrees);
        double written = turned == 0 ? from.turnDegrees() : Axes.normalized(from.turnDegrees() + turned);
        return new Placed(
                at(reading.stance(), similarity, mirror, written, from.tiltDegrees(), from.yawDegrees()), turned);
    }

    private static Mirror mirrored(Mirror from) {
        return from == Mirror.NONE ? Mirror.X : Mirror.NONE;
    }

    private static Placed inSpace(Stance stance, Similarity similarity, Mirror mirror) {
        Placement from = stance.placement();
        Linear3 mount = Axes.rotation(0, from.tiltDegrees(), from.yawDegrees());
        Linear3 turn = Axes.rotation(from.turnDegrees(), 0, 0);
        Linear3 seen = stance.stageFromFit() == Linear3.IDENTITY
                ? similarity.rotation().times(mount)
                : mount.times(similarity.rotation());
        double[] angles = Axes.angles(seen.times(turn));
        return new Placed(
                at(stance, similarity, mirror, angles[0], angles[1], angles[2]),
                Axes.normalized(similarity.turnDegrees()));
    }

    private static Placement at(
            Stance stance, Similarity similarity, Mirror mirror, double turn, double tilt, double yaw) {
        Placement from = stance.placement();
        Linear3 axes = stance.stageFromFit();
        double x = similarity.shiftX();
        double y = similarity.shiftY();
        double z = similarity.shiftZ();
        return new Placement(
                mirror,
                from.scale() * similarity.scale(),
                turn,
                tilt,
                yaw,
                from.x() + axes.x(x, y, z),
                from.y() + axes.y(x, y, z),
                from.z() + axes.z(x, y, z));
    }
}

package org.duskloom.engine.display;

import java.util.Objects;
import org.duskloom.engine.map.Positions;

/**
 * How a prop stands on the stage. Its shape is mirrored, then scaled, then turned, then tilted, then yawed, then moved:
 * each about the zero point and the axes of the stage, in that order. Quarter turns are exact.
 *
 * @param mirror which of the shape's own axes changes its sign
 * @param scale how many stage units one unit of the shape is, above 0
 * @param turnDegrees about z: counter-clockwise as the audience sees it
 * @param tiltDegrees about x: what is on top comes toward the audience
 * @param yawDegrees about y: counter-clockwise seen from above, what faces the audience goes to its right
 * @param x where the shape's zero point comes to be, to the audience's right
 * @param y the same, up
 * @param z the same, toward the audience
 */
public record Placement(
        Mirror mirror,
        double scale,
        double turnDegrees,
        double tiltDegrees,
        double yawDegrees,
        double x,
        double y,
        double z) {
    /**
     * @throws IllegalArgumentException if the scale is not above 0 or a value is not finite
     */
    public Placement {
        Objects.requireNonNull(mirror, "mirror");
        double sum = turnDegrees + tiltDegrees + yawDegrees + x + y + z;
        if (!(scale > 0) || !Double.isFinite(scale) || !Double.isFinite(sum)) {
            throw new IllegalArgumentException("not a placement: scale " + scale + ", sum of the rest " + sum);
        }
    }

    /** A shape as drawn, its zero point at that place. */
    public static Placement at(double x, double y, double z) {
        return new Placement(Mirror.NONE, 1, 0, 0, 0, x, y, z);
    }

    /**
     * Where pixels come to hang.
     *
     * @param own places in the shape's own axes
     * @return their places on the stage, in the same order
     */
    public Positions stageFromOwn(Positions own) {
        int count = own.size();
        double[][] stage = new double[3][count];
        new PlacementMatrix(this).place(own, false, stage, 0);
        return new Positions(stage[0], stage[1], stage[2]);
    }
}

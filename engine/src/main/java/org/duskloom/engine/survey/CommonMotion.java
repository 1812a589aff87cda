package org.duskloom.engine.survey;

import java.util.List;

/**
 * Props that moved together as if they were one thing: a branch that droops, or a board that was hung elsewhere.
 * Lengths in the display's unit.
 *
 * @param props their names
 * @param isTurn whether they turned; else they only moved
 * @param degrees how far they turned: counter-clockwise as the audience sees it, or about the axis where depth was
 *     measured
 * @param errorDegrees the standard deviation of that angle
 * @param pivot x, y and z of the point that they turned about; of the nearest point of the axis where depth was
 *     measured
 * @param axis the direction of the axis; x, y, z, toward the audience where depth was not measured
 * @param move how far their middle moved, x, y and z
 */
public record CommonMotion(
        List<String> props, boolean isTurn, double degrees, double errorDegrees, Point pivot, Point axis, Point move) {
    public CommonMotion {
        props = List.copyOf(props);
    }

    /** Three coordinates. */
    public record Point(double x, double y, double z) {}
}

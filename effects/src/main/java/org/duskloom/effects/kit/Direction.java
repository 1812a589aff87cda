package org.duskloom.effects.kit;

/**
 * A direction in the plane of the stage as a vector of length 1, exact at the quarter turns, so that a look that is turned
 * by 90 degrees gives the very same values.
 *
 * @param x to the right
 * @param y up
 */
public record Direction(double x, double y) {
    private static final double[] QUARTERS = {1, 0, -1, 0};

    /** The direction so many degrees counter-clockwise from the right; any finite number. */
    public static Direction ofDegrees(double degrees) {
        return new Direction(cosine(degrees), cosine(degrees - 90));
    }

    /** The cosine of an angle in degrees, exact at the quarter turns; the sine is that of 90 degrees less. */
    public static double cosine(double degrees) {
        double inTurn = degrees - 360 * Math.floor(degrees / 360);
        double quarters = inTurn / 90;
        if (quarters == Math.rint(quarters)) {
            return QUARTERS[(int) quarters & 3];
        }
        return StrictMath.cos(StrictMath.toRadians(inTurn));
    }
}

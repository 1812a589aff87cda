package org.duskloom.effects.kit;

/**
 * Directions in the plane of the stage, exact at the quarter turns, so that a look that is turned by 90 degrees gives the very
 * same values: cosine to the right, sine up. Asking allocates nothing.
 */
public final class Direction {
    private static final double[] QUARTERS = {1, 0, -1, 0};

    private Direction() {}

    /** The cosine of an angle in degrees, any finite number. */
    public static double cosine(double degrees) {
        double inTurn = degrees - 360 * Math.floor(degrees / 360);
        double quarters = inTurn / 90;
        if (quarters == Math.rint(quarters)) {
            return QUARTERS[(int) quarters & 3];
        }
        return StrictMath.cos(StrictMath.toRadians(inTurn));
    }

    /** The sine of an angle in degrees, any finite number. */
    public static double sine(double degrees) {
        return cosine(degrees - 90);
    }
}

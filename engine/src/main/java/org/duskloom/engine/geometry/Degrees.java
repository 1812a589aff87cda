package org.duskloom.engine.geometry;

/**
 * Sine and cosine of angles in degrees. Exact where the value is 0, a half or 1, and equal up to the sign at angles
 * that mirror each other in an axis or a diagonal, so that a ring has the symmetry it is drawn with. Everything up to
 * the last step is exact arithmetic on degrees, and the last step is {@link StrictMath}'s, the same on every JDK.
 * Asking allocates nothing.
 */
public final class Degrees {
    private static final double RADIANS = Math.PI / 180;
    private static final double DIAGONAL = Math.sqrt(0.5);

    private Degrees() {}

    /** The sine of an angle in degrees, any finite number. */
    public static double sine(double degrees) {
        double turn = Math.abs(degrees % 360);
        boolean lower = turn >= 180;
        double half = lower ? turn - 180 : turn;
        double value = sineOfFirstQuarter(half > 90 ? 180 - half : half);
        return (degrees < 0) == lower ? value : 0.0 - value;
    }

    /** The cosine of an angle in degrees, any finite number. */
    public static double cosine(double degrees) {
        double turn = Math.abs(degrees % 360);
        double half = turn > 180 ? 360 - turn : turn;
        return half > 90 ? 0.0 - sineOfFirstQuarter(half - 90) : cosineOfFirstQuarter(half);
    }

    private static double sineOfFirstQuarter(double degrees) {
        if (degrees == 30 || degrees == 45) {
            return degrees == 30 ? 0.5 : DIAGONAL;
        }
        return degrees > 45 ? StrictMath.cos((90 - degrees) * RADIANS) : StrictMath.sin(degrees * RADIANS);
    }

    private static double cosineOfFirstQuarter(double degrees) {
        if (degrees == 60 || degrees == 45) {
            return degrees == 60 ? 0.5 : DIAGONAL;
        }
        return degrees > 45 ? StrictMath.sin((90 - degrees) * RADIANS) : StrictMath.cos(degrees * RADIANS);
    }
}

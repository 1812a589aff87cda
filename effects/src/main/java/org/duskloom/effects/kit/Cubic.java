package org.duskloom.effects.kit;

/**
 * A cubic polynomial, c0 + c1 x + c2 x² + c3 x³.
 *
 * @param c0 its value at 0
 * @param c1 its slope at 0
 * @param c2 the factor of the square
 * @param c3 the factor of the cube
 */
record Cubic(double c0, double c1, double c2, double c3) {
    private static final double CONSTANT = 1e-9;

    static Cubic of(double[] factors) {
        return new Cubic(factors[0], factors[1], factors[2], factors[3]);
    }

    double at(double x) {
        return c0 + x * (c1 + x * (c2 + x * c3));
    }

    boolean isConstant() {
        return Math.abs(c1) + Math.abs(c2) + Math.abs(c3) < CONSTANT;
    }

    /** The cubic whose values are {@code slope} times these plus {@code shift}. */
    Cubic stretched(double slope, double shift) {
        return new Cubic(c0 * slope + shift, c1 * slope, c2 * slope, c3 * slope);
    }

    /** The least value in [0, width]. */
    double least(double width) {
        return -stretched(-1, 0).greatest(width);
    }

    /** The greatest value in [0, width]: at an end, or where the slope c1 + 2 c2 x + 3 c3 x² is 0. */
    double greatest(double width) {
        double greatest = Math.max(c0, at(width));
        double discriminant = c2 * c2 - 3 * c3 * c1;
        if (discriminant < 0) {
            return greatest;
        }
        // The sum of two numbers of one sign, so that no digits are lost, nor a root where c1 is 0.
        double sum = -(c2 + Math.copySign(Math.sqrt(discriminant), c2));
        greatest = Math.max(greatest, atIfWithin(sum / (3 * c3), width));
        greatest = Math.max(greatest, atIfWithin(c1 / sum, width));
        return greatest;
    }

    private double atIfWithin(double x, double width) {
        return x > 0 && x < width ? at(x) : c0;
    }
}

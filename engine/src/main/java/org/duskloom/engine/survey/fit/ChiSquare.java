package org.duskloom.engine.survey.fit;

/**
 * Bounds of the chi-square distribution: of the sum of the squares of so many independent normal errors of standard
 * deviation 1. E. B. Wilson and M. M. Hilferty, Proceedings of the National Academy of Sciences 17(12):684-688, 1931;
 * good to a tenth here.
 */
final class ChiSquare {
    /** Standard deviations of the normal distribution that are exceeded once in a million times. */
    private static final double ONE_IN_A_MILLION = 4.753;

    /** The same for one in twenty. */
    private static final double ONE_IN_20 = 1.645;

    /** Exact values for one and two degrees of freedom, where the approximation is poor. */
    private static final double LOWER_1 = 0.003932;

    private static final double LOWER_2 = 0.102587;

    private ChiSquare() {}

    /** Exceeded by chance once in a million times. */
    static double upper(int degreesOfFreedom) {
        return degreesOfFreedom < 1 ? 0 : at(degreesOfFreedom, ONE_IN_A_MILLION);
    }

    /** Fallen short of by chance once in 20 times; at least 1 degree of freedom, perhaps a broken number of them. */
    static double lower(double degreesOfFreedom) {
        if (degreesOfFreedom < 2) {
            return LOWER_1;
        }
        return degreesOfFreedom < 3 ? LOWER_2 : at(degreesOfFreedom, -ONE_IN_20);
    }

    /** How far the median lies below the mean: their quotient. */
    static double medianShare(int degreesOfFreedom) {
        return at(degreesOfFreedom, 0) / degreesOfFreedom;
    }

    private static double at(double degrees, double deviations) {
        double variance = 2 / (9 * degrees);
        double root = 1 - variance + deviations * Math.sqrt(variance);
        return degrees * root * root * root;
    }
}

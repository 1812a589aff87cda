package org.duskloom.engine.survey.fit;

/**
 * When a sum of squared distances is clearly less than another one.
 *
 * @param sigma the standard deviation of a measured coordinate
 * @param props how many props are judged: the more there are, the less is left to chance for each
 */
record Criterion(double sigma, int props) {
    /** A difference that chance makes once in 2,000 times: 12 is the bound of chi-square with one degree of freedom. */
    private static final double CLEARLY = 12;

    /**
     * A number that fits nothing takes one variance away on average, and seldom more than four: two standard
     * deviations.
     */
    private static final double PER_PARAMETER = 4;

    /** Chance has as many tries as there are props; the logarithm of a normal density falls by half the square. */
    private static final double PER_LOGARITHM = 2;

    double variance() {
        return sigma * sigma;
    }

    /**
     * How much more a reading may leave over than one that fits so many numbers more; than one that fits fewer, as than
     * one that fits as many.
     */
    double clearly(int parametersMore) {
        return variance()
                * (CLEARLY + PER_PARAMETER * Math.max(0, parametersMore) + PER_LOGARITHM * StrictMath.log(props));
    }

    /** How much more than the best reading any tenable one may leave over. */
    double slack() {
        return clearly(Form.MOST_PARAMETERS);
    }
}

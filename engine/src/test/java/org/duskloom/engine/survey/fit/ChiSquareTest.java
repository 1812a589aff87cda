package org.duskloom.engine.survey.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChiSquareTest {
    /**
     * The 5 % points of any table of the distribution, such as NIST/SEMATECH e-Handbook of Statistical Methods,
     * 1.3.6.7.4.
     */
    @ParameterizedTest
    @CsvSource({"1, 0.004", "2, 0.103", "3, 0.352", "4, 0.711", "5, 1.145", "10, 3.940", "20, 10.851", "100, 77.929"})
    void fallsShortOfTheLowerBoundOnceInTwenty(int degrees, double tabled) {
        assertThat(ChiSquare.lower(degrees)).isCloseTo(tabled, withinPercentage(7));
    }

    /**
     * For 2 degrees of freedom the distribution is exponential: the bound is 2 ln(10^6) = 27.63. For 4 it is the root
     * of exp(-x/2) (1 + x/2) = 10^-6, which is 33.38.
     */
    @Test
    void exceedsTheUpperBoundOnceInAMillion() {
        assertThat(ChiSquare.upper(2)).isCloseTo(2 * Math.log(1e6), withinPercentage(10));
        double x = ChiSquare.upper(4);
        assertThat(Math.exp(-x / 2) * (1 + x / 2)).isBetween(0.3e-6, 1e-6);
        assertThat(ChiSquare.upper(0)).isZero();
    }

    /** For 2 degrees of freedom the median is 2 ln 2. */
    @Test
    void knowsTheMedian() {
        assertThat(ChiSquare.medianShare(2)).isCloseTo(Math.log(2), withinPercentage(2));
        assertThat(ChiSquare.medianShare(1000)).isBetween(0.999, 1.0);
    }
}

package org.duskloom.engine.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Fractions as in a book of arithmetic. */
class RatioTest {
    private static final Ratio ONE = Ratio.of(1);

    private final Random random = new Random(37);

    private Ratio any() {
        return Ratio.of(random.nextInt(2001) - 1000, 1 + random.nextInt(1000));
    }

    @ParameterizedTest
    @CsvSource({"6, 4, 3, 2", "-6, 4, -3, 2", "6, -4, -3, 2", "-6, -4, 3, 2", "0, -7, 0, 1", "5, 1, 5, 1"})
    void isReducedAndCarriesItsSignAbove(long numerator, long denominator, long reduced, long below) {
        Ratio ratio = Ratio.of(numerator, denominator);
        assertThat(ratio.numerator()).isEqualTo(BigInteger.valueOf(reduced));
        assertThat(ratio.denominator()).isEqualTo(BigInteger.valueOf(below));
    }

    /** 1/2 + 1/3 = 5/6, 1/2 - 1/3 = 1/6, 1/2 * 1/3 = 1/6, 1/2 : 1/3 = 3/2. */
    @Test
    void addsAndDivides() {
        Ratio half = Ratio.of(1, 2);
        Ratio third = Ratio.of(1, 3);
        assertThat(half.plus(third)).isEqualTo(Ratio.of(5, 6));
        assertThat(half.minus(third)).isEqualTo(Ratio.of(1, 6));
        assertThat(half.times(third)).isEqualTo(Ratio.of(1, 6));
        assertThat(half.over(third)).isEqualTo(Ratio.of(3, 2));
    }

    /** The laws of a field. */
    @Test
    void keepsTheLawsOfArithmetic() {
        for (int i = 0; i < 500; i++) {
            Ratio a = any();
            Ratio b = any();
            Ratio c = any();
            assertThat(a.plus(b)).isEqualTo(b.plus(a));
            assertThat(a.plus(b).plus(c)).isEqualTo(a.plus(b.plus(c)));
            assertThat(a.times(b.plus(c))).isEqualTo(a.times(b).plus(a.times(c)));
            assertThat(a.minus(a)).isEqualTo(Ratio.ZERO);
            assertThat(a.plus(b).minus(b)).isEqualTo(a);
            assertThat(b.over(ONE)).isEqualTo(b);
            if (b.compareTo(Ratio.ZERO) != 0) {
                assertThat(a.over(b).times(b)).isEqualTo(a);
            }
        }
    }

    /** As two doubles divide, which IEEE 754 rounds rightly, and as whole numbers do. */
    @Test
    void itsNearestDoubleItsFloorAndItsOrderAreThoseOfTheQuotient() {
        Ratio before = any();
        for (int i = 0; i < 2000; i++) {
            long above = random.nextLong() >> 12;
            long below = 1 + (random.nextLong() >>> 13 >>> random.nextInt(50));
            Ratio ratio = Ratio.of(above, below);
            assertThat(ratio.nearest()).isEqualTo((double) above / below);
            assertThat(ratio.floor()).isEqualTo(BigInteger.valueOf(Math.floorDiv(above, below)));
            assertThat(Integer.signum(ratio.compareTo(before)))
                    .isEqualTo(ratio.minus(before).numerator().signum());
            before = ratio;
        }
    }

    /** Both are far beyond a long; a third of 10^40 is a third of a decimal number. */
    @Test
    void isOfAnySize() {
        BigInteger huge = BigInteger.TEN.pow(40);
        Ratio third = new Ratio(huge, BigInteger.valueOf(3));
        assertThat(third.nearest())
                .isEqualTo(new BigDecimal("3333333333333333333333333333333333333333.3333").doubleValue());
        assertThat(third.times(Ratio.of(3)).over(new Ratio(huge, BigInteger.ONE)))
                .isEqualTo(ONE);
        assertThatThrownBy(third::seconds).isInstanceOf(ArithmeticException.class);
    }

    /** Times are kept to the picosecond: what is finer goes to the nearest, a half up. */
    @ParameterizedTest
    @CsvSource({
        "1, 1000000000000, 1, 1000000000000",
        "1, 3, 1, 3",
        "1, 3000000000000, 0, 1",
        "2, 3000000000000, 1, 1000000000000",
        "-2, 3000000000000, -1, 1000000000000",
        "1, 2000000000000, 1, 1000000000000",
        "3, 2000000000000, 1, 500000000000",
        "-1, 2000000000000, 0, 1"
    })
    void timesAreKeptToThePicosecond(long numerator, long denominator, long above, long below) {
        assertThat(Ratio.of(numerator, denominator).seconds()).isEqualTo(new ExactTime(above, below));
    }

    @Test
    void nothingIsDividedByNothing() {
        assertThatThrownBy(() -> Ratio.of(1, 0))
                .isInstanceOf(ArithmeticException.class)
                .hasMessage("division by zero");
        assertThatThrownBy(() -> ONE.over(Ratio.ZERO)).isInstanceOf(ArithmeticException.class);
    }
}

package org.duskloom.engine.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Random;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class ExactTimeTest {
    @ParameterizedTest
    @CsvSource({"2, 4, 1, 2", "-2, 4, -1, 2", "2, -4, -1, 2", "-2, -4, 1, 2", "0, 7, 0, 1", "0, -7, 0, 1", "5, 1, 5, 1"
    })
    void equalTimesAreEqualRecords(long numerator, long denominator, long reducedNumerator, long reducedDenominator) {
        ExactTime time = new ExactTime(numerator, denominator);

        assertThat(time.numerator()).isEqualTo(reducedNumerator);
        assertThat(time.denominator()).isEqualTo(reducedDenominator);
    }

    /** Sums of fractions, as worked by hand: 1/6 + 1/10 = 5/30 + 3/30 = 8/30 = 4/15. */
    @Test
    void addsAndSubtractsExactly() {
        ExactTime sum = new ExactTime(1, 6).plus(new ExactTime(1, 10));

        assertThat(sum).isEqualTo(new ExactTime(4, 15));
        assertThat(sum.minus(new ExactTime(1, 10))).isEqualTo(new ExactTime(1, 6));
        assertThat(sum.minus(sum)).isEqualTo(ExactTime.ZERO);
        assertThat(ExactTime.ZERO.minus(sum)).isEqualTo(sum.negated());
    }

    /** A tenth has no exact double: ten of them added as doubles give 0.9999999999999999 (IEEE 754). */
    @Test
    void tenTenthsAreOne() {
        ExactTime total = ExactTime.ZERO;
        double asDoubles = 0;
        for (int i = 0; i < 10; i++) {
            total = total.plus(new ExactTime(1, 10));
            asDoubles += 0.1;
        }

        assertThat(total).isEqualTo(ExactTime.ofSeconds(1));
        assertThat(asDoubles).isNotEqualTo(1.0);
    }

    @Test
    void multipliesByWholesAndFractions() {
        assertThat(ExactTime.ofMilliseconds(250).times(6)).isEqualTo(new ExactTime(3, 2));
        assertThat(new ExactTime(3, 7).times(14, 9)).isEqualTo(new ExactTime(2, 3));
        assertThat(new ExactTime(3, 7).times(0)).isEqualTo(ExactTime.ZERO);
        assertThat(new ExactTime(3, 7).times(1, -3)).isEqualTo(new ExactTime(-1, 7));
    }

    /** The cross products are beyond 64 bits, the results are not. */
    @Test
    void isExactWhereProductsDoNotFit() {
        ExactTime large = new ExactTime(Long.MAX_VALUE, 3);
        ExactTime small = new ExactTime(1, Long.MAX_VALUE);

        assertThat(large.times(3, Long.MAX_VALUE)).isEqualTo(ExactTime.ofSeconds(1));
        assertThat(large).isGreaterThan(new ExactTime(Long.MAX_VALUE - 1, 3));
        assertThat(small).isLessThan(new ExactTime(1, Long.MAX_VALUE - 1));
        assertThat(small.plus(small)).isEqualTo(new ExactTime(2, Long.MAX_VALUE));
    }

    @Test
    void refusesWhatDoesNotFit() {
        ExactTime largest = ExactTime.ofSeconds(Long.MAX_VALUE);
        ExactTime finest = new ExactTime(1, Long.MAX_VALUE);

        assertThatThrownBy(() -> largest.plus(ExactTime.ofSeconds(1))).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> largest.times(2)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> largest.plus(finest)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> finest.times(1, 2)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> finest.times(1, 0)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> ExactTime.ZERO.times(0, 0)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> new ExactTime(Long.MIN_VALUE, 1)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> new ExactTime(1, Long.MIN_VALUE)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> new ExactTime(1, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void ordersByLength() {
        assertThat(new ExactTime(1, 3)).isLessThan(new ExactTime(334, 1000)).isGreaterThan(new ExactTime(333, 1000));
        assertThat(new ExactTime(-1, 3)).isLessThan(ExactTime.ZERO);
        assertThat(new ExactTime(2, 6)).isEqualByComparingTo(new ExactTime(1, 3));
        assertThat(new ExactTime(-1, 3).isNegative()).isTrue();
        assertThat(ExactTime.ZERO.isNegative()).isFalse();
        assertThat(ExactTime.ZERO.isZero()).isTrue();
        assertThat(new ExactTime(1, 3).isZero()).isFalse();
    }

    /** IEEE 754: a quotient of two exact doubles is the nearest double, which is what a literal means too. */
    @Test
    void givesTheNearestDouble() {
        assertThat(new ExactTime(1, 10).seconds()).isEqualTo(0.1);
        assertThat(new ExactTime(1001, 30000).seconds()).isEqualTo(1001.0 / 30000.0);
        assertThat(new ExactTime(-5, 2).seconds()).isEqualTo(-2.5);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 1, 0s",
        "3, 1, 3s",
        "1, 4, 0.25s",
        "-1, 4, -0.25s",
        "600, 1, 600s",
        "1001, 30000, 1001/30000s",
        "1, 3, 1/3s",
        "1, 1000000000, 0.000000001s",
        "1, 2000000000, 1/2000000000s"
    })
    void showsItselfExactly(long numerator, long denominator, String shown) {
        assertThat(new ExactTime(numerator, denominator)).hasToString(shown);
    }

    /** Against whole numbers of any size, on both sides of where products stop to fit into 64 bits. */
    @Test
    void reckonsAsWithNumbersOfAnySize() {
        Random random = new Random(14);
        for (int i = 0; i < 20_000; i++) {
            ExactTime a = any(random);
            ExactTime b = any(random);
            BigInteger left = big(a.numerator()).multiply(big(b.denominator()));
            BigInteger right = big(b.numerator()).multiply(big(a.denominator()));
            BigInteger below = big(a.denominator()).multiply(big(b.denominator()));

            assertThat(a.compareTo(b)).isEqualTo(left.compareTo(right));
            assertSame(left.add(right), below, () -> a.plus(b));
            assertSame(left.subtract(right), below, () -> a.minus(b));
            assertSame(
                    big(a.numerator()).multiply(big(b.numerator())),
                    below,
                    () -> a.times(b.numerator(), b.denominator()));
            assertSame(
                    big(a.numerator()).multiply(big(b.numerator())),
                    below.negate(),
                    () -> a.times(b.numerator(), -b.denominator()));
        }
    }

    private static ExactTime any(Random random) {
        return new ExactTime(
                random.nextLong() >> 1 + random.nextInt(62), 1 + (random.nextLong() >>> 1 + random.nextInt(62)));
    }

    private static BigInteger big(long value) {
        return BigInteger.valueOf(value);
    }

    private static void assertSame(BigInteger above, BigInteger below, Supplier<ExactTime> time) {
        BigInteger divisor = above.gcd(below).multiply(BigInteger.valueOf(below.signum()));
        BigInteger numerator = above.divide(divisor);
        BigInteger denominator = below.divide(divisor);
        if (numerator.bitLength() < 64 && denominator.bitLength() < 64) {
            assertThat(time.get()).isEqualTo(new ExactTime(numerator.longValue(), denominator.longValue()));
        } else {
            assertThatThrownBy(time::get).isInstanceOf(ArithmeticException.class);
        }
    }

    /** The decimals of java.math, which are exact. */
    @Test
    void showsTheDecimalsOfItsQuotient() {
        Random random = new Random(9);
        for (int i = 0; i < 2000; i++) {
            long denominator = Math.round(Math.pow(2, random.nextInt(10)) * Math.pow(5, random.nextInt(10)));
            ExactTime time = new ExactTime(random.nextInt() >> random.nextInt(31), denominator);
            BigDecimal quotient = new BigDecimal(time.numerator()).divide(new BigDecimal(time.denominator()));
            String decimals =
                    quotient.signum() == 0 ? "0" : quotient.stripTrailingZeros().toPlainString();
            assertThat(time).hasToString(decimals + "s");
        }
    }
}

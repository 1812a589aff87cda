package org.duskloom.engine.time;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;

/**
 * An exact fraction of any size, reduced: how many beats, or which place between two of them.
 *
 * @param numerator carries the sign
 * @param denominator above 0
 */
public record Ratio(BigInteger numerator, BigInteger denominator) implements Comparable<Ratio> {
    /** Nothing. */
    public static final Ratio ZERO = Ratio.of(0);

    private static final BigInteger FINEST_TIME = BigInteger.TEN.pow(12);

    /** So many that the nearest double is the same as that of the exact quotient. */
    private static final MathContext ENOUGH_DIGITS = new MathContext(60);

    /** @throws ArithmeticException if the denominator is 0 */
    public Ratio {
        if (denominator.signum() == 0) {
            throw new ArithmeticException("division by zero");
        }
        BigInteger divisor = numerator.gcd(denominator);
        divisor = denominator.signum() < 0 ? divisor.negate() : divisor;
        numerator = numerator.divide(divisor);
        denominator = denominator.divide(divisor);
    }

    /** A whole number. */
    public static Ratio of(long whole) {
        return of(whole, 1);
    }

    /** A fraction of two whole numbers. */
    public static Ratio of(long numerator, long denominator) {
        return new Ratio(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
    }

    /** The seconds of a time. */
    static Ratio of(ExactTime time) {
        return of(time.numerator(), time.denominator());
    }

    /** The sum. */
    public Ratio plus(Ratio other) {
        return new Ratio(
                numerator.multiply(other.denominator).add(other.numerator.multiply(denominator)),
                denominator.multiply(other.denominator));
    }

    /** The difference. */
    public Ratio minus(Ratio other) {
        return plus(other.negated());
    }

    /** The same on the other side of zero. */
    public Ratio negated() {
        return new Ratio(numerator.negate(), denominator);
    }

    /** The product. */
    public Ratio times(Ratio other) {
        return new Ratio(numerator.multiply(other.numerator), denominator.multiply(other.denominator));
    }

    /**
     * The quotient.
     *
     * @throws ArithmeticException if the other is 0
     */
    public Ratio over(Ratio other) {
        return new Ratio(numerator.multiply(other.denominator), denominator.multiply(other.numerator));
    }

    /** The greatest whole number that is not above it. */
    public BigInteger floor() {
        BigInteger[] parts = numerator.divideAndRemainder(denominator);
        return parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
    }

    /** The nearest double. */
    public double nearest() {
        return new BigDecimal(numerator)
                .divide(new BigDecimal(denominator), ENOUGH_DIGITS)
                .doubleValue();
    }

    /**
     * So many seconds: exact down to 10^-12 seconds, else the nearest multiple of that.
     *
     * @throws ArithmeticException if it does not fit
     */
    ExactTime seconds() {
        if (denominator.compareTo(FINEST_TIME) <= 0) {
            return ExactTime.reduced(numerator, denominator);
        }
        BigInteger twice = numerator.multiply(FINEST_TIME).shiftLeft(1).add(denominator);
        return ExactTime.reduced(new Ratio(twice, denominator.shiftLeft(1)).floor(), FINEST_TIME);
    }

    @Override
    public int compareTo(Ratio other) {
        return numerator.multiply(other.denominator).compareTo(other.numerator.multiply(denominator));
    }
}

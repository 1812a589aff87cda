package org.duskloom.engine.time;

import java.math.BigDecimal;
import java.math.BigInteger;
import org.duskloom.engine.digest.FingerprintWriter;
import org.duskloom.engine.digest.Fingerprinted;

/**
 * An instant or a length of time as an exact fraction of seconds, always reduced, so that equal times are equal
 * records.
 *
 * @param numerator the fraction's upper part; carries the sign
 * @param denominator the fraction's lower part, above 0
 */
public record ExactTime(long numerator, long denominator) implements Comparable<ExactTime>, Fingerprinted {
    /** No time at all, or the start. */
    public static final ExactTime ZERO = new ExactTime(0, 1);

    private static final int LONGEST_SHOWN_DECIMALS = 9;
    private static final long BILLION = 1_000_000_000;

    /** The sum of two products of numbers below it fits; nearly all times of shows are made of such. */
    private static final long SMALL = 1L << 31;

    /**
     * Reduces the fraction.
     *
     * @throws IllegalArgumentException if the denominator is 0
     * @throws ArithmeticException if a part has no positive counterpart, which is so for {@code Long.MIN_VALUE}
     */
    public ExactTime {
        if (denominator == 0) {
            throw new IllegalArgumentException("a time cannot have the denominator 0");
        }
        long divisor = greatestCommonDivisor(Math.absExact(numerator), Math.absExact(denominator));
        divisor = denominator < 0 ? -divisor : divisor;
        numerator /= divisor;
        denominator /= divisor;
    }

    /** So many whole seconds. */
    public static ExactTime ofSeconds(long seconds) {
        return new ExactTime(seconds, 1);
    }

    /** So many whole milliseconds. */
    public static ExactTime ofMilliseconds(long milliseconds) {
        return new ExactTime(milliseconds, 1000);
    }

    /**
     * The sum.
     *
     * @throws ArithmeticException if it does not fit
     */
    public ExactTime plus(ExactTime other) {
        if (other.isZero()) {
            return this;
        }
        if (isSmall() && other.isSmall()) {
            return new ExactTime(
                    numerator * other.denominator + other.numerator * denominator, denominator * other.denominator);
        }
        BigInteger left = big(numerator).multiply(big(other.denominator));
        BigInteger right = big(other.numerator).multiply(big(denominator));
        return reduced(left.add(right), big(denominator).multiply(big(other.denominator)));
    }

    /**
     * The difference; negative where the other is later or longer.
     *
     * @throws ArithmeticException if it does not fit
     */
    public ExactTime minus(ExactTime other) {
        if (isSmall() && other.isSmall()) {
            return new ExactTime(
                    numerator * other.denominator - other.numerator * denominator, denominator * other.denominator);
        }
        return plus(other.negated());
    }

    /** The same length the other way. */
    public ExactTime negated() {
        return new ExactTime(-numerator, denominator);
    }

    /**
     * So many times this.
     *
     * @throws ArithmeticException if it does not fit
     */
    public ExactTime times(long factor) {
        return times(factor, 1);
    }

    /**
     * This times the fraction {@code factorNumerator / factorDenominator}.
     *
     * @throws ArithmeticException if it does not fit, or if the denominator is 0
     */
    public ExactTime times(long factorNumerator, long factorDenominator) {
        if (isSmall() && isSmall(factorNumerator) && isSmall(factorDenominator) && factorDenominator != 0) {
            return new ExactTime(numerator * factorNumerator, denominator * factorDenominator);
        }
        return reduced(
                big(numerator).multiply(big(factorNumerator)), big(denominator).multiply(big(factorDenominator)));
    }

    /** Whether it is below zero. */
    public boolean isNegative() {
        return numerator < 0;
    }

    /** Whether it is exactly zero. */
    public boolean isZero() {
        return numerator == 0;
    }

    /** Seconds as a double: the nearest one wherever both parts are at most 2^53 in size. */
    public double seconds() {
        return (double) numerator / (double) denominator;
    }

    @Override
    public int compareTo(ExactTime other) {
        if (denominator == other.denominator) {
            return Long.compare(numerator, other.numerator);
        }
        if (isSmall() && other.isSmall()) {
            return Long.compare(numerator * other.denominator, other.numerator * denominator);
        }
        BigInteger left = big(numerator).multiply(big(other.denominator));
        return left.compareTo(big(other.numerator).multiply(big(denominator)));
    }

    @Override
    public void addTo(FingerprintWriter parts) {
        parts.whole(numerator).whole(denominator);
    }

    /** Exact seconds: {@code 0.25s} where nine decimals are enough, else a fraction such as {@code 1001/30000s}. */
    @Override
    public String toString() {
        if (isSmall(numerator) && BILLION % denominator == 0) {
            return decimals(numerator * (BILLION / denominator));
        }
        BigInteger[] scaled = big(numerator)
                .multiply(BigInteger.TEN.pow(LONGEST_SHOWN_DECIMALS))
                .divideAndRemainder(big(denominator));
        if (scaled[1].signum() != 0) {
            return numerator + "/" + denominator + "s";
        }
        BigDecimal seconds = new BigDecimal(scaled[0], LONGEST_SHOWN_DECIMALS);
        return (seconds.signum() == 0 ? "0" : seconds.stripTrailingZeros().toPlainString()) + "s";
    }

    private static String decimals(long billionths) {
        long size = Math.abs(billionths);
        StringBuilder text = new StringBuilder(billionths < 0 ? "-" : "").append(size / BILLION);
        long fraction = size % BILLION;
        if (fraction != 0) {
            text.append('.');
        }
        for (long place = BILLION / 10; fraction != 0; place /= 10) {
            text.append((char) ('0' + fraction / place));
            fraction %= place;
        }
        return text.append('s').toString();
    }

    static ExactTime reduced(BigInteger numerator, BigInteger denominator) {
        BigInteger divisor = numerator.gcd(denominator);
        if (denominator.signum() == 0) {
            throw new ArithmeticException("division by zero");
        }
        return new ExactTime(
                numerator.divide(divisor).longValueExact(),
                denominator.divide(divisor).longValueExact());
    }

    private boolean isSmall() {
        return isSmall(numerator) && isSmall(denominator);
    }

    private static boolean isSmall(long value) {
        return value > -SMALL && value < SMALL;
    }

    private static BigInteger big(long value) {
        return BigInteger.valueOf(value);
    }

    private static long greatestCommonDivisor(long a, long b) {
        while (b != 0) {
            long rest = a % b;
            a = b;
            b = rest;
        }
        return a;
    }
}

package org.duskloom.engine.plan;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.FrameRate;

/**
 * Seconds from a start to a frame. The quotient is exact before it is rounded once, so an instant that two frame rates
 * share has the same seconds at both.
 */
final class FrameClock {
    private static final long LARGEST_EXACT = 1L << 53;

    /** So many that the nearest double is the same as that of the exact quotient. */
    private static final MathContext ENOUGH_DIGITS = new MathContext(60);

    private final FrameRate rate;
    private final ExactTime start;
    private final long perFrame;
    private final long atStart;
    private final long denominator;
    private final long lastCheapFrame;

    /** A clock that starts at an instant of the timeline. */
    FrameClock(FrameRate rate, ExactTime start) {
        this.rate = rate;
        this.start = start;
        long divisor = greatestCommonDivisor(rate.numerator(), start.denominator());
        long ownDenominator = start.denominator() / divisor;
        long ownNumerator = rate.numerator() / divisor;
        boolean cheap = isExact(ownDenominator, rate.numerator())
                && isExact(ownDenominator, rate.denominator())
                && isExact(ownNumerator, start.numerator());
        perFrame = cheap ? ownDenominator * rate.denominator() : 1;
        atStart = cheap ? ownNumerator * start.numerator() : 0;
        denominator = cheap ? ownDenominator * rate.numerator() : 1;
        lastCheapFrame = cheap ? (LARGEST_EXACT - atStart) / perFrame : -1;
    }

    /** Whether doubles hold the product exactly. */
    private static boolean isExact(long factor, long other) {
        long product = factor * other;
        return Math.multiplyHigh(factor, other) == product >> 63 && product > -LARGEST_EXACT && product < LARGEST_EXACT;
    }

    private static long greatestCommonDivisor(long a, long b) {
        return b == 0 ? a : greatestCommonDivisor(b, a % b);
    }

    /** The instant from which it counts. */
    ExactTime start() {
        return start;
    }

    /** Seconds from the start to the frame; negative before it. */
    double secondsAt(long frame) {
        if (frame <= lastCheapFrame) {
            return (double) (frame * perFrame - atStart) / denominator;
        }
        return exactSecondsAt(frame);
    }

    private double exactSecondsAt(long frame) {
        BigInteger sinceZero = big(frame).multiply(big(rate.denominator())).multiply(big(start.denominator()));
        BigInteger sinceStart = sinceZero.subtract(big(start.numerator()).multiply(big(rate.numerator())));
        BigInteger whole = big(rate.numerator()).multiply(big(start.denominator()));
        return new BigDecimal(sinceStart)
                .divide(new BigDecimal(whole), ENOUGH_DIGITS)
                .doubleValue();
    }

    private static BigInteger big(long value) {
        return BigInteger.valueOf(value);
    }
}

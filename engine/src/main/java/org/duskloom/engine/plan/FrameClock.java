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
        BigInteger common = lcm(big(rate.numerator()), big(start.denominator()));
        BigInteger frame = common.divide(big(rate.numerator())).multiply(big(rate.denominator()));
        BigInteger first = common.divide(big(start.denominator())).multiply(big(start.numerator()));
        boolean cheap = common.bitLength() <= 53 && frame.bitLength() <= 53 && first.bitLength() <= 53;
        perFrame = cheap ? frame.longValueExact() : 1;
        atStart = cheap ? first.longValueExact() : 0;
        denominator = cheap ? common.longValueExact() : 1;
        lastCheapFrame = cheap ? (LARGEST_EXACT - atStart) / perFrame : -1;
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

    private static BigInteger lcm(BigInteger a, BigInteger b) {
        return a.divide(a.gcd(b)).multiply(b);
    }
}

package org.duskloom.engine.plan;

import java.math.BigInteger;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.FrameRate;

/**
 * Seconds from a start to a frame. The quotient is exact before it is rounded once, so an instant that two frame rates
 * share has the same seconds at both.
 */
final class FrameClock {
    private static final long LARGEST_EXACT = 1L << 53;

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
        BigInteger common = lcm(BigInteger.valueOf(rate.numerator()), BigInteger.valueOf(start.denominator()));
        BigInteger frame =
                common.divide(BigInteger.valueOf(rate.numerator())).multiply(BigInteger.valueOf(rate.denominator()));
        BigInteger first =
                common.divide(BigInteger.valueOf(start.denominator())).multiply(BigInteger.valueOf(start.numerator()));
        boolean cheap = common.bitLength() <= 53 && frame.bitLength() <= 53 && first.bitLength() <= 53;
        perFrame = cheap ? frame.longValueExact() : 1;
        atStart = cheap ? first.longValueExact() : 0;
        denominator = cheap ? common.longValueExact() : 1;
        lastCheapFrame = cheap ? (LARGEST_EXACT - atStart) / perFrame : -1;
    }

    /** Seconds from the start to the frame; negative before it. */
    double secondsAt(long frame) {
        if (frame <= lastCheapFrame) {
            return (double) (frame * perFrame - atStart) / denominator;
        }
        return rate.timeOf(frame).minus(start).seconds();
    }

    private static BigInteger lcm(BigInteger a, BigInteger b) {
        return a.divide(a.gcd(b)).multiply(b);
    }
}

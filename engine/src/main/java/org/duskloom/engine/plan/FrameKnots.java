package org.duskloom.engine.plan;

import java.math.BigInteger;
import java.util.List;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.FrameRate;

/**
 * Instants in rising order, and where frames lie among them: everything counted in whole parts of a second that all of
 * them have in common, so that nothing is rounded before the last division. Numbers below 0 and beyond the last go on
 * with the first and the last interval. Immutable; asking allocates nothing.
 */
final class FrameKnots {
    /** Parts in which frames of more than a day at any rate can be counted without leaving a long. */
    private static final int MOST_BITS = 62;

    private static final int FRAME_BITS = 27;

    /** Parts are hardly longer; where the common ones would be too small, instants are rounded to these. */
    private static final BigInteger FALLBACK = BigInteger.valueOf(1_000_000_000L);

    private final long[] parts;
    private final long perFrame;
    private final double partsPerSecond;

    /** @param instants two at least, rising */
    FrameKnots(List<ExactTime> instants, FrameRate rate) {
        BigInteger common = big(rate.numerator());
        for (ExactTime instant : instants) {
            common = common.divide(common.gcd(big(instant.denominator()))).multiply(big(instant.denominator()));
        }
        BigInteger fallback = FALLBACK.divide(FALLBACK.gcd(big(rate.numerator()))).multiply(big(rate.numerator()));
        BigInteger fine = common.multiply(FALLBACK.divide(common).max(BigInteger.ONE));
        BigInteger exact = fits(fine, instants, rate) ? fine : common;
        BigInteger scale = fits(exact, instants, rate) ? exact : fallback;
        parts = instants.stream()
                .mapToLong(instant -> scale.multiply(big(instant.numerator()))
                        .divide(big(instant.denominator()))
                        .longValueExact())
                .toArray();
        perFrame = scale.divide(big(rate.numerator()))
                .multiply(big(rate.denominator()))
                .longValueExact();
        partsPerSecond = scale.doubleValue();
    }

    private static boolean fits(BigInteger common, List<ExactTime> instants, FrameRate rate) {
        BigInteger last = big(instants.get(instants.size() - 1).numerator()).abs().max(big(instants.get(0).numerator()).abs());
        return common.bitLength() + Math.max(FRAME_BITS, last.bitLength()) <= MOST_BITS
                && common.bitLength() - big(rate.numerator()).bitLength() + big(rate.denominator()).bitLength() + FRAME_BITS
                        <= MOST_BITS;
    }

    private static BigInteger big(long value) {
        return BigInteger.valueOf(value);
    }

    /** The parts that a frame is from zero. */
    long partsOf(long frame) {
        return frame * perFrame;
    }

    /** The number of the last instant that is not behind; below 0 before the first. */
    long numberAt(long part) {
        int from = interval(part);
        return from + Math.floorDiv(part - parts[from], parts[from + 1] - parts[from]);
    }

    /** How far it is from that instant to the next, in [0, 1). */
    double shareAt(long part) {
        int from = interval(part);
        long length = parts[from + 1] - parts[from];
        return (double) Math.floorMod(part - parts[from], length) / length;
    }

    /** Seconds since the instant of a number. */
    double secondsSince(long number, long part) {
        int from = (int) Math.max(0, Math.min(parts.length - 2, number));
        long instant = parts[from] + (number - from) * (parts[from + 1] - parts[from]);
        return (part - instant) / partsPerSecond;
    }

    /** Seconds from zero to the instant of a number and a share of the way to the next. */
    double seconds(double place) {
        double whole = Math.floor(place);
        int from = (int) Math.max(0, Math.min(parts.length - 2, whole));
        return (parts[from] + (place - from) * (parts[from + 1] - parts[from])) / partsPerSecond;
    }

    /** The interval that counts for an instant: the one that it lies in, else the first or the last. */
    private int interval(long part) {
        int low = 0;
        int high = parts.length - 2;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (parts[middle] <= part) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    /** How many instants are known. */
    int count() {
        return parts.length;
    }

    /** A time in parts, the nearest. */
    long partsOf(double seconds) {
        return Math.round(seconds * partsPerSecond);
    }
}

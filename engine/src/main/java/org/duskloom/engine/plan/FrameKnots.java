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
    /** Parts of a second so small that twenty days of them can be counted in a long. */
    private static final int MOST_BITS = 41;

    /** They are hardly longer. */
    private static final BigInteger FINE = BigInteger.valueOf(1_000_000_000L);

    private final long[] parts;
    private final long perFrame;
    private final double partsPerSecond;

    /** @param instants two at least, rising */
    FrameKnots(List<ExactTime> instants, FrameRate rate) {
        BigInteger common = big(rate.numerator());
        for (ExactTime instant : instants) {
            common = common.divide(common.gcd(big(instant.denominator()))).multiply(big(instant.denominator()));
        }
        BigInteger scale = scale(common, big(rate.numerator()));
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

    /** Where the common parts are too small, instants are rounded to others, in which frames are whole still. */
    private static BigInteger scale(BigInteger common, BigInteger frames) {
        BigInteger fine = common.multiply(FINE.divide(common).max(BigInteger.ONE));
        if (fine.bitLength() <= MOST_BITS) {
            return fine;
        }
        return common.bitLength() <= MOST_BITS
                ? common
                : frames.multiply(BigInteger.ONE.shiftLeft(MOST_BITS - frames.bitLength()));
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

    /** A time in parts, the nearest. */
    long partsOf(double seconds) {
        return Math.round(seconds * partsPerSecond);
    }
}

package org.duskloom.engine.time;

import java.util.Optional;

/**
 * Instants that are all as far apart, by number, in whole parts of a second. All numbers are so small that products of
 * two of them, and of one with a part of a frame rate, are exact.
 *
 * @param first the first instant in parts, not below 0
 * @param step from one to the next in parts, above 0
 * @param parts of a second
 * @param count how many there are, at least 1
 */
public record EvenInstants(long first, long step, long parts, int count) {
    /** With the parts of a frame rate, which are below 2^31, products stay below 2^61, and sums of two fit. */
    private static final long LIMIT = 1L << 30;

    public EvenInstants {
        if (first < 0 || step <= 0 || parts <= 0 || count < 1) {
            throw new IllegalArgumentException(count + " instants from " + first + " every " + step + " of " + parts);
        }
        if (parts >= LIMIT || step >= LIMIT || first >= LIMIT || first + (count - 1) * step >= LIMIT) {
            throw new ArithmeticException("instants of " + parts + " parts up to " + (first + (count - 1) * step));
        }
    }

    /** So many instants; nothing where their parts are too many, or some are before 0. */
    public static Optional<EvenInstants> of(ExactTime first, ExactTime every, int count) {
        boolean backwards = first.isNegative() || every.isNegative() || every.isZero();
        if (backwards || first.denominator() >= LIMIT || every.denominator() >= LIMIT) {
            return Optional.empty();
        }
        long rest = every.denominator() / new ExactTime(first.denominator(), every.denominator()).denominator();
        long parts = first.denominator() / rest * every.denominator();
        double end = first.seconds() + every.seconds() * count;
        if (parts >= LIMIT || (end + 1) * parts >= LIMIT) {
            return Optional.empty();
        }
        return Optional.of(new EvenInstants(
                first.numerator() * (parts / first.denominator()),
                every.numerator() * (parts / every.denominator()),
                parts,
                count));
    }

    /** One of them, counted from 0. */
    public ExactTime at(int number) {
        return new ExactTime(first + number * step, parts);
    }

    /** From one to the next. */
    public ExactTime every() {
        return new ExactTime(step, parts);
    }

    /** As many instants, each so much later; nothing where their parts are too many. */
    public Optional<EvenInstants> later(ExactTime lag) {
        return of(at(0).plus(lag), every(), count);
    }

    /** The first frame that is not before one of them, as {@link FrameRate#firstFrameAtOrAfter} has it. */
    public long firstFrame(FrameRate rate, int number) {
        return -Math.floorDiv(-(first + number * step) * rate.numerator(), parts * rate.denominator());
    }

    /** How many of them have a {@linkplain #firstFrame first frame} that is not after this one. */
    public int begunBy(FrameRate rate, long frame) {
        if (frame < firstFrame(rate, 0)) {
            return 0;
        }
        if (frame >= firstFrame(rate, count - 1)) {
            return count;
        }
        long wholeParts = Math.floorDiv(frame * parts * rate.denominator(), (long) rate.numerator());
        return (int) Math.floorDiv(wholeParts - first, step) + 1;
    }
}

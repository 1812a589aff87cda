package org.duskloom.engine.time;

/**
 * A half-open run of frames.
 *
 * @param firstFrame the first frame in it
 * @param endFrameExclusive the first frame no longer in it; not before {@code firstFrame}
 */
public record FrameSpan(long firstFrame, long endFrameExclusive) {
    /**
     * @throws IllegalArgumentException if the end is before the start
     */
    public FrameSpan {
        if (endFrameExclusive < firstFrame) {
            throw new IllegalArgumentException("frames " + firstFrame + ".." + endFrameExclusive + " run backwards");
        }
    }

    /**
     * The frames whose instants lie in the half-open span of time [from, until).
     *
     * @throws IllegalArgumentException if {@code until} is before {@code from}
     * @throws ArithmeticException if a frame number does not fit
     */
    public static FrameSpan of(FrameRate rate, ExactTime from, ExactTime until) {
        if (until.compareTo(from) < 0) {
            throw new IllegalArgumentException("the span ends at " + until + ", before its start at " + from);
        }
        return new FrameSpan(rate.firstFrameAtOrAfter(from), rate.firstFrameAtOrAfter(until));
    }

    /** How many frames are in it. */
    public long count() {
        return endFrameExclusive - firstFrame;
    }

    /** Whether no frame is in it. */
    public boolean isEmpty() {
        return endFrameExclusive == firstFrame;
    }

    /** Whether the frame is in it. */
    public boolean contains(long frame) {
        return frame >= firstFrame && frame < endFrameExclusive;
    }

    /** The frames that are in both; empty, at this span's start or the other's, where they do not meet. */
    public FrameSpan overlap(FrameSpan other) {
        long first = Math.max(firstFrame, other.firstFrame);
        return new FrameSpan(first, Math.max(first, Math.min(endFrameExclusive, other.endFrameExclusive)));
    }

    /** {@code A..B}, B not included. */
    @Override
    public String toString() {
        return firstFrame + ".." + endFrameExclusive;
    }
}

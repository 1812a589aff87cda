package org.duskloom.engine.frame;

import org.duskloom.engine.time.FrameSpan;

/** Frame numbers in rising order: a span, or single frames. Immutable. */
public final class FrameList {
    private final long first;
    private final long count;
    private final long[] singles;

    private FrameList(long first, long count, long[] singles) {
        this.first = first;
        this.count = count;
        this.singles = singles;
    }

    /** Every frame of a span. */
    public static FrameList of(FrameSpan span) {
        return new FrameList(span.firstFrame(), span.count(), null);
    }

    /**
     * Single frames.
     *
     * @throws IllegalArgumentException if they do not rise
     */
    public static FrameList of(long... frames) {
        for (int i = 1; i < frames.length; i++) {
            if (frames[i] <= frames[i - 1]) {
                throw new IllegalArgumentException("frame " + frames[i] + " stands after " + frames[i - 1]);
            }
        }
        return new FrameList(0, frames.length, frames.clone());
    }

    /** How many frames there are. */
    public long count() {
        return count;
    }

    /** The number of the frame at a place in the list, from 0. */
    public long frame(long place) {
        return singles == null ? first + place : singles[(int) place];
    }

    /** How far frames are from each other that are all as far as the first two; 1 for a single frame. */
    public long step() {
        return count() > 1 ? frame(1) - frame(0) : 1;
    }

    /** Whether it is a span: no frame between its first and its last is left out. */
    public boolean isSpan() {
        return singles == null || count == 0 || singles[(int) count - 1] - singles[0] == count - 1;
    }

    /** The first frame; of a span that holds none, where it would be. */
    public long first() {
        return singles == null ? first : singles[0];
    }

    /** The last frame. There must be one. */
    public long last() {
        return frame(count - 1);
    }

    /** {@code frames A..B}, B not included, with a number where some are left out. */
    @Override
    public String toString() {
        if (count == 0) {
            return "no frames";
        }
        String span = "frames " + first() + ".." + (last() + 1);
        return isSpan() ? span : count + " of the " + span;
    }
}

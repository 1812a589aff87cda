package org.duskloom.engine.live;

/**
 * How well deadlines were kept: how long after its deadline the first packet of each frame left. Takes the same memory
 * however long it goes on. For one thread.
 */
public final class Pacing {
    private static final int BIN_NANOS = 10_000;
    private static final int BINS = 10_000;

    private final long[] counts = new long[BINS + 1];
    private long frames;
    private long worstNanos;
    private long lateFrames;
    private long skippedFrames;

    Pacing() {}

    void add(long delayNanos, boolean late) {
        counts[(int) Math.min(BINS, delayNanos / BIN_NANOS)]++;
        worstNanos = Math.max(worstNanos, delayNanos);
        frames++;
        lateFrames += late ? 1 : 0;
    }

    void skip() {
        skippedFrames++;
    }

    /** How many frames were sent. */
    public long frames() {
        return frames;
    }

    /** How many of them left later than a quarter of a frame's time after their deadline. */
    public long lateFrames() {
        return lateFrames;
    }

    /** How many frames were not sent, because the next one was due already. */
    public long skippedFrames() {
        return skippedFrames;
    }

    /** The delay that half of the frames did not exceed, to 10 us, at most 100 ms; 0 where there was no frame. */
    public long medianNanos() {
        long half = (frames + 1) / 2;
        long seen = 0;
        for (int bin = 0; bin <= BINS && frames > 0; bin++) {
            seen += counts[bin];
            if (seen >= half) {
                return Math.min(worstNanos, (long) bin * BIN_NANOS + BIN_NANOS / 2);
            }
        }
        return 0;
    }

    /** The longest delay. */
    public long worstNanos() {
        return worstNanos;
    }
}

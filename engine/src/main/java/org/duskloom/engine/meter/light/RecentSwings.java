package org.duskloom.engine.meter.light;

/**
 * How many changes each of many signals had within the second that ends with a frame. That second is half open: of a
 * regular flash three times a second it holds six changes, never seven. A bit for each frame of the second; it moves
 * when the next change comes, so frames without one cost nothing.
 */
final class RecentSwings {
    private final int frames;
    private final int words;
    private final long lastMask;
    private final long[] bits;
    private final int[] lastPlace;

    /** @param framesOfSecond how many frames begin within a second, at least 1 */
    RecentSwings(int signals, int framesOfSecond) {
        frames = framesOfSecond;
        words = (framesOfSecond + Long.SIZE - 1) / Long.SIZE;
        lastMask = -1L >>> (words * Long.SIZE - framesOfSecond);
        bits = new long[Math.multiplyExact(signals, words)];
        lastPlace = new int[signals];
    }

    /**
     * Counts a change.
     *
     * @param place the number of the frame in the run; not before that of the change before
     * @return how many changes there were in the second that ends with this frame
     */
    int add(int signal, int place) {
        int by = place - lastPlace[signal];
        lastPlace[signal] = place;
        if (words == 1) {
            bits[signal] = (by < frames ? bits[signal] << by & lastMask : 0) | 1;
            return Long.bitCount(bits[signal]);
        }
        int first = signal * words;
        shift(first, by);
        bits[first] |= 1;
        int count = 0;
        for (int i = first; i < first + words; i++) {
            count += Long.bitCount(bits[i]);
        }
        return count;
    }

    private void shift(int first, int by) {
        int whole = Math.min(by, frames) / Long.SIZE;
        int rest = Math.min(by, frames) % Long.SIZE;
        for (int word = words - 1; word >= 0; word--) {
            long high = word >= whole ? bits[first + word - whole] << rest : 0;
            long low = rest > 0 && word > whole ? bits[first + word - whole - 1] >>> (Long.SIZE - rest) : 0;
            bits[first + word] = high | low;
        }
        bits[first + words - 1] &= lastMask;
    }
}

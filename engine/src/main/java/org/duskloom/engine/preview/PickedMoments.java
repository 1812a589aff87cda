package org.duskloom.engine.preview;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Picks a moment for each panel of a strip out of its candidates, as their frames come: the one that differs most from
 * the moment that it is most like among those that were picked before it, so that a light that runs round does not seem
 * to stand still. Of candidates that differ as much it is the earliest. Holds one frame, and samples of those picked.
 */
final class PickedMoments {
    /** So many pixels, evenly over the wire, tell whether two frames look alike. */
    private static final int MOST_SAMPLED = 4096;

    /** With so many moments before it one is compared: more of them are not seen at a glance. */
    private static final int MOST_COMPARED = ShownFrames.USUAL_PANELS;

    private final long[][] candidates;
    private final Taker taker;
    private final Deque<byte[]> picked = new ArrayDeque<>();
    private int panel;
    private int next;

    private byte[] best = new byte[0];
    private byte[] bestSample;
    private long bestFrame;
    private long bestDifference = -1;

    /** Takes a frame that was picked. */
    @FunctionalInterface
    interface Taker {
        void take(long frame, byte[] rgb, int offset);
    }

    /**
     * Picks from now on.
     *
     * @param candidates for each panel, in the order of the panels, the numbers of frames that it may show, at least
     *     one; they rise, and from panel to panel
     * @throws IllegalArgumentException if there are none, or a panel has none, or they do not rise
     */
    PickedMoments(long[][] candidates, Taker taker) {
        requireRising(candidates);
        this.candidates = candidates;
        this.taker = taker;
    }

    /** Looks at a frame if it is the next candidate; the others are passed over. */
    void frame(long number, byte[] rgb, int offset, int bytes) {
        if (panel == candidates.length || number < candidates[panel][next]) {
            return;
        }
        if (number > candidates[panel][next]) {
            throw missing();
        }
        byte[] sample = sample(rgb, offset, bytes);
        boolean isLast = next == candidates[panel].length - 1;
        long difference = candidates[panel].length == 1 ? 0 : leastDifference(sample);
        if (difference > bestDifference) {
            bestDifference = difference;
            bestSample = sample;
            bestFrame = number;
            if (!isLast) {
                best = best.length == bytes ? best : new byte[bytes];
                System.arraycopy(rgb, offset, best, 0, bytes);
            }
        }
        if (isLast) {
            boolean isThis = bestFrame == number;
            taker.take(bestFrame, isThis ? rgb : best, isThis ? offset : 0);
            turnToNextPanel();
        } else {
            next++;
        }
    }

    private void turnToNextPanel() {
        picked.addLast(bestSample);
        if (picked.size() > MOST_COMPARED) {
            picked.removeFirst();
        }
        bestDifference = -1;
        panel++;
        next = 0;
    }

    /**
     * Requires that all candidates have come.
     *
     * @throws IllegalStateException if they have not
     */
    void requireComplete() {
        if (panel < candidates.length) {
            throw missing();
        }
    }

    private IllegalStateException missing() {
        return new IllegalStateException("frame " + candidates[panel][next] + " of the strip was not rendered");
    }

    private static byte[] sample(byte[] rgb, int offset, int bytes) {
        int pixels = bytes / 3;
        int step = (pixels - 1) / MOST_SAMPLED + 1;
        byte[] sample = new byte[3 * ((pixels - 1) / step + 1)];
        for (int to = 0, from = offset; to < sample.length; to += 3, from += 3 * step) {
            System.arraycopy(rgb, from, sample, to, 3);
        }
        return sample;
    }

    /** To what is most like it among the picked ones, in codes. */
    private long leastDifference(byte[] sample) {
        return picked.stream()
                .mapToLong(other -> difference(sample, other))
                .min()
                .orElse(0);
    }

    private static long difference(byte[] one, byte[] other) {
        long sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += Math.abs((one[i] & 255) - (other[i] & 255));
        }
        return sum;
    }

    private static void requireRising(long[][] candidates) {
        long before = Long.MIN_VALUE;
        for (long[] panel : candidates) {
            if (panel.length == 0) {
                throw new IllegalArgumentException("a panel without a frame");
            }
            for (long frame : panel) {
                if (frame <= before) {
                    throw new IllegalArgumentException("frame " + frame + " after " + before);
                }
                before = frame;
            }
        }
        if (candidates.length == 0) {
            throw new IllegalArgumentException("no frames");
        }
    }
}

package org.duskloom.engine.meter;

import java.util.Arrays;

/**
 * The most that the voltage has ever dropped at each pixel of a line, and when: exactly, and yet most frames cost a
 * comparison for each block of it.
 *
 * <p>Within a block the drop is a concave function of the resistance from its first pixel, as pixels only take current
 * away, and from one end of the block to the other its slope falls by the current I of the block. So at x of X ohms it
 * is at most x (X - x) / X times I above the straight line between the drops at both ends. Where both of these are
 * below the most there so far by as much as that line might need, no pixel of the block is raised. What the line might
 * need is the worst over its pixels of x (X - x) / X times I, less what the most there lies above its own straight
 * line: a convex function of I, so it is at most the straight line between its values at 0 and at some current above I.
 */
final class MostDrops {
    /** What rounding might be wrong by: in volts, and as a share. */
    private static final double MARGIN = 1e-9;

    /** By how much the current that is reckoned with is above the most so far, so that it seldom has to be raised. */
    private static final double HEADROOM = 1.125;

    private final LineNetwork network;
    private final LineBlocks blocks;
    private final double[] most;
    private final long[] frames;

    /** The most at the first pixel of each block, and at the last of all. */
    private final double[] mostAtFirst;

    /** Of each block: for which current what it might need is known, what that is at 0, and how much more by ampere. */
    private final double[] upToAmps;

    private final double[] needed;
    private final double[] neededByAmpere;

    /** Whether that has to be worked out again. */
    private final boolean[] isStale;

    MostDrops(LineNetwork network) {
        this.network = network;
        blocks = network.blocks();
        most = new double[network.pixelCount()];
        frames = new long[most.length];
        Arrays.fill(most, Double.NEGATIVE_INFINITY);
        int count = blocks.count();
        mostAtFirst = new double[count + 1];
        Arrays.fill(mostAtFirst, Double.NEGATIVE_INFINITY);
        upToAmps = new double[count];
        needed = new double[count];
        neededByAmpere = new double[count];
        isStale = new boolean[count];
    }

    /** Of each pixel, in volts below the highest source. */
    double[] most() {
        return most;
    }

    /** Of each pixel the first frame with that. */
    long[] frames() {
        return frames;
    }

    /** Takes the drops that the network has now. */
    void raise(long frame) {
        boolean raised = false;
        for (int block = 0; block < needed.length; block++) {
            if (mayRaise(block)) {
                raised |= look(block, frame);
            }
        }
        if (raised) {
            renew();
        }
    }

    private boolean mayRaise(int block) {
        double amps = blocks.amps(block);
        double need = needed[block] + amps * neededByAmpere[block];
        return amps > upToAmps[block]
                || isAbove(network.blockDrop(block) + need, mostAtFirst[block])
                || isAbove(network.blockDrop(block + 1) + need, mostAtFirst[block + 1]);
    }

    private static boolean isAbove(double drop, double most) {
        return drop * (1 + MARGIN) + MARGIN > most;
    }

    private boolean look(int block, long frame) {
        boolean raised = false;
        double drop = network.blockDrop(block);
        double flow = network.flow(block);
        for (int pixel = blocks.first(block), end = blocks.end(block); pixel < end; pixel++) {
            if (drop > most[pixel]) {
                most[pixel] = drop;
                frames[pixel] = frame;
                raised = true;
            }
            flow -= blocks.drawn(pixel);
            drop += blocks.segmentOhms(pixel) * flow;
        }
        if (blocks.amps(block) > upToAmps[block]) {
            upToAmps[block] = HEADROOM * blocks.amps(block);
            raised = true;
        }
        isStale[block] |= raised;
        return raised;
    }

    private void renew() {
        for (int block = needed.length - 1; block >= 0; block--) {
            boolean endRaised = mostAtFirst[block + 1] != most[blocks.first(block + 1)];
            mostAtFirst[block + 1] = most[blocks.first(block + 1)];
            mostAtFirst[block] = block == 0 ? most[0] : mostAtFirst[block];
            isStale[block] |= endRaised;
        }
        for (int block = 0; block < needed.length; block++) {
            if (isStale[block]) {
                isStale[block] = false;
                learn(block);
            }
        }
    }

    private void learn(int block) {
        double all = blocks.ohms(block);
        double atFirst = mostAtFirst[block];
        double rise = mostAtFirst[block + 1] - atFirst;
        double without = 0;
        double with = 0;
        for (int pixel = blocks.first(block), end = blocks.end(block); pixel < end && all > 0; pixel++) {
            double ohms = blocks.ohmsWithin(pixel);
            double missing = atFirst + rise * ohms / all - most[pixel];
            without = Math.max(without, missing);
            with = Math.max(with, missing + upToAmps[block] * ohms * (all - ohms) / all);
        }
        needed[block] = without;
        neededByAmpere[block] = upToAmps[block] > 0 ? (with - without) / upToAmps[block] : 0;
    }
}

package org.duskloom.engine.meter.light;

import java.util.Arrays;

/**
 * Finds the opposing changes of red of many signals by the older rule (WCAG 2.0 and 2.1, after G. Harding and C.
 * Binnie, 2002): max(0, (R - G - B) * 320) changes by more than 20 from one peak or valley to the next, and one of the
 * two is a saturated red.
 */
final class OlderRedSwings {
    /** 20 of 320, in the units of {@link CodeLight}. */
    static final int CHANGE = CodeLight.ONE / 16;

    private static final int NEVER = -(1 << 30);
    private static final int ALWAYS = 1 << 30;
    private static final byte UP = 1;
    private static final byte DOWN = -1;

    /** Since the last change: extremes of max(0, R - G - B), and whether they were saturated reds. */
    private final int[] least;

    private final int[] most;
    private final boolean[] leastIsRed;
    private final boolean[] mostIsRed;
    private final byte[] direction;

    /** Behind which place a signal is as if it had been anything before the first frame. */
    private final int[] settledAt;

    /** The way of the first change of each. */
    private final byte[] firstDirection;

    /** What has been kept of each: its direction, and what it is followed from. */
    private byte[] keptDirection;

    private int[] keptLeast;
    private int[] keptMost;
    private boolean[] keptLeastIsRed;
    private boolean[] keptMostIsRed;

    /** @param signals how many there are */
    OlderRedSwings(int signals) {
        least = new int[signals];
        most = new int[signals];
        leastIsRed = new boolean[signals];
        mostIsRed = new boolean[signals];
        direction = new byte[signals];
        settledAt = new int[signals];
        firstDirection = new byte[signals];
        Arrays.fill(least, ALWAYS);
        Arrays.fill(most, NEVER);
        Arrays.fill(settledAt, Integer.MAX_VALUE);
    }

    /**
     * Looks at the next colour of a signal.
     *
     * @param place the number of the frame in the run
     * @param redExcess R - G - B
     * @param red whether it is a saturated red
     * @return whether a change has come about
     */
    boolean step(int signal, int place, int redExcess, boolean red) {
        int value = Math.max(0, redExcess);
        if (value <= least[signal]) {
            leastIsRed[signal] = red || value == least[signal] && leastIsRed[signal];
            least[signal] = value;
        }
        if (value >= most[signal]) {
            mostIsRed[signal] = red || value == most[signal] && mostIsRed[signal];
            most[signal] = value;
        }
        if (direction[signal] != UP && value - least[signal] > CHANGE && (red || leastIsRed[signal])) {
            settle(signal, place, red && leastIsRed[signal]);
            return turn(signal, value, red, UP);
        }
        if (direction[signal] != DOWN && most[signal] - value > CHANGE && (red || mostIsRed[signal])) {
            settle(signal, place, red && mostIsRed[signal]);
            return turn(signal, value, red, DOWN);
        }
        return false;
    }

    /**
     * A change between two saturated reds leaves the same behind whatever was kept before: from a low red on nothing is
     * kept above it by more than a change, so whoever has not risen on the way rises at the high one, which is the
     * highest of all since; and likewise where it falls.
     */
    private void settle(int signal, int place, boolean bothRed) {
        if (bothRed) {
            settledAt[signal] = Math.min(settledAt[signal], place);
        }
    }

    /** Behind which place it makes no difference what a signal was before the first frame; late where none is known. */
    int settledAt(int signal) {
        return settledAt[signal];
    }

    /** Keeps what all signals are. */
    void keepState() {
        keptDirection = direction.clone();
        keptLeast = least.clone();
        keptMost = most.clone();
        keptLeastIsRed = leastIsRed.clone();
        keptMostIsRed = mostIsRed.clone();
    }

    /**
     * Whether the same changes follow for a signal as when that was kept: after a rise no lowest value counts. What had
     * not changed yet then, and rose at first, goes the same way as what has fallen and has the same lowest value.
     */
    boolean isAsKept(int signal) {
        boolean sameLeast = least[signal] == keptLeast[signal] && leastIsRed[signal] == keptLeastIsRed[signal];
        boolean sameMost = most[signal] == keptMost[signal] && mostIsRed[signal] == keptMostIsRed[signal];
        byte to = direction[signal];
        byte then = keptDirection[signal];
        byte other = then == 0 ? (byte) -firstDirection[signal] : then;
        boolean alike = to == then || to == other;
        return alike && (to == UP || sameLeast) && (to == DOWN || sameMost);
    }

    private boolean turn(int signal, int value, boolean red, byte to) {
        direction[signal] = to;
        firstDirection[signal] = firstDirection[signal] == 0 ? to : firstDirection[signal];
        least[signal] = value;
        most[signal] = value;
        leastIsRed[signal] = red;
        mostIsRed[signal] = red;
        return true;
    }

    /** From which R - G - B on a colour that is no saturated red changes nothing of what is kept. */
    int calmFrom(int signal) {
        return least[signal] == 0 ? NEVER : least[signal];
    }

    /** Up to which R - G - B such a colour does not: from a low red a rise counts, whatever colour it ends at. */
    int calmUpTo(int signal) {
        if (direction[signal] == DOWN) {
            return leastIsRed[signal] ? least[signal] + CHANGE : ALWAYS;
        }
        return direction[signal] == UP ? NEVER : most[signal];
    }
}

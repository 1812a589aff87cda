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

    private final Swing[] swings;

    /** What is followed of a signal, in one place in memory, as all of it is asked for together. */
    private static final class Swing {
        /** Since the last change: extremes of max(0, R - G - B), and whether they were saturated reds. */
        private int least = ALWAYS;

        private int most = NEVER;
        private boolean leastIsRed;
        private boolean mostIsRed;
        private byte direction;

        /** The way of the first change. */
        private byte firstDirection;

        /** Behind which place the signal is as if it had been anything before the first frame. */
        private int settledAt = Integer.MAX_VALUE;
    }

    /** What has been kept of each: its direction, and what it is followed from. */
    private byte[] keptDirection;

    private int[] keptLeast;
    private int[] keptMost;
    private boolean[] keptLeastIsRed;
    private boolean[] keptMostIsRed;

    /** @param signals how many there are */
    OlderRedSwings(int signals) {
        swings = new Swing[signals];
        Arrays.setAll(swings, signal -> new Swing());
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
        Swing of = swings[signal];
        int value = Math.max(0, redExcess);
        if (value <= of.least) {
            of.leastIsRed = red || value == of.least && of.leastIsRed;
            of.least = value;
        }
        if (value >= of.most) {
            of.mostIsRed = red || value == of.most && of.mostIsRed;
            of.most = value;
        }
        if (of.direction != UP && value - of.least > CHANGE && (red || of.leastIsRed)) {
            settle(of, place, red && of.leastIsRed);
            return turn(of, value, red, UP);
        }
        if (of.direction != DOWN && of.most - value > CHANGE && (red || of.mostIsRed)) {
            settle(of, place, red && of.mostIsRed);
            return turn(of, value, red, DOWN);
        }
        return false;
    }

    /**
     * A change between two saturated reds leaves the same behind whatever was kept before: from a low red on nothing is
     * kept above it by more than a change, so whoever has not risen on the way rises at the high one, which is the
     * highest of all since; and likewise where it falls.
     */
    private static void settle(Swing of, int place, boolean bothRed) {
        if (bothRed) {
            of.settledAt = Math.min(of.settledAt, place);
        }
    }

    /** Behind which place it makes no difference what a signal was before the first frame; late where none is known. */
    int settledAt(int signal) {
        return swings[signal].settledAt;
    }

    /** Keeps what all signals are. */
    void keepState() {
        keptDirection = new byte[swings.length];
        keptLeast = new int[swings.length];
        keptMost = new int[swings.length];
        keptLeastIsRed = new boolean[swings.length];
        keptMostIsRed = new boolean[swings.length];
        for (int signal = 0; signal < swings.length; signal++) {
            Swing of = swings[signal];
            keptDirection[signal] = of.direction;
            keptLeast[signal] = of.least;
            keptMost[signal] = of.most;
            keptLeastIsRed[signal] = of.leastIsRed;
            keptMostIsRed[signal] = of.mostIsRed;
        }
    }

    /**
     * Whether the same changes follow for a signal as when that was kept: after a rise no lowest value counts. What had
     * not changed yet then, and rose at first, goes the same way as what has fallen and has the same lowest value.
     */
    boolean isAsKept(int signal) {
        Swing of = swings[signal];
        boolean sameLeast = of.least == keptLeast[signal] && of.leastIsRed == keptLeastIsRed[signal];
        boolean sameMost = of.most == keptMost[signal] && of.mostIsRed == keptMostIsRed[signal];
        byte to = of.direction;
        byte then = keptDirection[signal];
        byte other = then == 0 ? (byte) -of.firstDirection : then;
        boolean alike = to == then || to == other;
        return alike && (to == UP || sameLeast) && (to == DOWN || sameMost);
    }

    private static boolean turn(Swing of, int value, boolean red, byte to) {
        of.direction = to;
        of.firstDirection = of.firstDirection == 0 ? to : of.firstDirection;
        of.least = value;
        of.most = value;
        of.leastIsRed = red;
        of.mostIsRed = red;
        return true;
    }

    /** From which R - G - B on a colour that is no saturated red changes nothing of what is kept. */
    int calmFrom(int signal) {
        Swing of = swings[signal];
        return of.least == 0 ? NEVER : of.least;
    }

    /** Up to which R - G - B such a colour does not: from a low red a rise counts, whatever colour it ends at. */
    int calmUpTo(int signal) {
        Swing of = swings[signal];
        if (of.direction == DOWN) {
            return of.leastIsRed ? of.least + CHANGE : ALWAYS;
        }
        return of.direction == UP ? NEVER : of.most;
    }
}

package org.duskloom.engine.meter.light;

import java.util.Arrays;

/**
 * Bounds how many changes of red many signals have by the older rule, whatever they were before the first frame. From
 * one change to the next a signal has had a saturated red and another colour that is more than a change apart. So there
 * are as many spans of that kind, one after the other, as there are changes behind a first one, or more.
 */
final class PossibleReds {
    private static final int NEVER = -(1 << 30);
    private static final int ALWAYS = 1 << 30;

    private static final byte UP = 1;
    private static final byte DOWN = -1;

    private final boolean inTurn;

    /** Of spans in turn: the way of the last one. */
    private final byte[] way;

    /** Since the last span: extremes of R - G - B of saturated reds, and of what was or may have been none. */
    private final int[] leastRed;

    private final int[] mostRed;
    private final int[] leastPale;
    private final int[] mostPale;

    /**
     * @param signals how many there are
     * @param inTurn whether a span counts only if it goes the other way than the one before, as changes do; then there
     *     may be one less, where the first goes the same way as what came before
     */
    PossibleReds(int signals, boolean inTurn) {
        this.inTurn = inTurn;
        way = new byte[signals];
        leastRed = new int[signals];
        mostRed = new int[signals];
        leastPale = new int[signals];
        mostPale = new int[signals];
        Arrays.fill(leastRed, ALWAYS);
        Arrays.fill(mostRed, NEVER);
        Arrays.fill(leastPale, ALWAYS);
        Arrays.fill(mostPale, NEVER);
    }

    /** Says that what is no saturated red may have come unseen with R - G - B in a range, if that holds any. */
    void mayHaveBeen(int signal, int from, int upTo) {
        if (holdsAny(from, upTo)) {
            leastPale[signal] = Math.min(leastPale[signal], Math.max(0, from));
            mostPale[signal] = Math.max(mostPale[signal], upTo);
        }
    }

    private static boolean holdsAny(int from, int upTo) {
        return Math.max(0, from) <= upTo;
    }

    /**
     * Looks at the next colour of a signal.
     *
     * @param value R - G - B, 0 at least
     * @return whether a span ends
     */
    boolean step(int signal, int value, boolean red) {
        boolean ends = ends(signal, value, value, leastRed[signal], mostRed[signal])
                || red && ends(signal, value, value, leastPale[signal], mostPale[signal]);
        if (ends) {
            clearReds(signal);
            leastPale[signal] = ALWAYS;
            mostPale[signal] = NEVER;
        }
        if (red) {
            leastRed[signal] = Math.min(leastRed[signal], value);
            mostRed[signal] = Math.max(mostRed[signal], value);
        } else {
            mayHaveBeen(signal, value, value);
        }
        return ends;
    }

    /** Whether a span may end with what comes unseen from now on in such a range. If so it counts as ended now. */
    boolean mayEnd(int signal, int from, int upTo) {
        boolean ends = holdsAny(from, upTo) && ends(signal, Math.max(0, from), upTo, leastRed[signal], mostRed[signal]);
        if (ends) {
            clearReds(signal);
        }
        return ends;
    }

    /** Whether a range reaches more than a change above or below some of another, and it is the turn of that. */
    private boolean ends(int signal, int from, int upTo, int least, int most) {
        if (least > most) {
            return false;
        }
        boolean up = upTo - least > OlderRedSwings.CHANGE && way[signal] != UP;
        boolean down = most - from > OlderRedSwings.CHANGE && way[signal] != DOWN;
        if (inTurn && (up || down)) {
            way[signal] = up ? UP : DOWN;
        }
        return up || down;
    }

    private void clearReds(int signal) {
        leastRed[signal] = ALWAYS;
        mostRed[signal] = NEVER;
    }
}

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

    private final Spans[] spans;

    /** What is kept of a signal, in one place in memory, as all of it is asked for together. */
    private static final class Spans {
        /** Of spans in turn: the way of the last one. */
        private byte way;

        /** Since the last span: extremes of R - G - B of saturated reds, and of what was or may have been none. */
        private int leastRed = ALWAYS;

        private int mostRed = NEVER;
        private int leastPale = ALWAYS;
        private int mostPale = NEVER;
    }

    /**
     * @param signals how many there are
     * @param inTurn whether a span counts only if it goes the other way than the one before, as changes do; then there
     *     may be one less, where the first goes the same way as what came before
     */
    PossibleReds(int signals, boolean inTurn) {
        this.inTurn = inTurn;
        spans = new Spans[signals];
        Arrays.setAll(spans, signal -> new Spans());
    }

    /** Says that what is no saturated red may have come unseen with R - G - B in a range, if that holds any. */
    void mayHaveBeen(int signal, int from, int upTo) {
        if (holdsAny(from, upTo)) {
            Spans of = spans[signal];
            of.leastPale = Math.min(of.leastPale, Math.max(0, from));
            of.mostPale = Math.max(of.mostPale, upTo);
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
        Spans of = spans[signal];
        boolean ends = ends(of, value, value, of.leastRed, of.mostRed)
                || red && ends(of, value, value, of.leastPale, of.mostPale);
        if (ends) {
            clearReds(of);
            of.leastPale = ALWAYS;
            of.mostPale = NEVER;
        }
        if (red) {
            of.leastRed = Math.min(of.leastRed, value);
            of.mostRed = Math.max(of.mostRed, value);
        } else {
            mayHaveBeen(signal, value, value);
        }
        return ends;
    }

    /** Whether a span may end with what comes unseen from now on in such a range. If so it counts as ended now. */
    boolean mayEnd(int signal, int from, int upTo) {
        Spans of = spans[signal];
        boolean ends = holdsAny(from, upTo) && ends(of, Math.max(0, from), upTo, of.leastRed, of.mostRed);
        if (ends) {
            clearReds(of);
        }
        return ends;
    }

    /** Whether a range reaches more than a change above or below some of another, and it is the turn of that. */
    private boolean ends(Spans of, int from, int upTo, int least, int most) {
        if (least > most) {
            return false;
        }
        boolean up = upTo - least > OlderRedSwings.CHANGE && of.way != UP;
        boolean down = most - from > OlderRedSwings.CHANGE && of.way != DOWN;
        if (inTurn && (up || down)) {
            of.way = up ? UP : DOWN;
        }
        return up || down;
    }

    private static void clearReds(Spans of) {
        of.leastRed = ALWAYS;
        of.mostRed = NEVER;
    }
}

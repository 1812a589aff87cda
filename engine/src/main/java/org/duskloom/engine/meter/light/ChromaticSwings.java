package org.duskloom.engine.meter.light;

import java.util.Arrays;

/**
 * Finds the changes to and from saturated red of many signals by the rule of WCAG 2.2: one of the two colours is a
 * saturated red, and their chromaticities differ by more than 0.2 in CIE 1976 u'v'. A colour is compared with every
 * colour since the last change, as far as they lie within one second: so colours that follow each other are compared,
 * and fades too.
 *
 * <p>That a change must take less than a second is a reading of our own. WCAG 2.2 limits flashes "in any one second
 * period" and names a flash a pair of opposing changes; a change of which one end lies outside of every second that
 * holds the other is no part of a pair within one. Read otherwise, a change that has gone on for longer would count in
 * the second in which it ends: one change at most, the first of that second, as all others lie between two of it. So
 * what has six here and has come slowly to or from red before may have seven.
 *
 * <p>Exact, and yet quick: no two saturated reds are as far from each other as that, so only a signal that is red, or
 * was within the second, is looked at. What it was before is read from {@link PastColors} when it becomes red. While it
 * stays red, or stays not red, what it is compared with does not grow: so the colours of the past are gone through
 * again only once it has moved as far as the farthest of them lacked.
 */
final class ChromaticSwings {
    private static final int NEVER = Integer.MIN_VALUE / 2;

    /** The farthest of what has not been gone through. */
    private static final float UNKNOWN = Float.POSITIVE_INFINITY;

    private final PastColors past;

    private final Swing[] swings;

    /** Of each signal: how many frames ago it had changed when that was kept. */
    private int[] keptSince;

    /** What is followed of a signal, in one place in memory, as all of it is asked for together. */
    private static final class Swing {
        /** The place of the last change. */
        private int changedAt;

        private boolean isRed;

        /** Behind which place it is as if it had been anything before the first frame. */
        private int settledAt = Integer.MAX_VALUE;

        /** The last place at which it was red before it is not, and was not before it is. */
        private int lastRed = NEVER;

        private int lastPale;

        /**
         * What was compared last with all that it has to be compared with, and how far the farthest of these was; as
         * floats, which are fine enough for {@link Chroma#SURELY_NEAR}.
         */
        private float comparedU;

        private float comparedV;
        private float farthest = UNKNOWN;

        /** Up to which place all colours that are no saturated reds are known to be near to every such red. */
        private int nearUpTo = NEVER;
    }

    private final double[] then = new double[3];
    private final Chroma chroma = new Chroma();
    private final Chroma thenChroma = new Chroma();

    ChromaticSwings(int signals, PastColors past) {
        this.past = past;
        swings = new Swing[signals];
        Arrays.setAll(swings, signal -> new Swing());
    }

    /**
     * Looks at the next colour of a signal. Need not be called while it is not watched and no saturated red.
     *
     * @param color red, green and blue in linear light
     * @param red whether that is a saturated red
     * @return whether a change has come about
     */
    boolean step(int signal, int place, double[] color, boolean red) {
        Swing of = swings[signal];
        int oldest = Math.max(of.changedAt, place - past.reach());
        boolean found = red ? isToRed(of, signal, place, color, oldest) : isFromRed(of, signal, place, color, oldest);
        of.isRed = red;
        if (found) {
            of.changedAt = place;
            of.farthest = UNKNOWN;
        }
        return found;
    }

    /** Whether none of the colours that it was compared with last can be far from what it is now. */
    private boolean isNearToAll(Swing of) {
        return of.farthest + chroma.distance(of.comparedU, of.comparedV) < Chroma.SURELY_NEAR;
    }

    /** Keeps that the colour was compared with all, and the square of how far the farthest was. */
    private void keepCompared(Swing of, double mostSquare) {
        of.comparedU = (float) chroma.u();
        of.comparedV = (float) chroma.v();
        of.farthest = (float) Math.sqrt(mostSquare);
    }

    /** A change from one frame to the next comes about whenever the last one was. */
    private static void settle(Swing of, int place, int comparedWith) {
        if (comparedWith == place - 1) {
            of.settledAt = Math.min(of.settledAt, place);
        }
    }

    /** Behind which place it makes no difference what a signal was before the first frame; late where none is known. */
    int settledAt(int signal) {
        return swings[signal].settledAt;
    }

    /** Keeps what all signals are at a place. */
    void keepState(int place) {
        keptSince = new int[swings.length];
        Arrays.setAll(keptSince, signal -> since(signal, place));
    }

    /** Whether the same changes follow for a signal as when that was kept, if the second before was the same. */
    boolean isAsKept(int signal, int place) {
        return keptSince[signal] == since(signal, place);
    }

    /** How many frames ago it has changed, as far as that counts. */
    private int since(int signal, int place) {
        return Math.min(place - swings[signal].changedAt, past.reach());
    }

    private boolean isToRed(Swing of, int signal, int place, double[] color, int oldest) {
        if (!of.isRed) {
            of.lastPale = place - 1;
            of.farthest = UNKNOWN;
        }
        int from = Math.max(oldest, of.nearUpTo + 1);
        if (of.lastPale < from) {
            return false;
        }
        chroma.set(color);
        if (isNearToAll(of)) {
            return false;
        }
        boolean allNear = true;
        double mostSquare = 0;
        for (int before = of.lastPale; before >= from; before--) {
            past.read(signal, before, then);
            if (!Chroma.isSaturatedRed(then)) {
                thenChroma.set(then);
                double square = chroma.square(thenChroma);
                if (Chroma.isFar(square)) {
                    settle(of, place, before);
                    return true;
                }
                mostSquare = Math.max(mostSquare, square);
                allNear &= !thenChroma.isFarFromSomeRed();
            }
        }
        keepCompared(of, mostSquare);
        if (allNear) {
            of.nearUpTo = of.lastPale;
        }
        return false;
    }

    private boolean isFromRed(Swing of, int signal, int place, double[] color, int oldest) {
        if (of.isRed) {
            of.lastRed = place - 1;
            of.farthest = UNKNOWN;
        }
        if (of.lastRed < oldest) {
            return false;
        }
        chroma.set(color);
        if (isNearToAll(of) || !chroma.isFarFromSomeRed()) {
            return false;
        }
        double mostSquare = 0;
        for (int before = of.lastRed; before >= oldest; before--) {
            past.read(signal, before, then);
            if (Chroma.isSaturatedRed(then)) {
                thenChroma.set(then);
                double square = chroma.square(thenChroma);
                if (Chroma.isFar(square)) {
                    settle(of, place, before);
                    return true;
                }
                mostSquare = Math.max(mostSquare, square);
            }
        }
        keepCompared(of, mostSquare);
        return false;
    }

    /** Whether the next colour of a signal has to be looked at even if it is no saturated red. */
    boolean isWatched(int signal, int place) {
        Swing of = swings[signal];
        return of.isRed || of.lastRed >= Math.max(of.changedAt, place + 1 - past.reach());
    }
}

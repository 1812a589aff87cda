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
    private static final double UNKNOWN = Double.POSITIVE_INFINITY;

    private final PastColors past;

    /** The place of the last change. */
    private final int[] changedAt;

    /** The same when it was kept, as how many frames ago it was then. */
    private int[] keptSince;

    private final boolean[] isRed;

    /** Behind which place a signal is as if it had been anything before the first frame. */
    private final int[] settledAt;

    /** The last place at which the signal was red before it is not, and was not before it is. */
    private final int[] lastRed;

    private final int[] lastPale;

    /** What was compared last with all that it has to be compared with, and how far the farthest of these was. */
    private final double[] comparedU;

    private final double[] comparedV;
    private final double[] farthest;

    /** Up to which place all colours that are no saturated reds are known to be near to every such red. */
    private final int[] nearUpTo;

    private final double[] then = new double[3];
    private final Chroma chroma = new Chroma();
    private final Chroma thenChroma = new Chroma();

    ChromaticSwings(int signals, PastColors past) {
        this.past = past;
        changedAt = new int[signals];
        isRed = new boolean[signals];
        settledAt = new int[signals];
        lastRed = new int[signals];
        lastPale = new int[signals];
        nearUpTo = new int[signals];
        comparedU = new double[signals];
        comparedV = new double[signals];
        farthest = new double[signals];
        Arrays.fill(farthest, UNKNOWN);
        Arrays.fill(settledAt, Integer.MAX_VALUE);
        Arrays.fill(lastRed, NEVER);
        Arrays.fill(nearUpTo, NEVER);
    }

    /**
     * Looks at the next colour of a signal. Need not be called while it is not watched and no saturated red.
     *
     * @param color red, green and blue in linear light
     * @param red whether that is a saturated red
     * @return whether a change has come about
     */
    boolean step(int signal, int place, double[] color, boolean red) {
        int oldest = Math.max(changedAt[signal], place - past.reach());
        boolean found = red ? isToRed(signal, place, color, oldest) : isFromRed(signal, place, color, oldest);
        isRed[signal] = red;
        if (found) {
            changedAt[signal] = place;
            farthest[signal] = UNKNOWN;
        }
        return found;
    }

    /** Whether none of the colours that it was compared with last can be far from what it is now. */
    private boolean isNearToAll(int signal) {
        return farthest[signal] + chroma.distance(comparedU[signal], comparedV[signal]) < Chroma.SURELY_NEAR;
    }

    /** Keeps that the colour was compared with all, and the square of how far the farthest was. */
    private void keepCompared(int signal, double mostSquare) {
        comparedU[signal] = chroma.u();
        comparedV[signal] = chroma.v();
        farthest[signal] = Math.sqrt(mostSquare);
    }

    /** A change from one frame to the next comes about whenever the last one was. */
    private void settle(int signal, int place, int comparedWith) {
        if (comparedWith == place - 1) {
            settledAt[signal] = Math.min(settledAt[signal], place);
        }
    }

    /** Behind which place it makes no difference what a signal was before the first frame; late where none is known. */
    int settledAt(int signal) {
        return settledAt[signal];
    }

    /** Keeps what all signals are at a place. */
    void keepState(int place) {
        keptSince = new int[changedAt.length];
        Arrays.setAll(keptSince, signal -> since(signal, place));
    }

    /** Whether the same changes follow for a signal as when that was kept, if the second before was the same. */
    boolean isAsKept(int signal, int place) {
        return keptSince[signal] == since(signal, place);
    }

    /** How many frames ago it has changed, as far as that counts. */
    private int since(int signal, int place) {
        return Math.min(place - changedAt[signal], past.reach());
    }

    private boolean isToRed(int signal, int place, double[] color, int oldest) {
        if (!isRed[signal]) {
            lastPale[signal] = place - 1;
            farthest[signal] = UNKNOWN;
        }
        int from = Math.max(oldest, nearUpTo[signal] + 1);
        if (lastPale[signal] < from) {
            return false;
        }
        chroma.set(color);
        if (isNearToAll(signal)) {
            return false;
        }
        boolean allNear = true;
        double mostSquare = 0;
        for (int before = lastPale[signal]; before >= from; before--) {
            past.read(signal, before, then);
            if (!Chroma.isSaturatedRed(then)) {
                thenChroma.set(then);
                double square = chroma.square(thenChroma);
                if (Chroma.isFar(square)) {
                    settle(signal, place, before);
                    return true;
                }
                mostSquare = Math.max(mostSquare, square);
                allNear &= !thenChroma.isFarFromSomeRed();
            }
        }
        keepCompared(signal, mostSquare);
        if (allNear) {
            nearUpTo[signal] = lastPale[signal];
        }
        return false;
    }

    private boolean isFromRed(int signal, int place, double[] color, int oldest) {
        if (isRed[signal]) {
            lastRed[signal] = place - 1;
            farthest[signal] = UNKNOWN;
        }
        if (lastRed[signal] < oldest) {
            return false;
        }
        chroma.set(color);
        if (isNearToAll(signal) || !chroma.isFarFromSomeRed()) {
            return false;
        }
        double mostSquare = 0;
        for (int before = lastRed[signal]; before >= oldest; before--) {
            past.read(signal, before, then);
            if (Chroma.isSaturatedRed(then)) {
                thenChroma.set(then);
                double square = chroma.square(thenChroma);
                if (Chroma.isFar(square)) {
                    settle(signal, place, before);
                    return true;
                }
                mostSquare = Math.max(mostSquare, square);
            }
        }
        keepCompared(signal, mostSquare);
        return false;
    }

    /** Whether the next colour of a signal has to be looked at even if it is no saturated red. */
    boolean isWatched(int signal, int place) {
        return isRed[signal] || lastRed[signal] >= Math.max(changedAt[signal], place + 1 - past.reach());
    }
}

package org.duskloom.engine.meter.light;

import java.util.Arrays;

/**
 * Where seconds of red end that have no more changes than are allowed and may have more in the second round of a loop.
 * That may be wherever a rule is not settled; but no more of a signal that has got, after a second of the second round,
 * to what it was there in the first.
 */
final class RedLimits {
    private static final int NOWHERE = -1;

    private final RedSwings reds;
    private final int framesOfSecond;

    /** Of each signal: the place of the last, by either rule. */
    private final int[] older;

    private final int[] chromatic;

    /** Where a second ended last that has as many spans as so many changes need. */
    private final int[] possibleAt;

    private final int[] inTurnAt;

    /** The last of all that reaches into the first second: there a second round may be another whatever follows. */
    private int early = NOWHERE;

    private boolean isJoint;
    private boolean hasKept;

    RedLimits(int signals, RedSwings reds, int framesOfSecond) {
        this.reds = reds;
        this.framesOfSecond = framesOfSecond;
        older = new int[signals];
        chromatic = new int[signals];
        possibleAt = new int[signals];
        inTurnAt = new int[signals];
        Arrays.fill(possibleAt, Integer.MIN_VALUE / 2);
        Arrays.fill(inTurnAt, Integer.MIN_VALUE / 2);
        Arrays.fill(older, NOWHERE);
        Arrays.fill(chromatic, NOWHERE);
    }

    /** Takes how many spans of {@link PossibleReds} there are in the second that ends there. */
    void addPossible(int signal, int place, int count) {
        if (count >= FlashCount.ALLOWED) {
            possibleAt[signal] = place;
            noteOlder(signal, place);
        }
    }

    /** The same of spans in turn, of which there may be one less. */
    void addInTurn(int signal, int place, int count) {
        if (count >= FlashCount.ALLOWED - 1) {
            inTurnAt[signal] = place;
            noteOlder(signal, place);
        }
    }

    /** Too many changes need enough spans of both kinds, and these within a second. */
    private void noteOlder(int signal, int place) {
        boolean both = place - Math.min(possibleAt[signal], inTurnAt[signal]) < framesOfSecond;
        if (both && mayDiffer(RedSwings.BY_OLDER_RULE, signal, place)) {
            note(older, signal, place);
        }
    }

    /**
     * Takes how many changes of chromaticity there were. In another round there may be one more and not two: whoever
     * changed earlier is compared with no less, so changes earlier next, and the changes of both take turns.
     */
    void addChromatic(int signal, int place, int count) {
        if (count == FlashCount.ALLOWED && mayDiffer(RedSwings.BY_CHROMATICITY, signal, place)) {
            note(chromatic, signal, place);
        }
    }

    private void note(int[] limits, int signal, int place) {
        limits[signal] = place;
        if (place < 2 * framesOfSecond) {
            early = Math.max(early, place);
        }
    }

    private boolean mayDiffer(int rule, int signal, int place) {
        return !isJoint && place - framesOfSecond < reds.settledAt(rule, signal);
    }

    /** Says that a frame has been looked at. */
    void endFrame(int place) {
        if (place == framesOfSecond - 1 && !isJoint) {
            reds.keepState(place);
            hasKept = true;
        }
    }

    void beginJoint() {
        isJoint = true;
    }

    /** The last of all, once a second of the second round has been looked at; below 0 for none. */
    int last(int place) {
        int last = early;
        for (int signal = 0; signal < older.length; signal++) {
            if (older[signal] > last && !(hasKept && reds.isAsKept(RedSwings.BY_OLDER_RULE, signal, place))) {
                last = older[signal];
            }
            if (chromatic[signal] > last && !(hasKept && reds.isAsKept(RedSwings.BY_CHROMATICITY, signal, place))) {
                last = chromatic[signal];
            }
        }
        return last;
    }
}

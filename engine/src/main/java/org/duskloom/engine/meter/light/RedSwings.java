package org.duskloom.engine.meter.light;

import java.util.Arrays;

/** Finds the opposing changes to and from a saturated red of many signals, by both rules that there are. */
final class RedSwings {
    /** What {@link #step} gives where a change has come about by the older rule. */
    static final int BY_OLDER_RULE = 1;

    /** What {@link #step} gives where a change has come about by the rule of WCAG 2.2. */
    static final int BY_CHROMATICITY = 2;

    /** What {@link #step} adds where a span of {@link PossibleReds} has ended. */
    static final int POSSIBLE = 4;

    /** The same of spans in turn. */
    static final int IN_TURN = 8;

    private static final int NEVER = -(1 << 30);

    /** A saturated red that is not black has more red than that, by three quarters of 1/256 and a margin. */
    private static final int LEAST_EXCESS = CodeLight.units(0.0025);

    private static final int SATURATION_MARGIN = CodeLight.units(1e-5);

    private final PastColors past;
    private final OlderRedSwings older;
    private final ChromaticSwings chromatic;
    private final PossibleReds possible;
    private final PossibleReds inTurn;
    private final double[] color = new double[3];

    /** Between which R - G - B a colour of a signal that is no saturated red needs no look. */
    private final int[] calmFrom;

    private final int[] calmUpTo;

    /** @param signals how many there are */
    RedSwings(int signals, PastColors past) {
        this.past = past;
        older = new OlderRedSwings(signals);
        chromatic = new ChromaticSwings(signals, past);
        possible = new PossibleReds(signals, false);
        inTurn = new PossibleReds(signals, true);
        calmFrom = new int[signals];
        calmUpTo = new int[signals];
        Arrays.fill(calmUpTo, NEVER);
    }

    /**
     * Finds colours that have to be looked at, of signals that stand in a row: what may be a saturated red, and what
     * signals that are watched show. Of a saturated red the others have a quarter of red at most, so R - G - B is three
     * quarters of it or more, and the luminance at most (0.2126 + 0.7152 / 4) R, which is 0.522 of R - G - B; what has
     * no more than 17/32 of that is looked at, which some pinks are that need not be.
     *
     * @param luminance of each, in the units of {@link CodeLight}
     * @param excess R - G - B of each
     * @param found becomes below 0 where {@link #step} is to be called, and stays so where it is
     */
    void sift(int first, int end, int[] luminance, int[] excess, int[] found) {
        // Fields are read before, and all is written out: else it becomes vector instructions in some runs only.
        int[] from = calmFrom;
        int[] upTo = calmUpTo;
        for (int i = first; i < end; i++) {
            int more = excess[i];
            int paleness = luminance[i] - (more >> 1) - (more >> 5) - SATURATION_MARGIN;
            found[i] |= ((LEAST_EXCESS - 1 - more) & (paleness - 1)) | (upTo[i] - more) | (more - from[i]);
        }
    }

    /** Whether {@link #step} is to be called of one signal. */
    boolean mayChange(int signal, int luminance, int excess) {
        int paleness = luminance - (excess >> 1) - (excess >> 5) - SATURATION_MARGIN;
        boolean mayBeRed = excess >= LEAST_EXCESS && paleness <= 0;
        return mayBeRed || calmUpTo[signal] < excess || excess < calmFrom[signal];
    }

    /**
     * Looks at the colour that a signal has at a place. One that stays as it is makes no change.
     *
     * @return {@link #BY_OLDER_RULE}, {@link #BY_CHROMATICITY}, {@link #POSSIBLE} and {@link #IN_TURN}: the sum of
     *     those that are so
     */
    int step(int signal, int place, int redExcess) {
        if (past.isStill(signal, place)) {
            return chromatic.isWatched(signal, place) ? 0 : calm(signal, older.calmUpTo(signal));
        }
        possible.mayHaveBeen(signal, calmFrom[signal], calmUpTo[signal]);
        inTurn.mayHaveBeen(signal, calmFrom[signal], calmUpTo[signal]);
        past.read(signal, place, color);
        boolean red = Chroma.isSaturatedRed(color);
        int found = older.step(signal, place, redExcess, red) ? BY_OLDER_RULE : 0;
        found += chromatic.step(signal, place, color, red) ? BY_CHROMATICITY : 0;
        found |= possible.step(signal, Math.max(0, redExcess), red) ? POSSIBLE : 0;
        found |= inTurn.step(signal, Math.max(0, redExcess), red) ? IN_TURN : 0;
        calmFrom[signal] = older.calmFrom(signal);
        return found | calm(signal, chromatic.isWatched(signal, place) ? NEVER : older.calmUpTo(signal));
    }

    /** Looks no more at what is no saturated red within a range; what comes there unseen counts as seen. */
    private int calm(int signal, int upTo) {
        calmUpTo[signal] = upTo;
        int found = possible.mayEnd(signal, calmFrom[signal], upTo) ? POSSIBLE : 0;
        return found | (inTurn.mayEnd(signal, calmFrom[signal], upTo) ? IN_TURN : 0);
    }

    /** Keeps what all signals are at a place. */
    void keepState(int place) {
        older.keepState();
        chromatic.keepState(place);
    }

    /** Whether the same changes follow for a signal by a rule as when that was kept, if the second before was alike. */
    boolean isAsKept(int rule, int signal, int place) {
        return rule == BY_OLDER_RULE ? older.isAsKept(signal) : chromatic.isAsKept(signal, place);
    }

    /** Behind which place a signal is to one of the rules as if it had been anything before the first frame. */
    int settledAt(int rule, int signal) {
        return rule == BY_OLDER_RULE ? older.settledAt(signal) : chromatic.settledAt(signal);
    }
}

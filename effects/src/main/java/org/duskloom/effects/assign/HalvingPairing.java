package org.duskloom.effects.assign;

/**
 * Pairs some of many points with some of few others: both are halved side by side along the axis on which they reach
 * farthest, the lower half of the one goes with the lower half of the other, and so on down to single points. O(n log
 * n) on average.
 */
final class HalvingPairing {
    private final Points many;
    private final Points few;
    private final int[] manyNumbers;
    private final int[] fewNumbers;
    private final int uses;
    private final int[] partner;

    /**
     * A pairing without pairs.
     *
     * @param manyNumbers numbers of the many points, in ranges that are paired each by itself; rearranged within them
     * @param fewNumbers likewise of the few
     * @param uses how often each of the few is used at least; at most once more
     */
    HalvingPairing(Points many, Points few, int[] manyNumbers, int[] fewNumbers, int uses) {
        this.many = many;
        this.few = few;
        this.manyNumbers = manyNumbers;
        this.fewNumbers = fewNumbers;
        this.uses = uses;
        partner = new int[many.count()];
    }

    /** For each of the many that has been paired, the number of its partner among the few. */
    int[] partner() {
        return partner;
    }

    /** Pairs two ranges; there must be enough of the many to use each of the few, and not too many. */
    void pair(int manyFrom, int manyTo, int fewFrom, int fewTo) {
        if (fewTo - fewFrom <= 1) {
            for (int i = manyFrom; i < manyTo; i++) {
                partner[manyNumbers[i]] = fewNumbers[fewFrom];
            }
            return;
        }
        int axis = axis(manyFrom, manyTo, fewFrom, fewTo);
        int fewMiddle = (fewFrom + fewTo) >>> 1;
        int manyMiddle = manyFrom + share(manyTo - manyFrom, fewMiddle - fewFrom, fewTo - fewFrom);
        Halving.split(manyNumbers, manyFrom, manyMiddle, manyTo, many.along(axis));
        Halving.split(fewNumbers, fewFrom, fewMiddle, fewTo, few.along(axis));
        pair(manyFrom, manyMiddle, fewFrom, fewMiddle);
        pair(manyMiddle, manyTo, fewMiddle, fewTo);
    }

    /** How many of the many go with the lower of the few, so that both parts can still be used evenly. */
    private int share(int manyCount, int lower, int fewCount) {
        int upper = fewCount - lower;
        int even = (int) (((long) manyCount * lower + fewCount / 2) / fewCount);
        int least = Math.max(uses * lower, manyCount - (uses + 1) * upper);
        int most = Math.min((uses + 1) * lower, manyCount - uses * upper);
        return Math.min(most, Math.max(least, even));
    }

    /** The axis on which order matters most: where the one reaches far and the other too. */
    private int axis(int manyFrom, int manyTo, int fewFrom, int fewTo) {
        int best = 0;
        double bestReach = 0;
        double bestLength = 0;
        for (int axis = 0; axis < Points.AXES; axis++) {
            double manyExtent = many.extent(axis, manyNumbers, manyFrom, manyTo);
            double fewExtent = few.extent(axis, fewNumbers, fewFrom, fewTo);
            double reach = manyExtent * fewExtent;
            double length = manyExtent + fewExtent;
            if (reach > bestReach || reach == bestReach && length > bestLength) {
                best = axis;
                bestReach = reach;
                bestLength = length;
            }
        }
        return best;
    }
}

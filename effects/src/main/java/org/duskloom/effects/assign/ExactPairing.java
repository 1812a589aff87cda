package org.duskloom.effects.assign;

import java.util.Arrays;

/**
 * Pairs points with uses of others at least total squared distance. A use is that of one of the few by one of the many.
 * Some uses must be; others may be. First every use that must be is given to one of the many, where it costs least;
 * then those of the many that are left are added one by one, to uses that must be or may be. Costs are never below
 * zero, so the prices of the first step are good for the second, where every use that may be starts free at price 0.
 *
 * <p>Holds its working memory, so that many small pairings can be made in a row. For one thread.
 */
final class ExactPairing {
    private final AugmentingPaths first = new AugmentingPaths();
    private final AugmentingPaths second = new AugmentingPaths();
    private double[] costs = {};
    private double[] turnedCosts = {};

    /** For each of the many, the number of its partner among the few; each of the few is used evenly. */
    static int[] partners(Points many, Points few) {
        int manyCount = many.count();
        int mustBe = manyCount - manyCount % few.count();
        int[] uses = new int[mustBe == manyCount ? mustBe : mustBe + few.count()];
        for (int use = 0; use < uses.length; use++) {
            uses[use] = use % few.count();
        }
        int[] partner = new ExactPairing().uses(many, all(manyCount), few, uses, mustBe);
        for (int i = 0; i < manyCount; i++) {
            partner[i] = uses[partner[i]];
        }
        return partner;
    }

    private static int[] all(int count) {
        int[] all = new int[count];
        for (int i = 0; i < count; i++) {
            all[i] = i;
        }
        return all;
    }

    /**
     * Gives a use to some of the many.
     *
     * @param numbers which of the many
     * @param uses which of the few each use is a use of; at least as many as numbers
     * @param mustBe so many uses, the first, must be; at most as many as numbers
     * @return the place of the use of each number
     */
    int[] uses(Points many, int[] numbers, Points few, int[] uses, int mustBe) {
        int count = numbers.length;
        if (costs.length < uses.length * count) {
            costs = new double[uses.length * count];
            turnedCosts = new double[uses.length * count];
        }
        for (int use = 0; use < mustBe; use++) {
            for (int i = 0; i < count; i++) {
                costs[use * count + i] = many.squaredDistance(numbers[i], few, uses[use]);
            }
        }
        first.start(costs, mustBe, count);
        first.addRows();
        return Arrays.copyOf(
                mustBe == count ? first.rowOfColumn() : withTheRest(many, numbers, few, uses, mustBe), count);
    }

    private int[] withTheRest(Points many, int[] numbers, Points few, int[] uses, int mustBe) {
        for (int i = 0; i < numbers.length; i++) {
            for (int use = 0; use < uses.length; use++) {
                turnedCosts[i * uses.length + use] = many.squaredDistance(numbers[i], few, uses[use]);
            }
        }
        second.start(turnedCosts, numbers.length, uses.length);
        for (int use = 0; use < mustBe; use++) {
            int i = first.columnOfRow()[use];
            second.place(i, use, first.columnPrice(i), first.rowPrice(use));
        }
        second.addRows();
        return second.columnOfRow();
    }
}

package org.duskloom.effects.morph;

/**
 * A leg of the way of some dots, cut into steps. How far dots reach changes more on a leg than where they are, so that
 * a frame would ask twice as many pairs as are within reach, were it to ask all of a leg. Each pair stands in the list
 * of one step: where dots come to reach farther, of the first in which it may meet, and a frame asks the lists up to
 * its own step; where they come to reach less far, of the last, and a frame asks the lists from its own on. Immutable.
 */
final class LegSteps {
    /** How many steps a leg has. Chosen by measurement. */
    static final int COUNT = 4;

    /** Where dots are at the beginning of each step, and at the end of the last. */
    private final Spots[] spots = new Spots[COUNT + 1];

    private final double[] reaches = new double[COUNT];
    private final double slack;
    private final boolean growing;

    /**
     * The steps of a leg.
     *
     * @param dots whose way it is
     * @param firstStep the number of its first, counted over all legs
     * @param allSteps how many steps all legs have
     * @param rounding a share by which dots may reach farther than computed
     * @param slack by how much they may be elsewhere
     */
    LegSteps(Dots dots, DotSize size, int firstStep, int allSteps, double rounding, double slack) {
        this.slack = slack;
        for (int step = 0; step <= COUNT; step++) {
            double from = (double) (firstStep + step) / allSteps;
            spots[step] = Spots.room(dots.count(), dots.starts().isFlat());
            spots[step].setBetween(dots.starts(), dots.ends(), from);
            if (step < COUNT) {
                double to = (firstStep + step + 1.0) / allSteps;
                reaches[step] = dots.mostReach(size, from, to) * (1 + rounding);
            }
        }
        growing = reaches[0] <= reaches[COUNT - 1];
    }

    /** How far dots reach at most in a step. */
    double reach(int step) {
        return reaches[step];
    }

    /**
     * In which list a pair stands; -1 if it meets in no step.
     *
     * @param pixels where the pixels are
     */
    int listOf(int dot, Spots pixels, int pixel) {
        for (int i = 0; i < COUNT; i++) {
            int step = growing ? i : COUNT - 1 - i;
            double reach = reaches[step] + slack;
            Segment way = Segment.of(spots[step], spots[step + 1], dot);
            if (way.squaredDistance(pixels, pixel) <= reach * reach) {
                return step;
            }
        }
        return -1;
    }

    /** The first list that a frame in a step asks. */
    int firstList(int step) {
        return growing ? 0 : step;
    }

    /** The list after the last. */
    int endList(int step) {
        return growing ? step + 1 : COUNT;
    }
}

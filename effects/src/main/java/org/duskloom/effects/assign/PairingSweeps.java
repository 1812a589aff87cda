package org.duskloom.effects.assign;

import java.util.Arrays;

/**
 * Makes a pairing shorter: pairs that lie near each other are gathered in blocks, together with uses that could be made
 * there but are not, and within each block the uses are dealt out anew at least total squared distance. A sweep goes
 * over all pairs once; from sweep to sweep the blocks are cut elsewhere, and near means near at the one end, at the
 * other, or half way. Before each sweep the pairs that go farthest astray are dealt out anew, with some others from
 * everywhere. The total never rises.
 *
 * <p>A fixed number of sweeps, each O(n log n) on average for the cutting and O(n · block²) for the dealing.
 */
final class PairingSweeps {
    /** The most items in a block. This and the numbers below are chosen by measurement. */
    private static final int BLOCK = 48;

    private static final int SWEEPS = 6;
    private static final int ASTRAY = 64;

    private static final int OTHERS = 64;

    /** Where blocks are cut, as a share of their items, sweep by sweep. */
    private static final double[] CUTS = {0.5, 0.42, 0.58};

    private final Points many;
    private final Points few;
    private final Uses uses;
    private final int[] items;
    private final ExactPairing exact = new ExactPairing();

    private PairingSweeps(Points many, Points few, int[] partner) {
        this.many = many;
        this.few = few;
        uses = new Uses(partner, few.count());
        items = new int[uses.itemCount()];
    }

    /**
     * Shortens a pairing.
     *
     * @param partner for each of the many, the number of its partner among the few
     * @return a pairing of the same kind, at most as long
     */
    static int[] shortened(Points many, Points few, int[] partner) {
        PairingSweeps sweeps = new PairingSweeps(many, few, partner);
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            Arrays.setAll(sweeps.items, i -> i);
            sweeps.dealAstray(sweep);
            sweeps.sweep(sweeps.places(sweep), 0, sweeps.items.length, CUTS[sweep % CUTS.length]);
        }
        return sweeps.uses.partners(many.count());
    }

    /** Deals out anew among the pairs that go farthest astray, some of the others, and some of nobody's uses. */
    private void dealAstray(int sweep) {
        int manyCount = many.count();
        int astray = Math.min(ASTRAY, manyCount);
        int others = Math.min(OTHERS, manyCount - astray);
        int nobodies = Math.min(ASTRAY, items.length - manyCount);
        Halving.split(items, 0, astray, manyCount, fromAverage());
        int[] block = Arrays.copyOf(items, astray + others + nobodies);
        sample(astray, manyCount, sweep, block, astray, others);
        sample(manyCount, items.length, sweep, block, astray + others, nobodies);
        deal(block, 0, block.length);
    }

    /** Takes evenly from a range of items; from sweep to sweep other ones. */
    private void sample(int from, int to, int sweep, int[] block, int at, int count) {
        for (int i = 0; i < count; i++) {
            block[at + i] = items[from + (int) (((long) i * SWEEPS + sweep) * (to - from) / ((long) count * SWEEPS))];
        }
    }

    /** How near each pair goes the way that pairs go on average: minus the squared distance. */
    private double[] fromAverage() {
        int[] partner = uses.partners(many.count());
        double[] values = new double[partner.length];
        for (int axis = 0; axis < Points.AXES; axis++) {
            double[] from = many.along(axis);
            double[] to = few.along(axis);
            double average = 0;
            for (int i = 0; i < partner.length; i++) {
                average += (to[partner[i]] - from[i]) / partner.length;
            }
            for (int i = 0; i < partner.length; i++) {
                double off = to[partner[i]] - from[i] - average;
                values[i] -= off * off;
            }
        }
        return values;
    }

    /** The places by which items are near each other in a sweep; nobody is where the use is. */
    private Points places(int sweep) {
        Points ends = few.picked(uses.partners(items.length));
        double share = (sweep % 3) / 2.0;
        return new Points(
                between(many.x(), ends.x(), share),
                between(many.y(), ends.y(), share),
                between(many.z(), ends.z(), share));
    }

    private static double[] between(double[] from, double[] to, double share) {
        double[] between = to.clone();
        for (int i = 0; i < from.length; i++) {
            between[i] = from[i] + (to[i] - from[i]) * share;
        }
        return between;
    }

    private void sweep(Points places, int from, int to, double cut) {
        if (to - from <= BLOCK) {
            deal(items, from, to);
            return;
        }
        int middle = from + (int) ((to - from) * cut);
        Halving.split(items, from, middle, to, places.along(places.longestAxis(items, from, to)));
        sweep(places, from, middle, cut);
        sweep(places, middle, to, cut);
    }

    private void deal(int[] block, int from, int to) {
        int[] numbers = Arrays.stream(block, from, to).filter(uses::isOneOfMany).toArray();
        int[] among = uses.ofItems(block, from, to);
        int[] used = uses.used(among);
        int[] places = exact.uses(many, numbers, few, used, uses.mustBe(among));
        double saved = 0;
        for (int i = 0; i < numbers.length; i++) {
            saved += many.squaredDistance(numbers[i], few, uses.partner(numbers[i]))
                    - many.squaredDistance(numbers[i], few, used[places[i]]);
        }
        if (saved > 0) {
            uses.deal(block, from, to, numbers, among, places);
        }
    }
}

package org.duskloom.effects.assign;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Pairs the points of one set with those of another at about the least total squared distance. Where one set is
 * smaller, its points are used evenly: each ⌊n/m⌋ or ⌈n/m⌉ times, where n is the larger number and m the smaller.
 *
 * <p>Up to {@value #MOST_EXACT} points in the larger set the total is the least there is, to a millionth of the square
 * of what both sets span, for each pair. Beyond, groups of points are paired first, points within them next, and then
 * the pairs are dealt out anew in small blocks, a fixed number of times: O(n log n) on average, with a total that was
 * measured at up to 1.02 times the least; 1.001 is usual.
 *
 * <p>What pairs depends on places alone, not on the order in which the points are given, as far as no two of a set lie
 * at one place. It stays the same if both sets are moved or scaled; if they are turned, large sets may pair a little
 * differently. Where pairings are equally long, that one is taken whose ways turn counter-clockwise, as seen from the
 * audience, about the middle of both sets, and then the one that goes to the right and up. Copies of a shape are paired
 * alike, however they were rounded, and only once: a pairing remembers what it has paired. For one thread.
 */
public final class EvenPairing {
    /** Chosen by measurement: at most some 40 ms for a pairing. */
    static final int MOST_EXACT = 400;

    private final Map<Key, Pairs> known = new HashMap<>();

    /** Remembers nothing yet. */
    public EvenPairing() {}

    /**
     * Pairs two sets.
     *
     * @return as many pairs as the larger set has points, in the order of its points
     * @throws IllegalArgumentException if a set is empty
     */
    public Pairs pairs(Points from, Points to) {
        if (from.count() == 0 || to.count() == 0) {
            throw new IllegalArgumentException(from.count() + " points to " + to.count());
        }
        CommonFrame frame = CommonFrame.of(from, to);
        return known.computeIfAbsent(Key.of(frame.placed(from), frame.placed(to)), Key::pairs);
    }

    /** Two sets of places. */
    private record Key(Points from, Points to, int hash) {
        static Key of(Points from, Points to) {
            return new Key(from, to, 31 * hash(from) + hash(to));
        }

        private static int hash(Points points) {
            return (Arrays.hashCode(points.x()) * 31 + Arrays.hashCode(points.y())) * 31 + Arrays.hashCode(points.z());
        }

        Pairs pairs() {
            Points turned = CommonFrame.turnedALittle(to);
            if (from.count() >= to.count()) {
                return new Pairs(IntStream.range(0, from.count()).toArray(), partners(from, turned));
            }
            return new Pairs(
                    partners(turned, from), IntStream.range(0, to.count()).toArray());
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Key key && hash == key.hash && isSame(from, key.from) && isSame(to, key.to);
        }

        private static boolean isSame(Points a, Points b) {
            return Arrays.equals(a.x(), b.x()) && Arrays.equals(a.y(), b.y()) && Arrays.equals(a.z(), b.z());
        }

        @Override
        public int hashCode() {
            return hash;
        }
    }

    /** For each of the many, the number of its partner among the few. */
    private static int[] partners(Points many, Points few) {
        int[] manyOrder = byPlace(many);
        int[] fewOrder = byPlace(few);
        int[] inOrder = partnersInOrder(many.picked(manyOrder), few.picked(fewOrder));
        int[] partners = new int[inOrder.length];
        for (int i = 0; i < inOrder.length; i++) {
            partners[manyOrder[i]] = fewOrder[inOrder[i]];
        }
        return partners;
    }

    private static int[] byPlace(Points points) {
        Comparator<Integer> order = Comparator.comparingDouble(i -> points.x()[i]);
        return IntStream.range(0, points.count())
                .boxed()
                .sorted(order.thenComparingDouble(i -> points.y()[i]).thenComparingDouble(i -> points.z()[i]))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    private static int[] partnersInOrder(Points many, Points few) {
        return many.count() <= MOST_EXACT
                ? ExactPairing.partners(many, few)
                : PairingSweeps.shortened(many, few, GroupPairing.partners(many, few));
    }
}

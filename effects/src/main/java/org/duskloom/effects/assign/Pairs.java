package org.duskloom.effects.assign;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Points of one set paired with points of another.
 *
 * @param from the number of the point of the first set, of each pair
 * @param to the number of its partner in the second set
 */
public record Pairs(int[] from, int[] to) {
    /** How many pairs there are. */
    public int count() {
        return from.length;
    }

    /** The same pairs in the order of the ranks of their points of the first set. */
    public Pairs inOrder(int[] ranks) {
        int[] order = IntStream.range(0, from.length)
                .boxed()
                .sorted(Comparator.comparingInt(pair -> ranks[from[pair]]))
                .mapToInt(Integer::intValue)
                .toArray();
        return new Pairs(picked(from, order), picked(to, order));
    }

    private static int[] picked(int[] values, int[] order) {
        return Arrays.stream(order).map(i -> values[i]).toArray();
    }

    /** The sum of the squared distances of the partners. */
    public double totalSquaredDistance(Points fromPoints, Points toPoints) {
        double total = 0;
        for (int pair = 0; pair < from.length; pair++) {
            total += fromPoints.squaredDistance(from[pair], toPoints, to[pair]);
        }
        return total;
    }
}

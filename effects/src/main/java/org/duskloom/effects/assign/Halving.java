package org.duskloom.effects.assign;

import org.duskloom.engine.random.StableHash;

/** Splits numbered things by a value of each, in linear time on average (C. A. R. Hoare, "Find", 1961). */
public final class Halving {
    private Halving() {}

    /**
     * Moves the things with the least values to the front; of equal values, those with the lower number.
     *
     * @param numbers different numbers of things; those from {@code from} up to {@code to} are rearranged
     * @param middle where the second part begins
     * @param values of the things, by number
     */
    public static void split(int[] numbers, int from, int middle, int to, double[] values) {
        int low = from;
        int high = to - 1;
        while (low < high && middle > from && middle < to) {
            int pivot = numbers[low + Math.floorMod(StableHash.draw(low, high), high - low + 1)];
            int i = low;
            int j = high;
            while (i <= j) {
                while (isBefore(numbers[i], pivot, values)) {
                    i++;
                }
                while (isBefore(pivot, numbers[j], values)) {
                    j--;
                }
                if (i <= j) {
                    int moved = numbers[i];
                    numbers[i++] = numbers[j];
                    numbers[j--] = moved;
                }
            }
            if (middle > j && middle < i) {
                return;
            }
            low = middle <= j ? low : i;
            high = middle <= j ? j : high;
        }
    }

    private static boolean isBefore(int a, int b, double[] values) {
        return values[a] < values[b] || values[a] == values[b] && a < b;
    }
}

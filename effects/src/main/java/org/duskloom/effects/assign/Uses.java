package org.duskloom.effects.assign;

import java.util.Arrays;

/**
 * Who uses whom, where each of the few is used evenly. Each of the few has as many uses as there must be, and one more
 * if the numbers do not go up. Who has a use is an item: the items below the number of the many are the many
 * themselves; those above are nobody, and hold the further uses that are not made.
 */
final class Uses {
    private final int manyCount;
    private final int fewCount;
    /** The uses below are those that must be; use modulo {@link #fewCount} is the number of the one used. */
    private final int mustBe;

    private final int[] useOfItem;

    /**
     * The uses of a pairing.
     *
     * @param partner for each of the many, the number of its partner among the few
     */
    Uses(int[] partner, int fewCount) {
        this.manyCount = partner.length;
        this.fewCount = fewCount;
        int least = manyCount / fewCount;
        mustBe = least * fewCount;
        useOfItem = new int[mustBe == manyCount ? manyCount : mustBe + fewCount];
        int[] used = new int[fewCount];
        for (int number = 0; number < manyCount; number++) {
            useOfItem[number] = partner[number] + fewCount * used[partner[number]]++;
        }
        int item = manyCount;
        for (int one = 0; one < fewCount && item < useOfItem.length; one++) {
            if (used[one] == least) {
                useOfItem[item++] = one + mustBe;
            }
        }
    }

    /** How many items there are. */
    int itemCount() {
        return useOfItem.length;
    }

    /** Whether an item is one of the many. */
    boolean isOneOfMany(int item) {
        return item < manyCount;
    }

    /** The number of the one that an item uses. */
    int partner(int item) {
        return useOfItem[item] % fewCount;
    }

    /** The number of the one that each of the first items uses. */
    int[] partners(int items) {
        return Arrays.stream(useOfItem, 0, items).map(use -> use % fewCount).toArray();
    }

    /** The uses of some items, first those that must be. */
    int[] ofItems(int[] items, int from, int to) {
        int[] uses = new int[to - from];
        int first = 0;
        int last = uses.length;
        for (int i = from; i < to; i++) {
            int use = useOfItem[items[i]];
            uses[use < mustBe ? first++ : --last] = use;
        }
        return uses;
    }

    /** How many of these uses must be. */
    int mustBe(int[] uses) {
        int count = 0;
        while (count < uses.length && uses[count] < mustBe) {
            count++;
        }
        return count;
    }

    /** The number of the one that each use is a use of. */
    int[] used(int[] uses) {
        int[] used = new int[uses.length];
        for (int i = 0; i < used.length; i++) {
            used[i] = uses[i] % fewCount;
        }
        return used;
    }

    /**
     * Deals uses out anew.
     *
     * @param items those that had the uses; from {@code from} up to {@code to}
     * @param numbers the many among them
     * @param placeOfUse the place in {@code uses} of the new use of each of the many; nobody gets the others
     */
    void deal(int[] items, int from, int to, int[] numbers, int[] uses, int[] placeOfUse) {
        boolean[] taken = new boolean[uses.length];
        for (int i = 0; i < numbers.length; i++) {
            useOfItem[numbers[i]] = uses[placeOfUse[i]];
            taken[placeOfUse[i]] = true;
        }
        int place = 0;
        for (int i = from; i < to; i++) {
            if (!isOneOfMany(items[i])) {
                while (taken[place]) {
                    place++;
                }
                useOfItem[items[i]] = uses[place++];
            }
        }
    }
}

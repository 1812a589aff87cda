package org.duskloom.engine.plan;

import java.util.AbstractList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.RandomAccess;

/**
 * The cues of a layer in the order of painting, once for every play. Plays that differ in nothing but their starts are
 * kept as one and made when they are asked for: equal ones each time, though not the same. Immutable.
 */
final class PlannedCues extends AbstractList<PlannedCue> implements RandomAccess {
    private final List<PlannedItem> items;
    /** For each item the number of the first cue behind it. */
    private final int[] ends;

    private PlannedCues(List<? extends PlannedItem> items) {
        this.items = List.copyOf(items);
        ends = new int[items.size()];
        int end = 0;
        for (int i = 0; i < ends.length; i++) {
            end += items.get(i) instanceof PlannedPlays plays ? plays.count() : 1;
            ends[i] = end;
        }
    }

    /** Cues and plays of cues, in the order of painting. */
    static PlannedCues of(List<? extends PlannedItem> items) {
        return items instanceof PlannedCues cues ? cues : new PlannedCues(items);
    }

    /** What is kept: cues, and all plays of a cue as one. */
    List<PlannedItem> items() {
        return items;
    }

    @Override
    public PlannedCue get(int number) {
        Objects.checkIndex(number, size());
        int found = Arrays.binarySearch(ends, number);
        int item = found < 0 ? -found - 1 : found + 1;
        return items.get(item) instanceof PlannedPlays plays
                ? plays.play(number - (item == 0 ? 0 : ends[item - 1]))
                : (PlannedCue) items.get(item);
    }

    @Override
    public int size() {
        return ends.length == 0 ? 0 : ends[ends.length - 1];
    }
}

package org.duskloom.engine.render;

import java.util.Arrays;
import java.util.List;
import org.duskloom.engine.plan.PlannedCue;
import org.duskloom.engine.plan.PlannedItem;
import org.duskloom.engine.plan.PlannedPlays;

/**
 * Finds the cues of a layer that are seen in a frame, without asking all of them. They stand in the order in which they
 * begin, so that a halving tells which have begun; from the last of these a tree leads back from one to the next that
 * has not ended, for each of its nodes knows the latest end under it. What is found costs little more than its own
 * number, however many cues the layer has. For one thread.
 */
final class ActiveCues {
    private final List<? extends PlannedItem> items;
    /** For each item that is all plays of a cue, which of them are seen; null where no item is. */
    private final PlayWindow[] windows;

    /** Numbers of items, by their first frames. */
    private final int[] byStart;

    private final long[] firstFrame;
    /** More than there are cues: a place behind the last has a leaf, too. */
    private final int leafCount;
    /** By nodes: 1 is the root, those under n are 2n and 2n + 1. */
    private final long[] latestEnd;

    /** Only this may change. */
    private final int[] found;

    ActiveCues(List<? extends PlannedItem> items) {
        this.items = items;
        windows = windows(items);
        byStart = numbersByStart(items);
        firstFrame = new long[byStart.length];
        leafCount = Math.max(1, Integer.highestOneBit(2 * byStart.length));
        latestEnd = new long[2 * leafCount];
        found = new int[byStart.length];
        Arrays.fill(latestEnd, Long.MIN_VALUE);
        for (int place = 0; place < byStart.length; place++) {
            firstFrame[place] = items.get(byStart[place]).firstFrame();
            latestEnd[leafCount + place] = items.get(byStart[place]).endFrameExclusive();
        }
        for (int node = leafCount - 1; node > 0; node--) {
            latestEnd[node] = Math.max(latestEnd[2 * node], latestEnd[2 * node + 1]);
        }
    }

    /** The same for another thread, with nothing that changes in common. */
    ActiveCues(ActiveCues same) {
        items = same.items;
        windows = same.windows == null ? null : windows(items);
        byStart = same.byStart;
        firstFrame = same.firstFrame;
        leafCount = same.leafCount;
        latestEnd = same.latestEnd;
        found = new int[same.found.length];
    }

    private static PlayWindow[] windows(List<? extends PlannedItem> items) {
        PlayWindow[] windows = null;
        for (int number = 0; number < items.size(); number++) {
            if (items.get(number) instanceof PlannedPlays plays) {
                windows = windows == null ? new PlayWindow[items.size()] : windows;
                windows[number] = new PlayWindow(plays);
            }
        }
        return windows;
    }

    /** Those that begin together in their order. A show has fewer frames than an int holds. */
    private static int[] numbersByStart(List<? extends PlannedItem> items) {
        long[] keyed = new long[items.size()];
        for (int number = 0; number < keyed.length; number++) {
            keyed[number] = keyed(items.get(number), number);
        }
        Arrays.sort(keyed);
        int[] numbers = new int[keyed.length];
        for (int place = 0; place < numbers.length; place++) {
            numbers[place] = (int) keyed[place];
        }
        return numbers;
    }

    private static long keyed(PlannedItem item, int number) {
        return (long) Math.toIntExact(item.firstFrame()) << Integer.SIZE | number;
    }

    /** Adds the cues that are seen in a frame, in the order of painting. */
    void addTo(List<PlannedCue> seen, long frame) {
        int count = 0;
        for (int place = before(begun(frame), frame); place >= 0; place = before(place, frame)) {
            found[count++] = byStart[place];
        }
        if (count > 1) {
            Arrays.sort(found, 0, count);
        }
        for (int i = 0; i < count; i++) {
            add(found[i], seen, frame);
        }
    }

    private void add(int number, List<PlannedCue> seen, long frame) {
        if (windows != null && windows[number] != null) {
            windows[number].addTo(seen, frame);
        } else {
            seen.add((PlannedCue) items.get(number));
        }
    }

    /** How many have begun in a frame. */
    private int begun(long frame) {
        int from = 0;
        int to = firstFrame.length;
        while (from < to) {
            int middle = (from + to) >>> 1;
            if (firstFrame[middle] <= frame) {
                from = middle + 1;
            } else {
                to = middle;
            }
        }
        return from;
    }

    /** The last place before this one whose cue ends after a frame; -1 if there is none. */
    private int before(int place, long frame) {
        int node = leafCount + place;
        while ((node & 1) == 0 || latestEnd[node - 1] <= frame) {
            if (node == 1) {
                return -1;
            }
            node >>= 1;
        }
        node--;
        while (node < leafCount) {
            node = latestEnd[2 * node + 1] > frame ? 2 * node + 1 : 2 * node;
        }
        return node - leafCount;
    }
}

package org.duskloom.engine.render;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.duskloom.engine.plan.PlannedCue;

/**
 * Finds the cues of a layer that are seen in a frame, without asking all of them: a tree over the cues in the order in
 * which they begin, of which each node knows the first frame and the end of what is under it. What is found costs
 * little more than its own number, however many cues the layer has. For one thread.
 */
final class ActiveCues {
    private final List<PlannedCue> cues;
    /** Numbers of cues, by their first frames; for each the node is the number of leaves behind the place. */
    private final int[] byStart;

    private final int leafCount;
    private final long[] firstFrame;
    private final long[] endFrameExclusive;
    private final int[] found;
    private int foundCount;

    ActiveCues(List<PlannedCue> cues) {
        this.cues = cues;
        byStart = numbersByStart(cues);
        leafCount = Math.max(1, Integer.highestOneBit(Math.max(1, 2 * cues.size() - 1)));
        firstFrame = new long[2 * leafCount];
        endFrameExclusive = new long[2 * leafCount];
        found = new int[cues.size()];
        Arrays.fill(firstFrame, Long.MAX_VALUE);
        Arrays.fill(endFrameExclusive, Long.MIN_VALUE);
        for (int place = 0; place < byStart.length; place++) {
            firstFrame[leafCount + place] = cues.get(byStart[place]).firstFrame();
            endFrameExclusive[leafCount + place] = cues.get(byStart[place]).endFrameExclusive();
        }
        for (int node = leafCount - 1; node > 0; node--) {
            firstFrame[node] = Math.min(firstFrame[2 * node], firstFrame[2 * node + 1]);
            endFrameExclusive[node] = Math.max(endFrameExclusive[2 * node], endFrameExclusive[2 * node + 1]);
        }
    }

    private static int[] numbersByStart(List<PlannedCue> cues) {
        Integer[] numbers = new Integer[cues.size()];
        Arrays.setAll(numbers, number -> number);
        Arrays.sort(numbers, Comparator.comparingLong(number -> cues.get(number).firstFrame()));
        return Arrays.stream(numbers).mapToInt(Integer::intValue).toArray();
    }

    /** Adds the cues that are seen in a frame, in the order of painting. */
    void addTo(List<PlannedCue> seen, long frame) {
        foundCount = 0;
        find(1, frame);
        if (foundCount > 1) {
            Arrays.sort(found, 0, foundCount);
        }
        for (int i = 0; i < foundCount; i++) {
            seen.add(cues.get(found[i]));
        }
    }

    private void find(int node, long frame) {
        if (frame < firstFrame[node] || frame >= endFrameExclusive[node]) {
            return;
        }
        if (node >= leafCount) {
            found[foundCount++] = byStart[node - leafCount];
            return;
        }
        find(2 * node, frame);
        find(2 * node + 1, frame);
    }
}

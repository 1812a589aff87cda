package org.duskloom.engine.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/**
 * Finds cues that are seen at the same time as another, without asking all of them. Each is kept with those about as
 * long as it, by the piece of time in which it begins. For one thread.
 */
final class DraftTimes {
    /** For each length, as a power of two, the cues up to that long by the number of the piece they begin in. */
    private final List<TreeMap<Long, List<CueDraft>>> byLength = new ArrayList<>();

    void add(CueDraft cue) {
        int length = lengthBits(cue);
        while (byLength.size() <= length) {
            byLength.add(new TreeMap<>());
        }
        byLength.get(length)
                .computeIfAbsent(cue.firstFrame() >> length, piece -> new ArrayList<>())
                .add(cue);
    }

    /** Cues that may be seen while the other one is, and some that end shortly before or begin shortly after it. */
    List<CueDraft> near(CueDraft other) {
        List<CueDraft> near = new ArrayList<>();
        for (int length = 0; length < byLength.size(); length++) {
            byLength.get(length)
                    .subMap((other.firstFrame() >> length) - 1, true, other.endFrameExclusive() >> length, true)
                    .values()
                    .forEach(near::addAll);
        }
        return near;
    }

    /** The least power of two that is no shorter than the cue. */
    private static int lengthBits(CueDraft cue) {
        long frames = Math.max(1, cue.endFrameExclusive() - cue.firstFrame());
        return Long.SIZE - Long.numberOfLeadingZeros(frames - 1);
    }
}

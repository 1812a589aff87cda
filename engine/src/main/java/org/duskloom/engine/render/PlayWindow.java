package org.duskloom.engine.render;

import java.util.Arrays;
import java.util.List;
import org.duskloom.engine.plan.PlannedCue;
import org.duskloom.engine.plan.PlannedPlays;

/**
 * Finds which plays of a cue are seen in a frame. A play is made when a frame shows it, and kept while frames near by
 * may. For one thread.
 */
final class PlayWindow {
    /** So many plays at least are kept, for who goes back and forth between frames. */
    private static final int LEAST_KEPT = 64;

    private final PlannedPlays plays;
    /** Plays, each at the place of others that are never seen while it is. */
    private final PlannedCue[] kept;

    private final int[] numbers;

    PlayWindow(PlannedPlays plays) {
        this.plays = plays;
        kept = new PlannedCue[Math.min(plays.count(), Math.max(LEAST_KEPT, plays.mostAtOnce()))];
        numbers = new int[kept.length];
        Arrays.fill(numbers, -1);
    }

    /** Adds the plays that are seen in a frame, in their order. */
    void addTo(List<PlannedCue> seen, long frame) {
        int end = plays.begunBy(frame);
        for (int number = plays.endedBy(frame); number < end; number++) {
            int place = number % kept.length;
            if (numbers[place] != number) {
                kept[place] = plays.play(number);
                numbers[place] = number;
            }
            seen.add(kept[place]);
        }
    }
}

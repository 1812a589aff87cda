package org.duskloom.engine.timeline;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.ExactTime;

/**
 * How often a cue is played, worked out.
 *
 * @param count how often, at least once
 * @param step from one start to the next
 * @param cut where a play that goes on is cut off
 * @param change the settings that differ from play to play
 */
record Plays(long count, ExactTime step, ExactTime cut, SettingSteps change) {
    /** A cue that is not repeated. */
    static Plays once(ExactTime end) {
        return new Plays(1, ExactTime.ZERO, end, SettingSteps.NONE);
    }

    /** When the last play has ended, if the first ends then. */
    ExactTime lastEnd(ExactTime firstEnd) {
        ExactTime end = firstEnd.plus(step.times(count - 1));
        return end.compareTo(cut) < 0 ? end : cut;
    }

    /** What is played, once for every play. */
    List<Played> of(Played first, Problems problems) {
        List<Played> plays = new ArrayList<>();
        for (int play = 0; play < count; play++) {
            ExactTime shift = step.times(play);
            if (first instanceof Cue cue) {
                plays.add(cue.repeated(play, shift, cut, change.appliedTo(cue.with(), play, problems)));
            } else if (first instanceof SceneCue scene) {
                plays.add(scene.repeated(play, shift, cut));
            }
        }
        return plays;
    }
}

package org.duskloom.engine.timeline;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.ExactTime;

/**
 * How often a cue is played, worked out.
 *
 * @param times when each play starts and ends, by its own clock, in order; at least one
 * @param cut where a play that goes on is cut off
 * @param change the settings that differ from play to play
 */
record Plays(List<Times> times, ExactTime cut, SettingSteps change) {
    Plays {
        times = List.copyOf(times);
    }

    /** When a play starts and ends. */
    record Times(ExactTime at, ExactTime end) {}

    /** A cue that is not repeated. */
    static Plays once(ExactTime at, ExactTime end) {
        return new Plays(List.of(new Times(at, end)), end, SettingSteps.NONE);
    }

    /** When the last play has ended. */
    ExactTime lastEnd() {
        return Played.earlier(times.get(times.size() - 1).end(), cut);
    }

    /**
     * What is played, once for every play.
     *
     * @param fade how each comes and goes
     */
    List<Played> of(Played first, WrittenFade fade, Problems problems) {
        List<Played> plays = new ArrayList<>();
        for (int play = 0; play < times.size(); play++) {
            Times when = times.get(play);
            Fade own = fade.over(when, problems);
            if (first instanceof Cue cue) {
                plays.add(cue.repeated(play, when, cut, own, change.appliedTo(cue.with(), play, problems)));
            } else if (first instanceof SceneCue scene) {
                plays.add(scene.repeated(play, when, cut, own));
            }
        }
        return plays;
    }
}

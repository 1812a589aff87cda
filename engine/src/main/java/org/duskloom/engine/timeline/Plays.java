package org.duskloom.engine.timeline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
        times = times instanceof EvenTimes ? times : List.copyOf(times);
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
     * The plays as one, where nothing changes from one to the next and nothing is wrong with them.
     *
     * @param fade how each comes and goes
     */
    Optional<EvenPlays> evenly(Cue first, WrittenFade fade) {
        if (!(times instanceof EvenTimes even) || !change.steps().isEmpty() || !fade.isFixed()) {
            return Optional.empty();
        }
        Problems unheard = new Problems();
        Fade own = fade.over(times.get(0), unheard);
        return unheard.hasErrors()
                ? Optional.empty()
                : Optional.of(new EvenPlays(first.repeated(1, times.get(0), cut, own), even.starts(), cut));
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
                int number = times.size() == 1 ? 0 : play + 1;
                plays.add(cue.repeated(number, when, cut, own, change.appliedTo(cue.with(), play, problems)));
            } else if (first instanceof SceneCue scene) {
                plays.add(scene.repeated(play, when, cut, own));
            }
        }
        return plays;
    }
}

package org.duskloom.engine.plan;

import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.timeline.Cue;
import org.duskloom.engine.timeline.EvenPlays;

/** Warns of cues that begin and end between two frames. */
final class UnseenCues {
    private final FrameRate rate;
    private final Problems problems;

    UnseenCues(FrameRate rate, Problems problems) {
        this.rate = rate;
        this.problems = problems;
    }

    void warn(Cue cue) {
        problems.warn(cue.location(), message(cue), hint());
    }

    /** Warns of each play by itself; of those that would not be listed any more nothing is put into words. */
    void warn(EvenPlays plays, PlannedPlays planned) {
        String hint = hint();
        for (int number = 0; number < plays.count(); number++) {
            if (planned.firstFrame(number) == planned.endFrameExclusive(number)) {
                int play = number;
                problems.warnUnlikeOthers(plays.first().location(), () -> message(plays.play(play)), hint);
            }
        }
    }

    private static String message(Cue cue) {
        return "the cue is never seen: no frame falls between " + cue.at() + " and " + cue.seenUntil();
    }

    private String hint() {
        return "frames are " + rate.timeOf(1) + " apart";
    }
}

package org.duskloom.engine.plan;

import java.util.LinkedHashMap;
import java.util.Map;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.timeline.Cue;
import org.duskloom.engine.timeline.EvenPlays;

/** Warns of cues that begin and end between two frames: once of each, however often it is played. */
final class UnseenCues {
    private final FrameRate rate;
    private final Map<Location, Unseen> byPlace = new LinkedHashMap<>();

    UnseenCues(FrameRate rate) {
        this.rate = rate;
    }

    /** Those plays of a cue that are never seen. */
    private record Unseen(Cue first, int count) {
        Unseen and(Unseen more) {
            return new Unseen(first, count + more.count);
        }

        String text() {
            String between = "no frame falls between " + first.at() + " and " + first.seenUntil();
            if (count > 1) {
                return count + " plays of the cue are never seen: " + between + ", where the first of them is";
            }
            return (first.play() == 0 ? "the cue" : "play " + first.play() + " of the cue") + " is never seen: "
                    + between;
        }
    }

    /** Notes a play that is never seen. */
    void add(Cue play) {
        byPlace.merge(play.location(), new Unseen(play, 1), Unseen::and);
    }

    /** Notes those plays that are never seen. */
    void add(EvenPlays plays, PlannedPlays planned) {
        int count = 0;
        int first = 0;
        for (int number = plays.count() - 1; number >= 0; number--) {
            if (planned.firstFrame(number) == planned.endFrameExclusive(number)) {
                count++;
                first = number;
            }
        }
        if (count > 0) {
            byPlace.merge(plays.first().location(), new Unseen(plays.play(first), count), Unseen::and);
        }
    }

    /** Warns of all that were noted. */
    void warn(Problems problems) {
        byPlace.forEach(
                (place, unseen) -> problems.warn(place, unseen.text(), "frames are " + rate.timeOf(1) + " apart"));
    }
}

package org.duskloom.engine.plan;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.timeline.Cue;

/**
 * Says what is wrong with a value that changes from play to play once: of the first play in which it is wrong. What the
 * later ones have in its place is the same slip, mostly with another number.
 */
final class FirstFaults {
    private final Problems problems;
    private final Set<Location> places = new HashSet<>();

    FirstFaults(Problems problems) {
        this.problems = problems;
    }

    /** Reads a value of a play; nothing is read where an earlier play had a wrong one. */
    Optional<?> read(Cue play, Field setting, Supplier<Optional<?>> reading) {
        Location place = setting.value().location();
        if (isTold(play, place)) {
            return Optional.empty();
        }
        int errorsBefore = problems.errorCount();
        Optional<?> value = reading.get();
        if (play.play() > 0 && problems.errorCount() > errorsBefore) {
            places.add(place);
        }
        return value;
    }

    /** Adds an error of a play, unless an earlier one had one there. */
    void error(Cue play, Location place, String message, String hint) {
        if (!isTold(play, place)) {
            problems.error(place, message, hint);
            places.add(place);
        }
    }

    private boolean isTold(Cue play, Location place) {
        boolean told = play.play() > 1 && places.contains(place);
        if (told) {
            problems.countAgain();
        }
        return told;
    }

    /** Which play it is, to stand behind what it has wrong; empty in the first, which is as the cue is written. */
    static String in(Cue play) {
        return play.play() > 1 ? " in play " + play.play() : "";
    }
}

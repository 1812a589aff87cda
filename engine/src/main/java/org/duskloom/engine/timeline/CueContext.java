package org.duskloom.engine.timeline;

import java.util.Optional;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.TimeContext;

/**
 * What reading a cue needs to know of its timeline.
 *
 * @param times what the words in its times refer to
 * @param end the end of the timeline
 * @param problems where errors go
 */
record CueContext(TimeContext times, ExactTime end, Problems problems) {
    /** An instant, not beyond the end of the timeline. */
    Optional<ExactTime> instant(Fields fields, String name) {
        return fields.node(name)
                .flatMap(node -> Values.time(node, label(fields, name), times, problems))
                .filter(instant -> isWithin(fields, name, instant));
    }

    /** A length of time above zero. */
    Optional<ExactTime> length(Fields fields, String name) {
        Optional<ExactTime> length = orZero(fields, name);
        if (length.isPresent() && length.get().isZero()) {
            problems.error(fields.location(name), label(fields, name) + " is zero", "it must be longer");
            return Optional.empty();
        }
        return length;
    }

    /** A length of time that may be zero. */
    Optional<ExactTime> orZero(Fields fields, String name) {
        return fields.node(name)
                .flatMap(node -> Values.time(node, label(fields, name), times.withoutMarks(), problems));
    }

    private boolean isWithin(Fields fields, String name, ExactTime instant) {
        if (instant.compareTo(end) <= 0) {
            return true;
        }
        problems.error(fields.location(name), label(fields, name) + " is " + instant, "the timeline ends at " + end);
        return false;
    }

    private static String label(Fields fields, String name) {
        return "\"" + name + "\" of " + fields.what();
    }
}

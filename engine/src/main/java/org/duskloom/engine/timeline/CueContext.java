package org.duskloom.engine.timeline;

import java.util.Optional;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.Node;
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
    Optional<ExactTime> instant(Fields fields, DeclaredField<Node> field) {
        return fields.node(field)
                .flatMap(node -> Values.time(node, fields.label(field), times, problems))
                .filter(instant -> isWithin(fields, field, instant));
    }

    /** A length of time above zero. */
    Optional<ExactTime> length(Fields fields, DeclaredField<Node> field) {
        Optional<ExactTime> length = orZero(fields, field);
        if (length.isPresent() && length.get().isZero()) {
            problems.error(fields.location(field), fields.label(field) + " is zero", "it must be longer");
            return Optional.empty();
        }
        return length;
    }

    /** A length of time that may be zero. */
    Optional<ExactTime> orZero(Fields fields, DeclaredField<Node> field) {
        return fields.node(field)
                .flatMap(node -> Values.time(node, fields.label(field), times.withoutMarks(), problems));
    }

    private boolean isWithin(Fields fields, DeclaredField<Node> field, ExactTime instant) {
        if (instant.compareTo(end) <= 0) {
            return true;
        }
        problems.error(fields.location(field), fields.label(field) + " is " + instant, "the timeline ends at " + end);
        return false;
    }
}

package org.duskloom.engine.timeline;

import java.util.Optional;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.time.ExactTime;

/**
 * When a cue holds.
 *
 * @param at its start
 * @param length how long it lasts; above zero
 */
record CueTimes(ExactTime at, ExactTime length) {
    /**
     * Reads {@code at} with {@code for} or {@code until}. Without {@code at} a cue starts with the timeline, without the
     * others it ends with it.
     */
    static Optional<CueTimes> read(Fields fields, CueContext context) {
        Optional<ExactTime> at =
                fields.has(CueFields.AT) ? context.instant(fields, CueFields.AT) : Optional.of(ExactTime.ZERO);
        // Where the start is wrong, the earliest one stands for it: what is too long from there is so from anywhere.
        Optional<ExactTime> length = length(fields, at.orElse(ExactTime.ZERO), context);
        return at.isPresent() && length.isPresent()
                ? Optional.of(new CueTimes(at.get(), length.get()))
                : Optional.empty();
    }

    private static Optional<ExactTime> length(Fields fields, ExactTime at, CueContext context) {
        boolean hasLength = fields.has(CueFields.FOR);
        boolean hasEnd = fields.has(CueFields.UNTIL);
        if (hasLength && hasEnd) {
            return Optional.empty();
        }
        if (hasLength) {
            return context.length(fields, CueFields.FOR).filter(length -> endsInTime(fields, at.plus(length), context));
        }
        Optional<ExactTime> end = hasEnd ? context.instant(fields, CueFields.UNTIL) : Optional.of(context.end());
        return end.filter(instant -> endsLater(fields, at, instant, context)).map(instant -> instant.minus(at));
    }

    private static boolean endsInTime(Fields fields, ExactTime end, CueContext context) {
        if (end.compareTo(context.end()) <= 0) {
            return true;
        }
        context.problems()
                .error(
                        fields.location(CueFields.FOR),
                        "the cue ends at " + end,
                        "the timeline ends at " + context.end());
        return false;
    }

    private static boolean endsLater(Fields fields, ExactTime at, ExactTime end, CueContext context) {
        if (end.compareTo(at) > 0) {
            return true;
        }
        context.problems()
                .error(
                        fields.location(fields.has(CueFields.UNTIL) ? CueFields.UNTIL : CueFields.AT),
                        "the cue starts at " + at + " and ends at " + end,
                        "it must end after it starts");
        return false;
    }
}

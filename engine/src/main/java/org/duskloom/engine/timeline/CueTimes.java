package org.duskloom.engine.timeline;

import java.util.Optional;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.Lapse;

/** How long a cue holds. */
final class CueTimes {
    private CueTimes() {}

    /**
     * The length from {@code for} or {@code until}; above zero. Without them a scene is played to its end, and what is
     * no scene to the end of the whole. Where the start is not known, the earliest one stands for it: what is too long
     * from there is so from anywhere.
     */
    static Optional<Lapse> length(OpenCue cue, CueContext context) {
        Fields fields = cue.fields();
        ExactTime at = cue.start().orElse(ExactTime.ZERO);
        boolean hasLength = fields.has(CueFields.FOR);
        boolean hasEnd = fields.has(CueFields.UNTIL);
        if (hasLength && hasEnd) {
            return Optional.empty();
        }
        if (hasLength) {
            return context.length(fields, CueFields.FOR)
                    .filter(length -> endsInTime(fields, CueFields.FOR, at, length, context));
        }
        if (!hasEnd && fields.has(CueFields.SCENE)) {
            // Of a scene that is not there nobody knows how long it would be.
            return fields.given(CueFields.SCENE)
                    .flatMap(scene -> context.scenes().length(scene.value(), context.times()))
                    .filter(length -> endsInTime(fields, CueFields.SCENE, at, length, context));
        }
        Optional<ExactTime> end = hasEnd ? context.instant(fields, CueFields.UNTIL) : Optional.of(context.end());
        return end.filter(instant -> endsLater(fields, at, instant, context))
                .map(instant -> Lapse.of(instant.minus(at)));
    }

    /** Whether the length hangs on something that is written, and not on the end of the whole alone. */
    static boolean saysLength(Fields fields) {
        return fields.has(CueFields.FOR) || fields.has(CueFields.UNTIL) || fields.has(CueFields.SCENE);
    }

    private static boolean endsInTime(
            Fields fields, DeclaredField<?> field, ExactTime at, Lapse length, CueContext context) {
        ExactTime end = at.plus(context.times().lasting(length, at));
        if (end.compareTo(context.end()) <= 0) {
            return true;
        }
        context.problems()
                .error(
                        fields.location(field),
                        "the cue ends at " + end,
                        context.whole() + " ends at " + context.end()
                                + (field == CueFields.FOR && !fields.has(CueFields.SCENE)
                                        ? "; without \"for\" the cue lasts until then"
                                        : ""));
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

package org.duskloom.engine.timeline;

import java.math.BigInteger;
import java.util.Optional;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.document.ValueKind;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.ExactTime;

/**
 * How often a cue is played, how far apart, and what changes from one time to the next. Every play of a count must end
 * with the timeline or before, as any cue; plays that fill a time are cut where it ends.
 *
 * @param location where it stands
 * @param count how often; absent where {@code until} is given
 * @param until all plays start before this instant, and none is seen from it on: what goes on is cut, its fade out too
 * @param every from one start to the next; absent where the plays follow each other without a gap
 * @param change the settings that differ from play to play
 */
record Repeat(
        Location location,
        Optional<Long> count,
        Optional<ExactTime> until,
        Optional<ExactTime> every,
        SettingSteps change) {
    private static final String WHAT = "\"repeat\" of a cue";
    static final int MOST = 10_000;
    static final ValueKind.Whole COUNT_KIND = new ValueKind.Whole("plays", 1, MOST);

    /** Reads a count, or an object that says more. */
    static Optional<Repeat> read(Node node, CueContext context) {
        Problems problems = context.problems();
        if (!(node instanceof ObjectNode)) {
            return COUNT_KIND
                    .read(node, WHAT, problems)
                    .map(count -> new Repeat(
                            node.location(),
                            Optional.of(count),
                            Optional.empty(),
                            Optional.empty(),
                            SettingSteps.NONE));
        }
        return Fields.of(node, CueFields.REPEAT_OBJECT, WHAT, problems).flatMap(fields -> bound(fields, context));
    }

    private static Optional<Repeat> bound(Fields fields, CueContext context) {
        int errorsBefore = context.problems().errorCount();
        Optional<Long> count = fields.given(CueFields.REPEAT_COUNT);
        Optional<ExactTime> until = context.instant(fields, CueFields.REPEAT_UNTIL);
        Optional<ExactTime> every = context.length(fields, CueFields.REPEAT_EVERY);
        SettingSteps change =
                fields.given(CueFields.REPEAT_CHANGE).map(SettingSteps::new).orElse(SettingSteps.NONE);
        boolean known = count.isPresent() != until.isPresent();
        return !known || context.problems().errorCount() > errorsBefore
                ? Optional.empty()
                : Optional.of(new Repeat(fields.location(), count, until, every, change));
    }

    /**
     * How often a cue is played whose first play starts then and lasts so long; nothing if that is too often or too
     * long.
     */
    Optional<Plays> plays(ExactTime at, ExactTime length, CueContext context) {
        ExactTime step = every.orElse(length);
        long plays = count.orElseGet(() -> playsUntil(at, until.orElseThrow(), step));
        if (plays < 1 || plays > MOST) {
            context.problems().error(location, "the cue would be played " + plays + " times", "allowed: 1 to " + MOST);
            return Optional.empty();
        }
        ExactTime cut = until.orElse(context.end());
        ExactTime lastEnd = at.plus(length).plus(step.times(plays - 1));
        if (until.isEmpty() && lastEnd.compareTo(cut) > 0) {
            context.problems()
                    .error(
                            location,
                            "play " + plays + " of the cue ends at " + lastEnd,
                            context.whole() + " ends at " + cut
                                    + "; \"until\" instead of \"count\" cuts the last play");
            return Optional.empty();
        }
        return Optional.of(new Plays(plays, step, cut, change));
    }

    /** How many starts, one every step from the first on, lie before the end: ceil((until - at) / step). */
    private static long playsUntil(ExactTime at, ExactTime until, ExactTime step) {
        ExactTime span = until.minus(at);
        BigInteger steps = BigInteger.valueOf(span.numerator()).multiply(BigInteger.valueOf(step.denominator()));
        BigInteger one = BigInteger.valueOf(span.denominator()).multiply(BigInteger.valueOf(step.numerator()));
        return steps.signum() <= 0
                ? 0
                : steps.add(one).subtract(BigInteger.ONE).divide(one).longValueExact();
    }
}

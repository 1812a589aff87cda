package org.duskloom.engine.timeline;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.document.ValueKind;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.EvenInstants;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.Lapse;

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
        Optional<Lapse> every,
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
        Optional<Lapse> every = context.length(fields, CueFields.REPEAT_EVERY);
        SettingSteps change =
                fields.given(CueFields.REPEAT_CHANGE).map(SettingSteps::new).orElse(SettingSteps.NONE);
        boolean known = count.isPresent() != until.isPresent();
        return !known || context.problems().errorCount() > errorsBefore
                ? Optional.empty()
                : Optional.of(new Repeat(fields.location(), count, until, every, change));
    }

    /**
     * When a cue is played whose first play starts then and lasts so long; nothing if that is too often or too long.
     *
     * @param written whether the cue says how long it lasts, and not only that it goes on until the end
     */
    Optional<Plays> plays(ExactTime at, Lapse length, boolean written, CueContext context) {
        List<Plays.Times> plays = evenTimes(at, length)
                .orElseGet(() -> starts(at, every.orElse(length), context).stream()
                        .map(start -> new Plays.Times(
                                start, start.plus(context.times().lasting(length, start))))
                        .toList());
        ExactTime cut = until.orElse(context.end());
        if (!plays.isEmpty() && until.isEmpty()) {
            ExactTime lastEnd = plays.get(plays.size() - 1).end();
            if (lastEnd.compareTo(cut) > 0) {
                context.problems()
                        .error(
                                location,
                                "play " + plays.size() + " of the cue ends at " + lastEnd,
                                context.whole() + " ends at " + cut + "; "
                                        + (written
                                                ? "\"until\" instead of \"count\" cuts the last play"
                                                : forEach(cut.minus(at))));
                return Optional.empty();
            }
        }
        return plays.isEmpty() ? Optional.empty() : Optional.of(new Plays(plays, cut, change));
    }

    /** What to write where nothing says how long a play is, if all of them have this time: no more than fits. */
    private String forEach(ExactTime all) {
        String open = "without \"for\" each play lasts until then: ";
        long plays = count.orElseThrow();
        if (every.isPresent() && !every.get().isFixed()) {
            return open + "say how long one is";
        }
        ExactTime one = every.isEmpty()
                ? all.times(1, plays)
                : all.minus(every.get().from(ExactTime.ZERO).times(plays - 1));
        long milliseconds = BigInteger.valueOf(one.numerator())
                .multiply(BigInteger.valueOf(1000))
                .divide(BigInteger.valueOf(one.denominator()))
                .longValueExact();
        return open
                + (milliseconds <= 0
                        ? "play it less often"
                        : "say how long one is, at most \"for\": \"" + ExactTime.ofMilliseconds(milliseconds) + "\"");
    }

    /** When the plays start and end where all are as long and as far apart; nothing if there are too many, or one. */
    private Optional<List<Plays.Times>> evenTimes(ExactTime at, Lapse length) {
        Lapse step = every.orElse(length);
        if (!(step instanceof Lapse.Fixed fixed) || !length.isFixed()) {
            return Optional.empty();
        }
        long plays = count.orElseGet(() -> playsUntil(at, until.orElseThrow(), fixed.length()));
        ExactTime each = length.from(at);
        return plays < 2
                        || plays > MOST
                        || EvenInstants.of(at.plus(each), fixed.length(), (int) plays)
                                .isEmpty()
                ? Optional.empty()
                : EvenInstants.of(at, fixed.length(), (int) plays).map(starts -> new EvenTimes(starts, each));
    }

    /** When the plays start; an error if there are none, or too many. */
    private List<ExactTime> starts(ExactTime at, Lapse step, CueContext context) {
        List<ExactTime> starts = new ArrayList<>();
        if (step instanceof Lapse.Fixed fixed) {
            long plays = count.orElseGet(() -> playsUntil(at, until.orElseThrow(), fixed.length()));
            if (plays < 1 || plays > MOST) {
                refuse("played " + plays + " times", context);
                return List.of();
            }
            for (int play = 0; play < plays; play++) {
                starts.add(at.plus(fixed.length().times(play)));
            }
            return starts;
        }
        ExactTime next = at;
        while (count.map(plays -> starts.size() < plays).orElse(true) && isBefore(next, until)) {
            if (starts.size() == MOST) {
                refuse("played more than " + MOST + " times", context);
                return List.of();
            }
            starts.add(next);
            next = next.plus(context.times().lasting(step, next));
        }
        if (starts.isEmpty()) {
            refuse("played 0 times", context);
        }
        return starts;
    }

    private static boolean isBefore(ExactTime instant, Optional<ExactTime> end) {
        return end.isEmpty() || instant.compareTo(end.get()) < 0;
    }

    private void refuse(String what, CueContext context) {
        context.problems().error(location, "the cue would be " + what, "allowed: 1 to " + MOST);
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

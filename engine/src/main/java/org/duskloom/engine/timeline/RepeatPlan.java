package org.duskloom.engine.timeline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.duskloom.engine.document.Expected;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.NumberNode;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.document.Quoted;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.ExactTime;

/**
 * How often a cue is played, how far apart, and what changes from one time to the next.
 *
 * @param count how often; at least 1
 * @param every from one start to the next
 * @param change settings that change: a number is added once per repeat, of a list each repeat takes the next item
 */
record RepeatPlan(int count, ExactTime every, List<Field> change) {
    private static final int MOST = 10_000;

    RepeatPlan {
        change = List.copyOf(change);
    }

    /** The cue played once. */
    static RepeatPlan once(ExactTime length) {
        return new RepeatPlan(1, length, List.of());
    }

    /**
     * Reads a count, or an object of {@code count} or {@code until}, {@code every} and {@code change}.
     *
     * @param at the start of the cue
     * @param length the length of the cue; repeats follow each other without a gap unless {@code every} says otherwise
     */
    static Optional<RepeatPlan> read(Node node, ExactTime at, ExactTime length, CueContext context) {
        Problems problems = context.problems();
        if (node instanceof NumberNode) {
            OptionalLong count = Expected.whole(node, "\"repeat\" of a cue", 1, MOST, problems);
            return count.isPresent()
                    ? Optional.of(new RepeatPlan((int) count.getAsLong(), length, List.of()))
                    : Optional.empty();
        }
        return Fields.of(node, "\"repeat\" of a cue", problems).flatMap(fields -> bound(fields, at, length, context));
    }

    private static Optional<RepeatPlan> bound(Fields fields, ExactTime at, ExactTime length, CueContext context) {
        Problems problems = context.problems();
        Optional<ExactTime> every = fields.has("every") ? context.length(fields, "every") : Optional.of(length);
        OptionalLong count = fields.whole("count", 1, MOST);
        Optional<ExactTime> until = context.instant(fields, "until");
        List<Field> change = fields.fields("change").isPresent()
                ? ((ObjectNode) fields.node("change").orElseThrow()).fields()
                : List.of();
        fields.finish();
        if (fields.has("count") == fields.has("until")) {
            problems.error(
                    fields.location(), "\"repeat\" needs either \"count\" or \"until\"", "such as {\"count\": 4}");
            return Optional.empty();
        }
        if (every.isEmpty() || count.isEmpty() && until.isEmpty()) {
            return Optional.empty();
        }
        long times = count.orElseGet(() -> timesUntil(at, until.orElseThrow(), every.get()));
        if (times < 1 || times > MOST) {
            problems.error(
                    fields.location("until"), "the cue would be played " + times + " times", "allowed: 1 to " + MOST);
            return Optional.empty();
        }
        return Optional.of(new RepeatPlan((int) times, every.get(), change));
    }

    private static long timesUntil(ExactTime at, ExactTime until, ExactTime every) {
        long times = 0;
        ExactTime next = at;
        while (times <= MOST && next.compareTo(until) < 0) {
            times++;
            next = next.plus(every);
        }
        return times;
    }

    /** The settings of one of the repeats, counted from 0. */
    List<Field> changed(List<Field> with, int repeat, Problems problems) {
        List<Field> result = new ArrayList<>(with);
        for (Field step : change) {
            int index = indexOf(result, step.name());
            Node base = index < 0 ? null : result.get(index).value();
            Optional<Node> value = value(step, base, repeat, problems);
            if (value.isPresent() && index >= 0) {
                result.set(index, new Field(step.name(), step.nameLocation(), value.get()));
            } else if (value.isPresent()) {
                result.add(new Field(step.name(), step.nameLocation(), value.get()));
            }
        }
        return result;
    }

    private static Optional<Node> value(Field step, Node base, int repeat, Problems problems) {
        if (step.value() instanceof ListNode list && !list.items().isEmpty()) {
            return Optional.of(list.items().get(repeat % list.items().size()));
        }
        if (step.value() instanceof NumberNode added && base instanceof NumberNode start) {
            double sum = start.value() + repeat * added.value();
            return Optional.of(new NumberNode(start.location(), sum, Double.toString(sum)));
        }
        problems.error(
                step.nameLocation(),
                "the change of " + Quoted.of(step.name()) + " per repeat cannot be made",
                "give a number to add to a plain number in \"with\", or a list of values to go through");
        return Optional.empty();
    }

    private static int indexOf(List<Field> fields, String name) {
        for (int i = 0; i < fields.size(); i++) {
            if (fields.get(i).name().equals(name)) {
                return i;
            }
        }
        return -1;
    }
}

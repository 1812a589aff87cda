package org.duskloom.engine.timeline;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.duskloom.engine.document.Expected;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.NumberNode;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;

/**
 * What changes in the settings of a cue from play to play: a number is added once more each time, of a list each play
 * takes the next item, and after the last the first again. What is added to a setting that is not written goes on top
 * of its default, which only its effect knows.
 *
 * @param steps the changes as written, by the names of the settings
 */
record SettingSteps(List<Field> steps) {
    /** Nothing changes. */
    static final SettingSteps NONE = new SettingSteps(List.of());

    SettingSteps {
        steps = List.copyOf(steps);
    }

    /** What a cue's {@code repeat} says of it, right or wrong; nothing where it does not say anything. */
    static SettingSteps in(Node repeat) {
        return repeat instanceof ObjectNode object
                        && object.value(CueFields.REPEAT_CHANGE.name()).orElse(null) instanceof ObjectNode change
                ? new SettingSteps(change.fields())
                : NONE;
    }

    /** How many plays it takes until every value of every list has had its turn. */
    int playsToSeeAll() {
        return steps.stream()
                .map(Field::value)
                .filter(ListNode.class::isInstance)
                .mapToInt(list -> ((ListNode) list).items().size())
                .reduce(1, Math::max);
    }

    /**
     * The settings of a play.
     *
     * @param with those that are written
     * @param beside what is added to others
     */
    record Changed(List<Field> with, List<Field> beside) {}

    /** The settings of a play, counted from 0. */
    Changed appliedTo(List<Field> with, int play, Problems problems) {
        if (steps.isEmpty()) {
            return new Changed(with, List.of());
        }
        Map<String, Field> changed = new LinkedHashMap<>();
        with.forEach(field -> changed.put(field.name(), field));
        List<Field> beside = new ArrayList<>();
        for (Field step : steps) {
            Field base = changed.get(step.name());
            if (base == null && !(step.value() instanceof ListNode)) {
                beside.add(step.value() instanceof NumberNode added ? valued(step, added.added(0, play)) : step);
            } else {
                value(step, base == null ? null : base.value(), play, problems)
                        .ifPresent(value -> changed.put(step.name(), valued(step, value)));
            }
        }
        return new Changed(List.copyOf(changed.values()), beside);
    }

    private static Field valued(Field step, Node value) {
        return new Field(step.name(), step.nameLocation(), value);
    }

    private static Optional<Node> value(Field step, Node base, int play, Problems problems) {
        if (step.value() instanceof ListNode list && !list.items().isEmpty()) {
            return Optional.of(list.items().get(play % list.items().size()));
        }
        if (step.value() instanceof NumberNode added && base instanceof NumberNode start) {
            return Optional.of(added.added(start.value(), play));
        }
        refuse(step, base, problems);
        return Optional.empty();
    }

    private static boolean isEmpty(Node node) {
        return node instanceof ListNode list && list.items().isEmpty();
    }

    private static void refuse(Field step, Node base, Problems problems) {
        String change = "the change of " + Quoted.of(step.name()) + " per repeat ";
        problems.error(
                step.nameLocation(),
                step.value() instanceof NumberNode added
                        ? change + "adds " + added.written() + " to " + Expected.shown(base)
                        : change + "is " + (isEmpty(step.value()) ? "an empty list" : Expected.shown(step.value())),
                "give a number to add to a plain number, or a list of values to go through");
    }
}

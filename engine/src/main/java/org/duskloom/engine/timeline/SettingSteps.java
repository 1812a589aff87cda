package org.duskloom.engine.timeline;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.NumberNode;
import org.duskloom.engine.document.Quoted;
import org.duskloom.engine.document.ShortestDecimal;
import org.duskloom.engine.problem.Problems;

/**
 * What changes in the settings of a cue from play to play: a number is added once more each time, of a list each play takes
 * the next item, and after the last the first again.
 *
 * @param steps the changes as written, by the names of the settings
 */
record SettingSteps(List<Field> steps) {
    /** Nothing changes. */
    static final SettingSteps NONE = new SettingSteps(List.of());

    SettingSteps {
        steps = List.copyOf(steps);
    }

    /** The settings of a play, counted from 0. */
    List<Field> appliedTo(List<Field> with, int play, Problems problems) {
        Map<String, Field> changed = new LinkedHashMap<>();
        with.forEach(field -> changed.put(field.name(), field));
        for (Field step : steps) {
            Field base = changed.get(step.name());
            value(step, base == null ? null : base.value(), play, problems)
                    .ifPresent(value -> changed.put(step.name(), new Field(step.name(), step.nameLocation(), value)));
        }
        return List.copyOf(changed.values());
    }

    private static Optional<Node> value(Field step, Node base, int play, Problems problems) {
        if (step.value() instanceof ListNode list && !list.items().isEmpty()) {
            return Optional.of(list.items().get(play % list.items().size()));
        }
        if (step.value() instanceof NumberNode added && base instanceof NumberNode start) {
            double sum = start.value() + play * added.value();
            // A number that was refused is NaN and already reported.
            String written = Double.isFinite(sum) ? ShortestDecimal.of(sum) : String.valueOf(sum);
            return Optional.of(new NumberNode(added.location(), sum, written));
        }
        problems.error(
                step.nameLocation(),
                "the change of " + Quoted.of(step.name()) + " per repeat cannot be made",
                "give a number to add to a plain number in \"with\", or a list of values to go through");
        return Optional.empty();
    }
}

package org.duskloom.engine.display;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.duskloom.engine.document.Expected;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.NearestName;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;

/** Reads one item of a {@code build} list: an object with the word of a step and, where wanted, {@code part}. */
final class StepReader {
    private static final String PART = "part";
    private static final String POINTS = "points";
    private static final Map<String, Function<StepFields, Optional<Step>>> READERS = Map.of(
            "ring", RingStep::read,
            "arc", ArcStep::read,
            "line", LineStep::read,
            "polyline", PolylineStep::read,
            "grid", GridStep::read,
            "spokes", SpokesStep::read,
            "helix", HelixStep::read);

    /** The words of all steps, in the order of the reference. */
    static final List<String> WORDS = List.of("ring", "arc", "line", "polyline", "grid", "spokes", "helix", POINTS);

    private final Problems problems;

    StepReader(Problems problems) {
        this.problems = problems;
    }

    /**
     * A step as written.
     *
     * @param word which step it is
     * @param step what it makes
     * @param part the path of the part it makes, if it names one
     * @param location where it stands
     */
    record Written(String word, Step step, Optional<TextNode> part, Location location) {}

    /** The step; nothing if an error was added. */
    Optional<Written> read(Node node, String what) {
        int errorsBefore = problems.errorCount();
        Optional<Written> written = Expected.object(node, what, problems).flatMap(object -> bound(object, what));
        return problems.errorCount() > errorsBefore ? Optional.empty() : written;
    }

    private Optional<Written> bound(ObjectNode object, String what) {
        Fields fields = Fields.of(object, what, problems).orElseThrow();
        Optional<TextNode> part =
                fields.textNode(PART).filter(path -> PartPath.isSound(path.value(), path.location(), problems));
        List<Field> steps = object.fields().stream()
                .filter(field -> WORDS.contains(field.name()))
                .toList();
        if (steps.isEmpty()) {
            reportNone(object, what);
            return Optional.empty();
        }
        if (steps.size() > 1) {
            reportSeveral(steps, what);
        }
        steps.forEach(field -> fields.has(field.name()));
        fields.finish();
        Field first = steps.get(0);
        return step(first).map(step -> new Written(first.name(), step, part, object.location()));
    }

    private Optional<Step> step(Field field) {
        if (field.name().equals(POINTS)) {
            return PointsStep.read(field.value(), problems);
        }
        return Fields.of(field.value(), Quoted.of(field.name()), problems)
                .flatMap(fields -> READERS.get(field.name()).apply(new StepFields(fields, problems)));
    }

    private void reportSeveral(List<Field> steps, String what) {
        problems.error(
                steps.get(1).nameLocation(),
                what + " is both " + Quoted.of(steps.get(0).name()) + " and "
                        + Quoted.of(steps.get(1).name()),
                "make two steps of it, each in its own { }");
    }

    private void reportNone(ObjectNode object, String what) {
        List<Field> others = object.fields().stream()
                .filter(field -> !field.name().equals(PART))
                .toList();
        if (others.isEmpty()) {
            problems.error(object.location(), what + " does not say what it makes", "allowed: " + words());
        }
        for (Field field : others) {
            String near = NearestName.of(field.name(), WORDS)
                    .map(word -> "did you mean \"" + word + "\"? ")
                    .orElse("");
            problems.error(
                    field.nameLocation(), "there is no step " + Quoted.of(field.name()), near + "allowed: " + words());
        }
    }

    private static String words() {
        return String.join(", ", WORDS);
    }
}

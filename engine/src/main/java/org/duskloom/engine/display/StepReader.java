package org.duskloom.engine.display;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.DeclaredObject;
import org.duskloom.engine.document.Expected;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.document.ValueKind;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.NearestName;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;

/** Reads one item of a {@code build} list: an object with the word of a step and, where wanted, {@code part}. */
final class StepReader {
    private static final DeclaredField<TextNode> PART = DeclaredField.optional(
            "part",
            new ValueKind.Text("path of a part"),
            "no part",
            "the part that the pixels of the step form; steps that name the same part share it; lines of a grid, spokes"
                    + " and turns of a helix are numbered parts of it");

    private static final List<Way> WAYS = List.of(
            Way.of(RingStep.FIELDS, "pixels evenly on a circle", RingStep::read),
            Way.of(ArcStep.FIELDS, "pixels evenly on a piece of a circle", ArcStep::read),
            Way.of(LineStep.FIELDS, "pixels evenly on a straight line", LineStep::read),
            Way.of(PolylineStep.FIELDS, "pixels evenly along a line with corners", PolylineStep::read),
            Way.of(GridStep.FIELDS, "pixels in rows and columns", GridStep::read),
            Way.of(SpokesStep.FIELDS, "straight lines of pixels from a middle outwards", SpokesStep::read),
            Way.of(HelixStep.FIELDS, "pixels wound round an upright axis, from the bottom up", HelixStep::read));

    private static final DeclaredField<?>[] WORDS = Stream.concat(
                    WAYS.stream().map(Way::field), Stream.of(PointsStep.FIELD))
            .toArray(DeclaredField[]::new);

    /** An item of {@code build}. */
    static final DeclaredObject STEP = DeclaredObject.of(
                    "build step",
                    Stream.concat(Stream.of(WORDS), Stream.of(PART)).toArray(DeclaredField[]::new))
            .needsOne("make two steps of it, each in its own { }", WORDS);

    private final Problems problems;

    StepReader(Problems problems) {
        this.problems = problems;
    }

    /**
     * One way to make pixels.
     *
     * @param field has the word of the step and holds its fields
     * @param reader makes the step of its fields
     */
    private record Way(DeclaredField<Fields> field, Function<StepFields, Optional<Step>> reader) {
        static Way of(DeclaredObject fields, String meaning, Function<StepFields, Optional<Step>> reader) {
            return new Way(DeclaredField.optional(fields.name(), new ValueKind.Nested(fields), "", meaning), reader);
        }
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
        Optional<Field> first =
                object.fields().stream().filter(field -> isWord(field.name())).findFirst();
        if (first.isEmpty()) {
            reportNone(object, what);
            return Optional.empty();
        }
        Fields fields = Fields.of(object, STEP, what, problems).orElseThrow();
        Optional<TextNode> part =
                fields.given(PART).filter(path -> PartPath.isSound(path.value(), path.location(), problems));
        return step(first.get()).map(step -> new Written(first.get().name(), step, part, object.location()));
    }

    private static boolean isWord(String name) {
        return words().contains(name);
    }

    private Optional<Step> step(Field written) {
        if (written.name().equals(PointsStep.FIELD.name())) {
            return PointsStep.read(written.value(), problems);
        }
        int errorsBefore = problems.errorCount();
        Way way = WAYS.stream()
                .filter(each -> each.field().name().equals(written.name()))
                .findFirst()
                .orElseThrow();
        String what = "\"" + written.name() + "\"";
        return way.field()
                .kind()
                .read(written.value(), what, problems)
                .flatMap(fields -> way.reader().apply(new StepFields(fields, problems, errorsBefore)));
    }

    private void reportNone(ObjectNode object, String what) {
        List<Field> others = object.fields().stream()
                .filter(field -> !field.name().equals(PART.name()))
                .toList();
        String allowed = "allowed: " + String.join(", ", words());
        if (others.isEmpty()) {
            problems.error(object.location(), what + " does not say what it makes", allowed);
        }
        for (Field field : others) {
            String near = NearestName.of(field.name(), words())
                    .map(word -> "did you mean \"" + word + "\"? ")
                    .orElse("");
            problems.error(field.nameLocation(), "there is no step " + Quoted.of(field.name()), near + allowed);
        }
    }

    /** The words of all steps, in the order of the reference. */
    private static List<String> words() {
        return Stream.of(WORDS).map(DeclaredField::name).toList();
    }
}

package org.duskloom.engine.display;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.ValueKind;
import org.duskloom.engine.map.MapReader;
import org.duskloom.engine.problem.Problems;

/**
 * The fields of one step, read as the things that steps are described with. What cannot be read adds an error and
 * gives a sound value in its place, so that the other fields are read too; whether all went well, {@link #sound()}
 * tells.
 */
final class StepFields {
    /** The smallest length that is not nothing. */
    static final double SMALLEST_LENGTH = 0.001;

    static final double LARGEST_LENGTH = MapReader.MAX_COORDINATE;

    static final ValueKind.Number LENGTH = new ValueKind.Number("units", SMALLEST_LENGTH, LARGEST_LENGTH);
    static final ValueKind.Number DISTANCE = new ValueKind.Number("units", 0, LARGEST_LENGTH);
    static final ValueKind.Number DEGREES = new ValueKind.Number("degrees", -3600, 3600);

    static final DeclaredField<Turning> DIRECTION = DeclaredField.of(
            "direction",
            ValueKind.Choice.of(List.of(Turning.values()), Turning::word),
            Turning.COUNTER_CLOCKWISE,
            "which way it goes round; of a helix seen from above");
    static final DeclaredField<Node> CENTRE =
            DeclaredField.written("centre", PointList.PLACE, "[0, 0]", "the middle; of a helix, of its bottom");
    static final DeclaredField<String> PATH = word(
            "path",
            "`\"straight\"`: the wire enters every line at the same end; `\"serpentine\"`: every second one runs back",
            "straight",
            "serpentine");

    private final Fields fields;
    private final Problems problems;
    private final int errorsBefore;

    StepFields(Fields fields, Problems problems, int errorsBefore) {
        this.fields = fields;
        this.problems = problems;
        this.errorsBefore = errorsBefore;
    }

    /** A number of things, which must be given. */
    static DeclaredField<Long> count(String name, int min, int max, String meaning) {
        return DeclaredField.required(name, new ValueKind.Whole("", min, max), meaning);
    }

    /** The angle at which something begins. */
    static DeclaredField<Double> start(String of) {
        return DeclaredField.of("start", DEGREES, 0.0, "angle of " + of + ", counter-clockwise, 0 right, 90 up");
    }

    /** One of some words, the first of which is the default. */
    static DeclaredField<String> word(String name, String meaning, String... words) {
        return DeclaredField.of(
                name, ValueKind.Choice.of(Arrays.asList(words), Function.identity()), words[0], meaning);
    }

    /**
     * A length, or two.
     *
     * @param both what the two are
     */
    static ValueKind.Own lengths(ValueKind.Number kind, String both) {
        return ValueKind.Own.of(
                kind.phrase() + ", or two of them: `[" + both + "]`", kind, new ValueKind.Items(kind, 2, 2, ""));
    }

    /** Whether no error was added so far. */
    boolean sound() {
        return problems.errorCount() == errorsBefore;
    }

    void require(DeclaredField<?> field) {
        fields.require(field);
    }

    boolean has(DeclaredField<?> field) {
        return fields.has(field);
    }

    <T> T value(DeclaredField<T> field) {
        return fields.value(field);
    }

    <T> T value(DeclaredField<T> field, T fallback) {
        return fields.given(field).orElse(fallback);
    }

    /** A number of things; the smallest where it is not given. */
    int count(DeclaredField<Long> field) {
        long smallest = ((ValueKind.Whole) field.kind()).min();
        return value(field, smallest).intValue();
    }

    /** A length above 0. */
    double length(DeclaredField<Double> field) {
        return value(field, 1.0);
    }

    /** Whether the wire snakes. */
    boolean serpentine() {
        return fields.value(PATH).equals("serpentine");
    }

    /** A list of two lengths, or one for both. */
    double[] lengths(DeclaredField<Node> field, ValueKind.Number kind) {
        Optional<Node> node = fields.node(field);
        if (node.filter(ListNode.class::isInstance).isPresent()) {
            return fields.numbers(field, 2, 2, kind.min(), kind.max()).orElse(new double[] {1, 1});
        }
        double both = node.flatMap(written -> kind.read(written, fields.label(field), problems))
                .orElse(1.0);
        return new double[] {both, both};
    }

    /** A place; the zero point where it is not given. */
    Point point(DeclaredField<Node> field) {
        return fields.node(field)
                .flatMap(node -> PointList.point(node, fields.label(field), problems))
                .orElse(Point.ORIGIN);
    }

    /** Several places; none where one of them is wrong. */
    List<Point> points(DeclaredField<Node> field, int atLeast) {
        return fields.node(field)
                .flatMap(node -> PointList.read(node, fields.label(field), atLeast, problems))
                .orElse(List.of());
    }

    /** Adds an error at a field, or at the step where it is absent. */
    void error(DeclaredField<?> field, String message, String hint) {
        problems.error(fields.location(field), message, hint);
    }

    /** The step, if all went well. */
    <T> Optional<T> finish(Supplier<T> step) {
        return sound() ? Optional.of(step.get()) : Optional.empty();
    }
}

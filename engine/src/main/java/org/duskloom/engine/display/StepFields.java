package org.duskloom.engine.display;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.ListNode;
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
    private static final double MOST_DEGREES = 3600;

    private final Fields fields;
    private final Problems problems;
    private final int errorsBefore;

    StepFields(Fields fields, Problems problems) {
        this.fields = fields;
        this.problems = problems;
        this.errorsBefore = problems.errorCount();
    }

    /** Whether no error was added so far. */
    boolean sound() {
        return problems.errorCount() == errorsBefore;
    }

    void require(String... names) {
        fields.require(names);
    }

    boolean has(String name) {
        return fields.has(name);
    }

    /** A whole number; the smallest where it is not given. */
    int count(String name, int min, int max) {
        return (int) fields.whole(name, min, max).orElse(min);
    }

    /** A length above 0. */
    double length(String name) {
        return number(name, SMALLEST_LENGTH, LARGEST_LENGTH, 1);
    }

    double number(String name, double min, double max, double fallback) {
        return fields.number(name, min, max).orElse(fallback);
    }

    /** An angle in degrees; 0, which is to the right, where it is not given. */
    double angle(String name) {
        return number(name, -MOST_DEGREES, MOST_DEGREES, 0);
    }

    /** Which way it goes round; counter-clockwise where it is not given. */
    Turning turning() {
        return Turning.of(word("direction", Turning.words()));
    }

    /** A word; the first of them where none is given. */
    String word(String name, List<String> words) {
        return fields.choice(name, words).orElse(words.get(0));
    }

    /** Whether the wire snakes. */
    boolean serpentine() {
        return word("path", List.of("straight", "serpentine")).equals("serpentine");
    }

    boolean flag(String name) {
        return fields.flag(name).orElse(false);
    }

    /** A list of two lengths, or one for both. */
    double[] lengths(String name, double min) {
        if (fields.node(name).filter(ListNode.class::isInstance).isPresent()) {
            return fields.numbers(name, 2, 2, min, LARGEST_LENGTH).orElse(new double[] {1, 1});
        }
        OptionalDouble both = fields.number(name, min, LARGEST_LENGTH);
        return new double[] {both.orElse(1), both.orElse(1)};
    }

    /** A place; the zero point where it is not given. */
    Point point(String name) {
        return fields.node(name)
                .flatMap(node -> PointList.point(node, label(name), problems))
                .orElse(Point.ORIGIN);
    }

    /** Several places; none where one of them is wrong. */
    List<Point> points(String name, int atLeast) {
        return fields.node(name)
                .flatMap(node -> PointList.read(node, label(name), atLeast, problems))
                .orElse(List.of());
    }

    /** Adds an error at a field, or at the step where there is none of that name. */
    void error(String name, String message, String hint) {
        problems.error(fields.location(name), message, hint);
    }

    /** The step, if all went well and no field is left over. */
    <T> Optional<T> finish(Supplier<T> step) {
        fields.finish();
        return sound() ? Optional.of(step.get()) : Optional.empty();
    }

    private String label(String name) {
        return "\"" + name + "\" of " + fields.what();
    }
}

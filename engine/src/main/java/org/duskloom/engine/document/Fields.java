package org.duskloom.engine.document;

import java.util.List;
import java.util.Optional;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.NearestName;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;

/**
 * One object while it is bound to a record. What it may hold is declared: fields that are not, those that are required
 * and absent, and those that exclude each other are errors as soon as it is opened. A field that is absent gives an
 * empty result or its default; one of a wrong type or out of range adds an error and does the same. Not safe for use by
 * several threads.
 */
public final class Fields {
    private final ObjectNode object;
    private final DeclaredObject declared;
    private final String what;
    private final Problems problems;
    private final FieldsByName byName;

    private Fields(ObjectNode object, DeclaredObject declared, String what, Problems problems) {
        this.object = object;
        this.declared = declared;
        this.what = what;
        this.problems = problems;
        this.byName = new FieldsByName(object.fields());
    }

    /**
     * The fields of an object, which is checked against what is declared of it.
     *
     * @param node the value; anything but an object is an error
     * @param declared what it may hold
     * @param what what the object is, for messages: {@code "a ring"}, {@code "prop \"fence\""}
     * @param problems where errors go
     */
    public static Optional<Fields> of(Node node, DeclaredObject declared, String what, Problems problems) {
        Optional<Fields> fields = Expected.object(node, what, declared::names, problems)
                .map(object -> new Fields(object, declared, what, problems));
        fields.ifPresent(Fields::check);
        return fields;
    }

    /** What the object is, for messages. */
    public String what() {
        return what;
    }

    /** Where the object opens. */
    public Location location() {
        return object.location();
    }

    /** What the field holds; nothing if it is absent or wrong. */
    public <T> Optional<T> given(DeclaredField<T> field) {
        return node(field).flatMap(node -> field.kind().read(node, label(field), problems));
    }

    /** What the field holds; its default if it is absent or wrong. */
    public <T> T value(DeclaredField<T> field) {
        return given(field).orElseGet(field::standard);
    }

    /** What the field holds, as it is written. */
    public Optional<Node> node(DeclaredField<?> field) {
        requireDeclared(field);
        Field written = byName.find(field.name());
        return written == null ? Optional.empty() : Optional.of(written.value());
    }

    /** A list of numbers between the two bounds, with at least and at most so many items. */
    public Optional<double[]> numbers(DeclaredField<?> field, int minCount, int maxCount, double min, double max) {
        return node(field)
                .flatMap(node -> Expected.list(node, label(field), problems))
                .flatMap(list -> Numbers.of(list, label(field), minCount, maxCount, min, max, problems));
    }

    /** Whether the field is there. */
    public boolean has(DeclaredField<?> field) {
        requireDeclared(field);
        return byName.find(field.name()) != null;
    }

    private void requireDeclared(DeclaredField<?> field) {
        if (!declared.fields().contains(field)) {
            throw new IllegalArgumentException(declared.name() + " has no field " + field);
        }
    }

    /**
     * Adds an error for each of the fields that is absent; gives whether all are there. For what is not always
     * required.
     */
    public boolean require(DeclaredField<?>... fields) {
        boolean complete = true;
        for (DeclaredField<?> field : fields) {
            if (!has(field)) {
                complete = false;
                problems.error(
                        object.location(), what + " lacks the field " + Quoted.of(field.name()), insteadOf(field));
            }
        }
        return complete;
    }

    /** Where the field's value starts; where the object opens if it is absent. */
    public Location location(DeclaredField<?> field) {
        return node(field).map(Node::location).orElse(object.location());
    }

    /** What the field is, for messages: {@code "count" of a ring}. */
    public String label(DeclaredField<?> field) {
        return field.labelOf(what);
    }

    /** Whether there is a field that is not declared. */
    public boolean hasUnknown() {
        for (Field field : object.fields()) {
            if (!declared.has(field.name())) {
                return true;
            }
        }
        return false;
    }

    private List<String> unknown() {
        return object.fields().stream()
                .map(Field::name)
                .filter(name -> !declared.has(name))
                .toList();
    }

    private void check() {
        for (DeclaredField<?> field : declared.fields()) {
            if (field.isRequired()) {
                require(field);
            }
        }
        declared.choices().forEach(this::check);
        for (Field field : object.fields()) {
            if (!declared.has(field.name())) {
                problems.error(
                        field.nameLocation(),
                        what + " has no field " + Quoted.of(field.name()),
                        insteadOf(field.name()));
            }
        }
    }

    private void check(DeclaredObject.Choice choice) {
        int count = 0;
        for (DeclaredField<?> field : choice.fields()) {
            count += byName.find(field.name()) == null ? 0 : 1;
        }
        if (count > 1 || count == 0 && choice.needed()) {
            report(choice);
        }
    }

    private void report(DeclaredObject.Choice choice) {
        List<String> names = choice.fields().stream().map(DeclaredField::name).toList();
        List<Field> present = object.fields().stream()
                .filter(field -> names.contains(field.name()))
                .toList();
        if (present.size() > 1) {
            List<String> both =
                    names.stream().filter(name -> byName.find(name) != null).toList();
            problems.error(
                    present.get(1).value().location(), what + " has both " + joined(both, " and "), choice.hint());
        } else {
            problems.error(object.location(), what + " has neither " + joined(names, " nor "), choice.hint());
        }
    }

    private static String joined(List<String> names, String between) {
        return String.join(between, names.stream().map(Quoted::of).toList());
    }

    /** What was probably meant by a name that is not declared. */
    private String insteadOf(String wrong) {
        List<String> free = declared.names().stream()
                .filter(name -> byName.find(name) == null)
                .toList();
        return NearestName.of(wrong, free)
                .map(near -> "did you mean \"" + near + "\"?")
                .orElse("allowed: " + String.join(", ", declared.names()));
    }

    /** What probably was meant for a field that is absent. */
    private String insteadOf(DeclaredField<?> absent) {
        String line = absent.kind() instanceof ValueKind.Format format ? "add " + format.line() : "";
        return NearestName.of(absent.name(), unknown())
                .map(near -> "is " + Quoted.of(near) + " meant for it?")
                .orElse(line);
    }
}

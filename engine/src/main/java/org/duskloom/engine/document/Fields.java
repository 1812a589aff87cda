package org.duskloom.engine.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.NearestName;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;

/**
 * One object while it is bound to a record. Every method that asks for a field remembers its name; {@link #finish()} then
 * turns every field nobody asked for into an error with the nearest name. A field that is absent gives an empty result;
 * one of a wrong type or out of range adds an error and gives an empty result too. {@link #require(String...)} makes
 * absence an error. Not safe for use by several threads.
 */
public final class Fields {
    private final ObjectNode object;
    private final String what;
    private final Problems problems;
    private final Map<String, Field> byName = new LinkedHashMap<>();
    private final Set<String> asked = new LinkedHashSet<>();

    private Fields(ObjectNode object, String what, Problems problems) {
        this.object = object;
        this.what = what;
        this.problems = problems;
        object.fields().forEach(field -> byName.put(field.name(), field));
    }

    /**
     * The fields of an object.
     *
     * @param node the value; anything but an object is an error
     * @param what what the object is, for messages: {@code "a ring"}, {@code "prop \"fence\""}
     * @param problems where errors go
     */
    public static Optional<Fields> of(Node node, String what, Problems problems) {
        return Expected.object(node, what, problems).map(object -> new Fields(object, what, problems));
    }

    /** What the object is, for messages. */
    public String what() {
        return what;
    }

    /** Where the object opens. */
    public Location location() {
        return object.location();
    }

    /** Where the field's value starts; where the object opens if there is no such field. Does not count as asking. */
    public Location location(String name) {
        Field field = byName.get(name);
        return field == null ? object.location() : field.value().location();
    }

    /** Whether the field is there. Counts as asking for it. */
    public boolean has(String name) {
        asked.add(name);
        return byName.containsKey(name);
    }

    /** Adds an error for each of the fields that is absent; gives whether all are there. */
    public boolean require(String... names) {
        boolean complete = true;
        for (String name : names) {
            if (!has(name)) {
                complete = false;
                problems.error(object.location(), what + " lacks the field \"" + name + "\"", misspelt(name));
            }
        }
        return complete;
    }

    /** The value of any type. */
    public Optional<Node> node(String name) {
        return has(name) ? Optional.of(byName.get(name).value()) : Optional.empty();
    }

    /** A text. */
    public Optional<String> text(String name) {
        return textNode(name).map(TextNode::value);
    }

    /** A text with its place. */
    public Optional<TextNode> textNode(String name) {
        return node(name).flatMap(node -> Expected.text(node, label(name), problems));
    }

    /** A number between the two bounds, both allowed. */
    public OptionalDouble number(String name, double min, double max) {
        return node(name)
                .map(node -> Expected.number(node, label(name), min, max, problems))
                .orElse(OptionalDouble.empty());
    }

    /** A whole number between the two bounds, both allowed. */
    public OptionalLong whole(String name, long min, long max) {
        return node(name)
                .map(node -> Expected.whole(node, label(name), min, max, problems))
                .orElse(OptionalLong.empty());
    }

    /** true or false. */
    public Optional<Boolean> flag(String name) {
        return node(name).flatMap(node -> Expected.flag(node, label(name), problems));
    }

    /** One of the words. */
    public Optional<String> choice(String name, List<String> words) {
        return node(name).flatMap(node -> Expected.choice(node, label(name), words, problems));
    }

    /** A list. */
    public Optional<ListNode> list(String name) {
        return node(name).flatMap(node -> Expected.list(node, label(name), problems));
    }

    /** An object, ready to be bound in its turn; its {@code what} is this field's name and this object's. */
    public Optional<Fields> fields(String name) {
        return node(name).flatMap(node -> Fields.of(node, label(name), problems));
    }

    /** A text or a list of texts; items of another type are errors and are left out. */
    public Optional<List<TextNode>> texts(String name) {
        Optional<List<Node>> written = node(name).flatMap(node -> Expected.texts(node, label(name), problems));
        return written.map(items -> {
            List<TextNode> texts = new ArrayList<>();
            items.forEach(item ->
                    Expected.text(item, "an item of " + label(name), problems).ifPresent(texts::add));
            return List.copyOf(texts);
        });
    }

    /** A list of numbers between the two bounds, with at least and at most so many items. */
    public Optional<double[]> numbers(String name, int minCount, int maxCount, double min, double max) {
        return list(name).flatMap(list -> Numbers.of(list, label(name), minCount, maxCount, min, max, problems));
    }

    /** Whether there is a field that was not asked for. */
    public boolean hasUnasked() {
        return !asked.containsAll(byName.keySet());
    }

    /** Turns every field that was not asked for into an error with the nearest name. */
    public void finish() {
        for (Field field : object.fields()) {
            if (!asked.contains(field.name())) {
                List<String> unused =
                        asked.stream().filter(name -> !byName.containsKey(name)).toList();
                String hint = NearestName.of(field.name(), unused)
                        .map(near -> "did you mean \"" + near + "\"?")
                        .orElse("allowed: " + String.join(", ", asked));
                problems.error(field.nameLocation(), what + " has no field " + Quoted.of(field.name()), hint);
            }
        }
    }

    private String label(String name) {
        return "\"" + name + "\" of " + what;
    }

    private String misspelt(String name) {
        return NearestName.of(name, byName.keySet())
                .map(near -> "is " + Quoted.of(near) + " meant for it?")
                .orElse("");
    }
}

package org.duskloom.engine.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.function.Function;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Counted;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.text.ShortestDecimal;

/**
 * What a field may hold. A kind reads a value, says what is allowed, and can be written as a schema; every kind is one
 * of these records.
 *
 * @param <T> what a value is to the reader
 */
public sealed interface ValueKind<T> {
    /**
     * Takes a value as this kind; what is wrong with it is an error, and the result is empty.
     *
     * @param what names the value in messages, as in {@code "count" of a ring}
     */
    Optional<T> read(Node node, String what, Problems problems);

    /** What is allowed, as a phrase for the reference: {@code "number, 0 to 1"}. */
    String phrase();

    /** A value as it would be written in a file. */
    default String written(T value) {
        throw new UnsupportedOperationException(phrase());
    }

    /** The objects whose fields are declared in their turn and that a value may hold. */
    default List<DeclaredObject> objects() {
        return List.of();
    }

    /**
     * A number.
     *
     * @param unit such as {@code "degrees"}; empty where there is none
     * @param min the least that is allowed
     * @param max the greatest that is allowed
     */
    record Number(String unit, double min, double max) implements ValueKind<Double> {
        @Override
        public Optional<Double> read(Node node, String what, Problems problems) {
            OptionalDouble value = Expected.number(node, what, min, max, problems);
            return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
        }

        @Override
        public String phrase() {
            return "number" + range(unit, min, max);
        }

        @Override
        public String written(Double value) {
            return ShortestDecimal.of(value);
        }
    }

    /**
     * A whole number.
     *
     * @param unit such as {@code "pixels"}; empty where there is none
     * @param min the least that is allowed
     * @param max the greatest that is allowed
     */
    record Whole(String unit, long min, long max) implements ValueKind<Long> {
        @Override
        public Optional<Long> read(Node node, String what, Problems problems) {
            OptionalLong value = Expected.whole(node, what, min, max, problems);
            return value.isPresent() ? Optional.of(value.getAsLong()) : Optional.empty();
        }

        @Override
        public String phrase() {
            return "whole number" + range(unit, min, max);
        }

        @Override
        public String written(Long value) {
            return value.toString();
        }
    }

    /** true or false. */
    record Flag() implements ValueKind<Boolean> {
        @Override
        public Optional<Boolean> read(Node node, String what, Problems problems) {
            return Expected.flag(node, what, problems);
        }

        @Override
        public String phrase() {
            return "true or false";
        }

        @Override
        public String written(Boolean value) {
            return value.toString();
        }
    }

    /**
     * One of some words.
     *
     * @param byWord what each word stands for, in the order in which they are listed
     */
    record Choice<T>(Map<String, T> byWord) implements ValueKind<T> {
        /** Words for some choices. */
        public static <T> Choice<T> of(List<T> choices, Function<T, String> word) {
            Map<String, T> byWord = new LinkedHashMap<>();
            choices.forEach(choice -> byWord.put(word.apply(choice), choice));
            return new Choice<>(byWord);
        }

        /** The words, in the order in which they are listed. */
        public List<String> words() {
            return List.copyOf(byWord.keySet());
        }

        @Override
        public Optional<T> read(Node node, String what, Problems problems) {
            return Expected.choice(node, what, words(), problems).map(byWord::get);
        }

        @Override
        public String phrase() {
            return "one of "
                    + String.join(", ", byWord.keySet().stream().map(Quoted::of).toList());
        }

        @Override
        public String written(T value) {
            return byWord.entrySet().stream()
                    .filter(entry -> entry.getValue().equals(value))
                    .map(entry -> Quoted.of(entry.getKey()))
                    .findFirst()
                    .orElseThrow();
        }
    }

    /**
     * A text.
     *
     * @param noun what it is: {@code "name"}
     */
    record Text(String noun) implements ValueKind<TextNode> {
        @Override
        public Optional<TextNode> read(Node node, String what, Problems problems) {
            return Expected.text(node, what, problems);
        }

        @Override
        public String phrase() {
            return noun;
        }
    }

    /**
     * A text or a list of texts; items of another type are errors and are left out.
     *
     * @param noun what each of them is: {@code "address"}
     */
    record Texts(String noun) implements ValueKind<List<TextNode>> {
        @Override
        public Optional<List<TextNode>> read(Node node, String what, Problems problems) {
            Optional<List<Node>> written = Expected.texts(node, what, problems);
            return written.map(items -> {
                List<TextNode> texts = new ArrayList<>();
                items.forEach(item ->
                        Expected.text(item, "an item of " + what, problems).ifPresent(texts::add));
                return List.copyOf(texts);
            });
        }

        @Override
        public String phrase() {
            return noun + ", or a list of them";
        }
    }

    /**
     * The word that says what kind of file this is, and of which version.
     *
     * @param format such as {@code "timeline/1"}
     */
    record Format(String format) implements ValueKind<String> {
        /** The name of the field that holds it. */
        public static final String FIELD = "duskloom";

        /** The field that says it, which must be there. */
        public static DeclaredField<String> field(String format) {
            return DeclaredField.required(FIELD, new Format(format), "what kind of file this is, and of which version");
        }

        /** How the field is written. */
        String line() {
            return Quoted.of(FIELD) + ": " + Quoted.of(format);
        }

        @Override
        public Optional<String> read(Node node, String what, Problems problems) {
            Optional<String> written = Expected.text(node, what, problems).map(TextNode::value);
            if (written.isPresent() && !written.get().equals(format)) {
                problems.error(
                        node.location(), what + " is " + Quoted.of(written.get()), "this version reads " + line());
                return Optional.empty();
            }
            return written;
        }

        @Override
        public String phrase() {
            return Quoted.of(format);
        }
    }

    /**
     * A list, whose items are for the caller to look at.
     *
     * @param item what each item is
     * @param least how many there must be
     * @param most how many there may be
     * @param ifEmpty what to do where there are none but must be some
     */
    record Items(ValueKind<?> item, int least, int most, String ifEmpty) implements ValueKind<ListNode> {
        /** A list of any length. */
        public static Items any(ValueKind<?> item) {
            return new Items(item, 0, Integer.MAX_VALUE, "");
        }

        /** A list that must not be empty. */
        public static Items some(ValueKind<?> item, String ifEmpty) {
            return new Items(item, 1, Integer.MAX_VALUE, ifEmpty);
        }

        @Override
        public Optional<ListNode> read(Node node, String what, Problems problems) {
            Optional<ListNode> list = Expected.list(node, what, problems);
            int count = list.map(ListNode::items).map(List::size).orElse(least);
            if (count == 0 && least > 0) {
                problems.error(node.location(), what + " is empty", ifEmpty);
                return Optional.empty();
            }
            if (count < least || count > most) {
                problems.error(node.location(), what + " has " + Counted.of(count, "item"), "allowed: " + howMany());
                return Optional.empty();
            }
            return list;
        }

        private String howMany() {
            if (most == Integer.MAX_VALUE) {
                return least + " or more";
            }
            return least == most ? String.valueOf(least) : least + " to " + most;
        }

        @Override
        public String phrase() {
            return least <= 1 && most == Integer.MAX_VALUE
                    ? "list; each item: " + item.phrase()
                    : "list of " + howMany() + "; each item: " + item.phrase();
        }

        @Override
        public List<DeclaredObject> objects() {
            return item.objects();
        }
    }

    /**
     * An object whose fields are declared.
     *
     * @param object what it holds
     */
    record Nested(DeclaredObject object) implements ValueKind<Fields> {
        @Override
        public Optional<Fields> read(Node node, String what, Problems problems) {
            return Fields.of(node, object, what, problems);
        }

        @Override
        public String phrase() {
            return "object: " + object.name();
        }

        @Override
        public List<DeclaredObject> objects() {
            return List.of(object);
        }
    }

    /**
     * An object whose fields have names of the user's own.
     *
     * @param noun what a name is the name of: {@code "shape"}
     * @param value what each of them holds
     */
    record Named(String noun, ValueKind<?> value) implements ValueKind<List<Field>> {
        @Override
        public Optional<List<Field>> read(Node node, String what, Problems problems) {
            return Expected.object(node, what, problems).map(ObjectNode::fields);
        }

        @Override
        public String phrase() {
            return "object; for each name of a " + noun + ": " + value.phrase();
        }

        @Override
        public List<DeclaredObject> objects() {
            return value.objects();
        }
    }

    /**
     * What has several forms, or rules of its own: given as it is written, for its own reader.
     *
     * @param phrase what is allowed
     * @param forms the forms that a value may have; empty where they are not known here
     */
    record Own(String phrase, List<ValueKind<?>> forms) implements ValueKind<Node> {
        public Own {
            Objects.requireNonNull(phrase, "phrase");
            forms = List.copyOf(forms);
        }

        /** Something of these forms. */
        public static Own of(String phrase, ValueKind<?>... forms) {
            return new Own(phrase, List.of(forms));
        }

        @Override
        public Optional<Node> read(Node node, String what, Problems problems) {
            return Optional.of(node);
        }

        @Override
        public List<DeclaredObject> objects() {
            return forms.stream().flatMap(form -> form.objects().stream()).toList();
        }
    }

    private static String range(String unit, double min, double max) {
        String of = unit.isEmpty() ? "" : " of " + unit;
        return of + ", " + plain(min) + " to " + plain(max);
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? String.format(Locale.ROOT, "%,d", (long) value) : ShortestDecimal.of(value);
    }
}

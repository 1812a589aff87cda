package org.duskloom.engine.document;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.function.Supplier;
import org.duskloom.engine.problem.NearestName;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.text.ShortestDecimal;

/**
 * Takes a value as the type that is expected. Where it is another type or out of range, an error says what was expected
 * and shows the value corrected if it can be guessed, and the result is empty. {@code what} names the value in
 * messages, as in {@code "count" of a ring}.
 */
public final class Expected {
    /** Several numbers in one text, perhaps in brackets. */
    private static final String NUMBERS =
            "\\s*[(\\[{]?\\s*-?[0-9]+(\\.[0-9]+)?(\\s*[,;]\\s*-?[0-9]+(\\.[0-9]+)?)+\\s*[)\\]}]?\\s*";

    private static final int MOST_NAMES_TOLD = 4;

    private Expected() {}

    /** A text; may be empty. */
    public static Optional<TextNode> text(Node node, String what, Problems problems) {
        return node instanceof TextNode text ? Optional.of(text) : refuse(node, what, "a text", problems);
    }

    /** true or false. */
    public static Optional<Boolean> flag(Node node, String what, Problems problems) {
        return node instanceof FlagNode flag
                ? Optional.of(flag.value())
                : refuse(node, what, "true or false", problems);
    }

    /** A list; may be empty. */
    public static Optional<ListNode> list(Node node, String what, Problems problems) {
        return node instanceof ListNode list ? Optional.of(list) : refuse(node, what, "a list [ ]", problems);
    }

    /** A text or a list of texts; their items are for the caller to look at. */
    public static Optional<List<Node>> texts(Node node, String what, Problems problems) {
        if (node instanceof TextNode) {
            return Optional.of(List.of(node));
        }
        return node instanceof ListNode list
                ? Optional.of(list.items())
                : refuse(node, what, "a text or a list of texts", problems);
    }

    /** An object; may be empty. */
    public static Optional<ObjectNode> object(Node node, String what, Problems problems) {
        return node instanceof ObjectNode object ? Optional.of(object) : refuse(node, what, "an object { }", problems);
    }

    /** An object with fields of these names, few enough to be said where it is none; may be empty. */
    static Optional<ObjectNode> object(Node node, String what, Supplier<List<String>> names, Problems problems) {
        if (node instanceof ObjectNode
                || node instanceof NullNode
                || names.get().size() > MOST_NAMES_TOLD) {
            return object(node, what, problems);
        }
        return refuse(node, what, "an object { }", "its fields are " + String.join(", ", names.get()), problems);
    }

    /**
     * A finite number between the two bounds, both allowed. Of one that was worked out it is enough that it lies there
     * on paper.
     */
    public static OptionalDouble number(Node node, String what, double min, double max, Problems problems) {
        if (!(node instanceof NumberNode number)) {
            refuse(node, what, "a number", max == 1 ? percentIn(node) : "", problems);
            return OptionalDouble.empty();
        }
        if (Double.isNaN(number.value())) {
            return OptionalDouble.empty();
        }
        double value = isWithin(number.value(), min, max) ? number.value() : number.onPaper();
        if (!isWithin(value, min, max)) {
            problems.error(node.location(), what + " is " + number.written(), range("a number", min, max));
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(value);
    }

    private static boolean isWithin(double value, double min, double max) {
        return value >= min && value <= max;
    }

    /** A whole number between the two bounds, both allowed. {@code 3.0} is whole. */
    public static OptionalLong whole(Node node, String what, long min, long max, Problems problems) {
        if (!(node instanceof NumberNode number)) {
            refuse(node, what, "a whole number", problems);
            return OptionalLong.empty();
        }
        if (Double.isNaN(number.value())) {
            return OptionalLong.empty();
        }
        double value = isWholeWithin(number.value(), min, max) ? number.value() : number.onPaper();
        if (!isWholeWithin(value, min, max)) {
            problems.error(node.location(), what + " is " + number.written(), range("a whole number", min, max));
            return OptionalLong.empty();
        }
        return OptionalLong.of((long) value);
    }

    private static boolean isWholeWithin(double value, double min, double max) {
        return isWithin(value, min, max) && value == Math.rint(value);
    }

    /** One of the given words. */
    public static Optional<String> choice(Node node, String what, List<String> words, Problems problems) {
        if (!(node instanceof TextNode text)) {
            return refuse(node, what, "a text", node instanceof NullNode ? "" : allowed(words), problems);
        }
        String word = text.value();
        if (!words.contains(word)) {
            String near = NearestName.of(word, words)
                    .map(name -> "did you mean \"" + name + "\"? ")
                    .orElse("");
            problems.error(node.location(), what + " is " + Quoted.of(word), near + allowed(words));
            return Optional.empty();
        }
        return Optional.of(word);
    }

    private static String allowed(List<String> words) {
        return "allowed: " + String.join(", ", words);
    }

    private static <T> Optional<T> refuse(Node node, String what, String expected, Problems problems) {
        return refuse(node, what, expected, "", problems);
    }

    /** With a correction that is better than those for all, if it is not empty. */
    private static <T> Optional<T> refuse(
            Node node, String what, String expected, String correction, Problems problems) {
        problems.error(
                node.location(),
                what + " must be " + expected + ", not " + shown(node),
                correction.isEmpty() ? correction(node, expected) : correction);
        return Optional.empty();
    }

    /** A value for messages: itself if it is short, else what it is. */
    public static String shown(Node node) {
        if (node instanceof TextNode text) {
            return "the text " + Quoted.of(text.value());
        }
        if (node instanceof NumberNode number) {
            return "the number " + number.written();
        }
        return node instanceof FlagNode flag ? String.valueOf(flag.value()) : node.kind();
    }

    private static String correction(Node node, String expected) {
        if (node instanceof NullNode) {
            return "leave the field out instead";
        }
        if (node instanceof TextNode text && expected.endsWith("number")) {
            return numberIn(text.value().trim(), expected.endsWith("whole number"));
        }
        if (node instanceof TextNode text
                && (text.value().equals("true") || text.value().equals("false"))) {
            return expected.startsWith("true") ? "write " + text.value() + " without quotes" : "";
        }
        if (node instanceof NumberNode number && expected.startsWith("a text")) {
            return "write \"" + number.written() + "\" in quotes";
        }
        if (expected.startsWith("a list")
                && node instanceof TextNode text
                && text.value().matches(NUMBERS)) {
            String numbers = text.value().replaceAll("[\\s()\\[\\]{}]", "").replaceAll("[,;]", ", ");
            return "write [" + numbers + "], without quotes";
        }
        return expected.startsWith("a list") && !(node instanceof ObjectNode) ? "put it in brackets: [ ]" : "";
    }

    /** What a share is as a number, for where 1 is all. */
    private static String percentIn(Node node) {
        if (node instanceof TextNode text && text.value().matches("[0-9]{1,3} ?%")) {
            long percent = Long.parseLong(text.value().replace("%", "").trim());
            return percent <= 100 ? "1 is all: write " + plain(percent / 100.0) + " without quotes" : "";
        }
        return "";
    }

    private static String numberIn(String text, boolean isWhole) {
        if (isWhole && text.matches("-?[0-9]+[.,][0-9]+")) {
            return "write it without decimals and without quotes";
        }
        if (text.matches("-?(0|[1-9][0-9]*)(\\.[0-9]+)?")) {
            return "write " + text + " without quotes";
        }
        if (text.matches("-?[0-9]+,[0-9]+")) {
            return "write " + text.replace(',', '.') + " without quotes; the decimal sign is a dot";
        }
        return text.matches("-?[0-9]+([.,][0-9]+)? ?[\\p{L}\u00b0\"']{1,8}")
                ? "write the number alone, without quotes; its unit is not written here"
                : "";
    }

    static String range(String kind, double min, double max) {
        if (min == Double.NEGATIVE_INFINITY || min == Long.MIN_VALUE) {
            return max == Double.POSITIVE_INFINITY || max == Long.MAX_VALUE
                    ? "allowed: " + kind
                    : "allowed: " + kind + " up to " + plain(max);
        }
        return max == Double.POSITIVE_INFINITY || max == Long.MAX_VALUE
                ? "allowed: " + kind + " from " + plain(min)
                : "allowed: " + kind + " from " + plain(min) + " to " + plain(max);
    }

    private static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e16
                ? String.format(Locale.ROOT, "%.0f", value)
                : ShortestDecimal.of(value);
    }
}

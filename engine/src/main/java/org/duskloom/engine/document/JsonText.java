package org.duskloom.engine.document;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Writes one JSON object (RFC 8259), a field to a line, two spaces deep. A value is a text, a number, true or false, an
 * object or a list of such; an object made by {@link #object} and a list of plain values stay on one line, other lists
 * have an item to a line. All JSON that the program writes is laid out here.
 */
public final class JsonText {
    private static final String INDENT = "  ";

    private final StringBuilder text = new StringBuilder("{");

    /** An object without fields. */
    public JsonText() {}

    /** JSON that stands on one line, already written. */
    public record Inline(String json) {}

    /** An object on one line, from names or declared fields and values in turn. */
    public static Inline object(Object... namesAndValues) {
        StringBuilder json = new StringBuilder("{");
        for (int i = 0; i < namesAndValues.length; i += 2) {
            json.append(i == 0 ? "" : ", ").append(quoted(name(namesAndValues[i])));
            json.append(": ").append(value(namesAndValues[i + 1]));
        }
        return new Inline(json.append('}').toString());
    }

    /** A list on one line. */
    public static Inline list(Object... items) {
        return new Inline(Arrays.stream(items).map(JsonText::value).collect(Collectors.joining(", ", "[", "]")));
    }

    /** Adds a field. */
    public JsonText field(DeclaredField<?> field, Object value) {
        return field(field.name(), value);
    }

    /** Adds a field. */
    public JsonText field(String name, Object value) {
        text.append(text.length() == 1 ? "\n" : ",\n").append(INDENT);
        text.append(quoted(name)).append(": ").append(deeper(value(value)));
        return this;
    }

    /** The object as the text of a file. */
    public String end() {
        return block() + "\n";
    }

    private String block() {
        return text + "\n}";
    }

    private static String name(Object name) {
        return name instanceof DeclaredField<?> field ? field.name() : (String) name;
    }

    /** Line feeds inside texts are escaped, so those that are there are of the layout. */
    private static String deeper(String json) {
        return json.replace("\n", "\n" + INDENT);
    }

    private static String value(Object value) {
        if (value instanceof Inline inline) {
            return inline.json();
        }
        if (value instanceof JsonText object) {
            return object.block();
        }
        if (value instanceof List<?> items) {
            return list(items);
        }
        return value instanceof Number || value instanceof Boolean ? value.toString() : quoted((String) value);
    }

    private static String list(List<?> items) {
        if (items.stream().noneMatch(item -> item instanceof Inline || item instanceof JsonText)) {
            return list(items.toArray()).json();
        }
        String between = ",\n" + INDENT;
        return items.stream()
                .map(item -> deeper(value(item)))
                .collect(Collectors.joining(between, "[\n" + INDENT, "\n]"));
    }

    /** The same JSON with every character beyond ASCII escaped, so that no pipe on the way can spoil it. */
    public static String ascii(String json) {
        StringBuilder escaped = new StringBuilder();
        for (int i = 0; i < json.length(); i++) {
            char c = json.charAt(i);
            if (c > 0x7E) {
                escaped.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
            } else {
                escaped.append(c);
            }
        }
        return escaped.toString();
    }

    /** A text as JSON writes it, in quotes. */
    public static String quoted(String plain) {
        StringBuilder json = new StringBuilder("\"");
        plain.codePoints().forEach(codePoint -> appendEscaped(json, codePoint));
        return json.append('"').toString();
    }

    /** A lone surrogate cannot be written as UTF-8, but it can be escaped. */
    private static void appendEscaped(StringBuilder json, int codePoint) {
        if (codePoint == '"' || codePoint == '\\') {
            json.append('\\').append((char) codePoint);
        } else if (codePoint < 0x20 || Character.getType(codePoint) == Character.SURROGATE) {
            json.append(String.format(Locale.ROOT, "\\u%04x", codePoint));
        } else {
            json.appendCodePoint(codePoint);
        }
    }
}

package org.duskloom.engine.document;

import java.util.List;
import java.util.Locale;

/** Writes one JSON object (RFC 8259), a field to a line, two spaces deep; small objects inside it stay on one line. */
public final class JsonText {
    private final StringBuilder text = new StringBuilder("{");

    /** An object without fields. */
    public JsonText() {}

    /** JSON that stands on one line, already written. */
    public record Inline(String json) {}

    /** An object on one line, from names and values in turn. */
    public static Inline object(Object... namesAndValues) {
        StringBuilder json = new StringBuilder("{");
        for (int i = 0; i < namesAndValues.length; i += 2) {
            json.append(i == 0 ? "" : ", ").append(quoted((String) namesAndValues[i]));
            json.append(": ").append(value(namesAndValues[i + 1]));
        }
        return new Inline(json.append('}').toString());
    }

    /** Adds a field: a text, a whole number or an object. */
    public void field(String name, Object value) {
        text.append(text.length() == 1 ? "\n  " : ",\n  ");
        text.append(quoted(name)).append(": ").append(value(value));
    }

    /** Adds a field: a list, an object to a line. */
    public void field(String name, List<Inline> objects) {
        StringBuilder json = new StringBuilder("[");
        for (Inline object : objects) {
            json.append(json.length() == 1 ? "\n    " : ",\n    ").append(object.json());
        }
        json.append(objects.isEmpty() ? "]" : "\n  ]");
        field(name, new Inline(json.toString()));
    }

    /** Closes the object. */
    public String end() {
        return text.append("\n}\n").toString();
    }

    private static String value(Object value) {
        if (value instanceof Inline inline) {
            return inline.json();
        }
        return value instanceof Number number ? Long.toString(number.longValue()) : quoted((String) value);
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

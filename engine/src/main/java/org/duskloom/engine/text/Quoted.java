package org.duskloom.engine.text;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Shows a piece of an input file inside a message: on one line, control characters escaped, of bearable length. */
public final class Quoted {
    private static final int LONGEST_SHOWN = 60;
    private static final int MOST_SHOWN = 3;

    private Quoted() {}

    /** The text in double quotes; longer than 60 code points it is cut and ends with an ellipsis inside the quotes. */
    public static String of(String text) {
        StringBuilder shown = new StringBuilder("\"");
        int[] points = text.codePoints().limit(LONGEST_SHOWN + 1L).toArray();
        for (int i = 0; i < Math.min(points.length, LONGEST_SHOWN); i++) {
            append(shown, points[i]);
        }
        return shown.append(points.length > LONGEST_SHOWN ? "…\"" : "\"").toString();
    }

    /**
     * The text without quotes and at its full length, hidden characters escaped: what stands on one line of a message,
     * and can do nothing to a terminal.
     */
    public static String plain(String text) {
        if (text.codePoints().noneMatch(Quoted::isHidden)) {
            return text;
        }
        StringBuilder shown = new StringBuilder();
        text.codePoints().forEach(codePoint -> append(shown, codePoint));
        return shown.toString();
    }

    /** Names that may be meant, without quotes, hidden characters escaped; each cut after 60 code points. */
    public static String choices(Collection<String> names) {
        return names.stream()
                .map(Quoted::of)
                .map(quoted -> quoted.substring(1, quoted.length() - 1))
                .collect(Collectors.joining(", "));
    }

    /** The first of some names, each in double quotes, and how many more there are. */
    public static String few(List<String> names) {
        String shown = names.stream().limit(MOST_SHOWN).map(Quoted::of).collect(Collectors.joining(", "));
        return names.size() > MOST_SHOWN ? shown + " and " + (names.size() - MOST_SHOWN) + " more" : shown;
    }

    /** One code point in double quotes, or its number where it cannot be seen; a double quote by itself. */
    public static String ofPoint(int codePoint) {
        if (codePoint == '"') {
            return "a quote \"";
        }
        return isHidden(codePoint) ? escape(codePoint) : "\"" + Character.toString(codePoint) + "\"";
    }

    private static void append(StringBuilder shown, int codePoint) {
        if (isHidden(codePoint)) {
            shown.append(escape(codePoint));
        } else {
            shown.appendCodePoint(codePoint);
        }
    }

    private static boolean isHidden(int codePoint) {
        int type = Character.getType(codePoint);
        return type == Character.CONTROL
                || type == Character.FORMAT
                || type == Character.SURROGATE
                || type == Character.UNASSIGNED
                || type == Character.PRIVATE_USE
                || type == Character.SPACE_SEPARATOR && codePoint != ' '
                || type == Character.LINE_SEPARATOR
                || type == Character.PARAGRAPH_SEPARATOR;
    }

    private static String escape(int codePoint) {
        return String.format(Locale.ROOT, "\\u%04x", codePoint);
    }
}

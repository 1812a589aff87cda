package org.duskloom.engine.show;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.timeline.TimelineFields;

/** A table of places that was given where a timeline or a display is read: who gave it knows no JSON to be missing. */
final class GivenTable {
    private GivenTable() {}

    /** Whether a file is one; then an error says so, and what is done with such a table. */
    static boolean isOne(SourceText source, Problems problems) {
        int start = headerStart(source.text());
        if (isJson(source.text(), start)) {
            return false;
        }
        List<String> columns = columns(source.text(), start);
        boolean isTable = columns.contains("x") && columns.contains("y");
        if (isTable) {
            problems.error(
                    source.locationAt(start),
                    "this is a table, not a timeline or a display",
                    use(columns, Path.of(source.shownName()).getFileName().toString()));
        }
        return isTable;
    }

    /** Where the first line begins that is neither empty nor a note, behind its blanks. */
    private static int headerStart(String text) {
        int start = 0;
        while (start < text.length()) {
            int end = endOfLine(text, start);
            String line = text.substring(start, end);
            String words = line.strip();
            if (!words.isEmpty() && !words.startsWith("#")) {
                return start + line.indexOf(words);
            }
            start = end + 1;
        }
        return text.length();
    }

    /** Whether it begins as JSON does, or a comment in it; its lists of names may hold an x and a y as well. */
    private static boolean isJson(String text, int start) {
        return start == text.length() || "{[/".indexOf(text.charAt(start)) >= 0;
    }

    private static int endOfLine(String text, int start) {
        int end = start;
        while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
            end++;
        }
        return end;
    }

    private static List<String> columns(String text, int start) {
        String line = text.substring(start, endOfLine(text, start)).replace("\"", "");
        return Arrays.stream(line.split("[,;\t]"))
                .map(cell -> cell.strip().toLowerCase(Locale.ROOT))
                .toList();
    }

    private static String use(List<String> columns, String name) {
        if (columns.contains("sure")) {
            return "\"duskloom map DISPLAY.json --from " + name + "\" makes a pixel map of places in a picture";
        }
        return columns.contains("prop")
                ? "it is a pixel map already; a timeline names it: \"" + TimelineFields.MAP.name() + "\": \"" + name
                        + "\""
                : "a timeline or a display starts with {";
    }
}

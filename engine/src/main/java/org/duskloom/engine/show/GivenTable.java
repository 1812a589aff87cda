package org.duskloom.engine.show;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.map.OwnTable;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.timeline.TimelineFields;

/** A table that was given where a timeline or a display is read: who gave it knows no JSON to be missing. */
final class GivenTable {
    private static final String JSON = "a timeline or a display starts with {";

    private static final String SAVE_ANEW =
            "tabs stand between its cells, and a pixel map has commas or semicolons there: save it anew";

    private GivenTable() {}

    /** Whether a file is one; then an error says so, and what is done with such a table. */
    static boolean isOne(SourceText source, Problems problems) {
        int start = headerStart(source.text());
        if (isJson(source.text(), start)) {
            return false;
        }
        List<String> columns = columns(source.text(), start);
        Optional<OwnTable> own = OwnTable.of(columns);
        boolean isTable = columns.contains("x") && columns.contains("y");
        if (own.isPresent()) {
            problems.error(source.locationAt(start), "this is " + own.get().words(), JSON);
        } else if (isTable) {
            boolean hasTabs = headerLine(source.text(), start).indexOf('\t') >= 0;
            String name = Path.of(source.shownName()).getFileName().toString();
            problems.error(
                    source.locationAt(start),
                    "this is a table, not a timeline or a display",
                    hasTabs ? SAVE_ANEW : use(columns, name));
        }
        return isTable || own.isPresent();
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

    private static String headerLine(String text, int start) {
        return text.substring(start, endOfLine(text, start));
    }

    private static List<String> columns(String text, int start) {
        String line = headerLine(text, start).replace("\"", "");
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
                : JSON;
    }
}

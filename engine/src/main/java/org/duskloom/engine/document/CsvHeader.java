package org.duskloom.engine.document;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.duskloom.engine.problem.NearestName;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;

/** Judges the header row of a CSV file. */
final class CsvHeader {
    private static final String SAVE_AS_CSV =
            "save it with commas between the cells and dots in numbers, or with semicolons and commas";

    private CsvHeader() {}

    static boolean check(List<Cell> header, CsvStyle style, Problems problems) {
        if (!beginsAsItShould(header.get(0), style, problems)) {
            return false;
        }
        Optional<String> separator = wrongSeparator(header);
        if (separator.isPresent()) {
            problems.error(
                    header.get(0).location(), "the cells seem to be separated by " + separator.get(), SAVE_AS_CSV);
            return false;
        }
        Optional<Cell> mixed =
                header.stream().filter(cell -> isMixed(cell.text(), style)).findFirst();
        if (mixed.isPresent()) {
            problems.error(
                    mixed.get().location(),
                    "the header has commas and semicolons between its cells",
                    "save it with one of them; with semicolons, the decimal sign is a comma");
            return false;
        }
        if (looksLikeData(header)) {
            // Two equal numbers are no double column: the header is missing, which is said when columns are expected.
            return true;
        }
        Map<String, Cell> first = new HashMap<>();
        boolean distinct = true;
        for (Cell cell : header) {
            Cell before = cell.text().isEmpty() ? null : first.putIfAbsent(key(cell.text()), cell);
            if (before != null) {
                distinct = false;
                String message = "the column " + Quoted.of(cell.text()) + " stands twice in the header";
                problems.error(cell.location(), message, "first at " + before.location());
            }
        }
        return distinct;
    }

    /** Refuses what programs put before a header, and people do not see or take for a part of CSV. */
    private static boolean beginsAsItShould(Cell first, CsvStyle style, Problems problems) {
        if (first.text().startsWith(CsvStyle.BYTE_ORDER_MARK)) {
            problems.error(
                    first.location(),
                    "the file begins with two byte order marks, which no program shows",
                    "type its first cell anew, and save it");
            return false;
        }
        if (key(first.text()).equals("sep=")) {
            problems.error(
                    first.location(),
                    "the line " + Quoted.of(first.text() + style.separator()) + " is no part of CSV",
                    "some spreadsheets write it; remove it, so that the header is the first line");
            return false;
        }
        return true;
    }

    /** Upper and lower case are one in column names. */
    static String key(String name) {
        return name.toLowerCase(Locale.ROOT);
    }

    /** Adds an error for every required column that is missing and every column that is not known. */
    static boolean expect(List<Cell> header, DeclaredObject columns, Problems problems) {
        List<String> required = names(columns, true);
        List<String> optional = names(columns, false);
        if (looksLikeData(header)) {
            problems.error(
                    header.get(0).location(),
                    "the first row holds numbers, so the header row is missing",
                    "put this line before it: " + String.join(",", required)
                            + " (a line that begins with # is a comment)");
            return false;
        }
        List<String> present = header.stream().map(cell -> key(cell.text())).toList();
        String needed = "needed: " + String.join(",", required)
                + (optional.isEmpty() ? "" : "; allowed too: " + String.join(",", optional));
        if (required.size() > 1 && required.stream().noneMatch(present::contains)) {
            String first = header.get(0).text();
            boolean isJson = first.startsWith("{") || first.startsWith("[");
            String message = isJson
                    ? "this is no CSV, it looks like JSON"
                    : "the first line names none of the columns that are needed";
            problems.error(header.get(0).location(), message, (isJson ? "is it the right file? " : "") + needed);
            return false;
        }
        boolean complete = true;
        for (String name : required) {
            if (!present.contains(name)) {
                complete = false;
                problems.error(header.get(0).location(), "the column \"" + name + "\" is missing", needed);
            }
        }
        return refuseUnknown(header, present, required, optional, problems) && complete;
    }

    private static List<String> names(DeclaredObject columns, boolean required) {
        return columns.fields().stream()
                .filter(field -> field.isRequired() == required)
                .map(DeclaredField::name)
                .toList();
    }

    private static boolean refuseUnknown(
            List<Cell> header, List<String> present, List<String> required, List<String> optional, Problems problems) {
        boolean known = true;
        for (Cell cell : header) {
            String name = key(cell.text());
            if (!name.isEmpty() && name.charAt(0) != '#' && !required.contains(name) && !optional.contains(name)) {
                known = false;
                List<String> unused = Stream.concat(required.stream(), optional.stream())
                        .filter(allowed -> !present.contains(allowed))
                        .toList();
                String hint = NearestName.of(name, unused)
                        .map(near -> "did you mean \"" + near + "\"?")
                        .orElse("a column of notes may stay if its name begins with #");
                problems.error(cell.location(), "there is no column " + Quoted.of(cell.text()), hint);
            }
        }
        return known;
    }

    private static boolean looksLikeData(List<Cell> header) {
        return header.stream()
                .anyMatch(cell -> CellNumber.parse(cell.text(), CsvStyle.COMMAS).isPresent());
    }

    /** Notes may have any sign. */
    private static boolean isMixed(String name, CsvStyle style) {
        return style == CsvStyle.COMMAS && name.indexOf(';') >= 0 && !name.startsWith("#");
    }

    private static Optional<String> wrongSeparator(List<Cell> header) {
        String first = header.get(0).text();
        if (header.size() > 1) {
            return Optional.empty();
        }
        if (first.indexOf('\t') >= 0) {
            return Optional.of("tabs");
        }
        return first.indexOf('|') >= 0 ? Optional.of("vertical bars") : Optional.empty();
    }
}

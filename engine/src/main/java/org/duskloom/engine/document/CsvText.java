package org.duskloom.engine.document;

/**
 * Writes cells of CSV (RFC 4180) as {@link CsvReader} reads them back. The printer of Commons CSV is not asked: it also
 * quotes what needs none, such as an empty cell at the start of a row.
 */
public final class CsvText {
    private CsvText() {}

    /**
     * The cell as it stands in a file with commas: in quotes where it holds a comma, a quote or a line end, begins with
     * the sign of a comment, or has blanks round it, which would be dropped.
     */
    public static String cell(String text) {
        return isPlain(text) ? text : '"' + text.replace("\"", "\"\"") + '"';
    }

    /** Appends a row of such cells, which ends with LF. */
    public static void appendRow(StringBuilder rows, String... cells) {
        for (int i = 0; i < cells.length; i++) {
            rows.append(i == 0 ? "" : ",").append(cell(cells[i]));
        }
        rows.append('\n');
    }

    private static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == ',' || c == '"' || c == '\n' || c == '\r') {
                return false;
            }
        }
        return text.isEmpty()
                || text.charAt(0) != '#' && !isBlank(text.charAt(0)) && !isBlank(text.charAt(text.length() - 1));
    }

    /** Both to the parser, which drops what is not above a space, and to rows without quotes. */
    private static boolean isBlank(char c) {
        return c <= ' ' || Character.isWhitespace(c);
    }
}

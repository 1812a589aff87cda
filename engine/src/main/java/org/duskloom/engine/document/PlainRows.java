package org.duskloom.engine.document;

import java.util.Arrays;

/** Cuts rows of CSV that hold no quote into cells. For one thread. */
final class PlainRows {
    private final String text;
    private final char separator;
    private String[] cells = new String[8];
    private int end;

    PlainRows(String text, char separator) {
        this.text = text;
        this.separator = separator;
    }

    /**
     * The cells of the row that starts there, without the blanks round them; null if it holds a quote, or more than
     * {@link CsvReader#MAX_ROW_CHARS} characters.
     */
    String[] read(int start) {
        int count = 0;
        int cellStart = start;
        int most = Math.min(text.length(), start + CsvReader.MAX_ROW_CHARS);
        for (end = start; end < most; end++) {
            char c = text.charAt(end);
            if (c == separator) {
                add(count++, cellStart);
                cellStart = end + 1;
            } else if (c == '\n' || c == '\r') {
                break;
            } else if (c == '"') {
                return null;
            }
        }
        if (end == most && end < text.length()) {
            return null;
        }
        add(count++, cellStart);
        return Arrays.copyOf(cells, count);
    }

    /** Where the line of the row that was read ends. */
    int end() {
        return end;
    }

    private void add(int column, int from) {
        if (column == cells.length) {
            cells = Arrays.copyOf(cells, 2 * column);
        }
        // Names and parts mostly stand in the row above as well: one string of them has its hash code already.
        String above = cells[column];
        if (above == null || above.length() != end - from || !text.startsWith(above, from)) {
            cells[column] = text.substring(from, end).strip();
        }
    }
}

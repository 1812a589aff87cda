package org.duskloom.engine.document;

/**
 * Finds places in CSV text: where a record starts and ends, where its n-th cell starts, and where its quotes are wrong.
 * The values themselves come from the CSV library, which does not say where they stand. Follows RFC 4180 with blanks
 * allowed round a cell and with lines that begin with {@code #} as comments; the separator is that of the style.
 */
final class CsvScan {
    private final String text;
    private final char separator;

    CsvScan(String text, CsvStyle style) {
        this.text = text;
        this.separator = style.separator();
    }

    /**
     * A quote that is wrong.
     *
     * @param opened offset of the opening quote
     * @param noticed offset of the text after the closing quote; -1 if there is no closing quote
     */
    record QuoteFault(int opened, int noticed) {}

    /**
     * The start of the first line from there that is neither empty nor a comment; the text's length if there is none.
     */
    int skipIdleLines(int lineStart) {
        int offset = lineStart;
        while (offset < text.length() && (isLineEnd(offset) || text.charAt(offset) == '#')) {
            offset = nextLine(offset);
        }
        return offset;
    }

    /** The start of the line after the one that holds the offset. */
    int nextLine(int offset) {
        int end = offset;
        while (end < text.length() && !isLineEnd(end)) {
            end++;
        }
        return pastLineEnd(end);
    }

    /** The start of the line after the record that starts there. */
    int nextRecord(int recordStart) {
        int end = cellEnd(recordStart);
        while (end < text.length() && text.charAt(end) == separator) {
            end = cellEnd(end + 1);
        }
        return pastLineEnd(end);
    }

    /** Where the cell's first character stands, its quote counted, blanks before it not. */
    int cellStart(int recordStart, int column) {
        int offset = recordStart;
        for (int i = 0; i < column; i++) {
            int end = cellEnd(offset);
            if (end >= text.length() || text.charAt(end) != separator) {
                return end;
            }
            offset = end + 1;
        }
        return skipBlanks(offset);
    }

    /** The first wrong quote of the record that starts there, or null. */
    QuoteFault quoteFault(int recordStart, int endExclusive) {
        int offset = recordStart;
        while (true) {
            int start = skipBlanks(offset);
            if (start < text.length() && text.charAt(start) == '"') {
                int close = closingQuote(start);
                if (close >= Math.min(endExclusive, text.length())) {
                    return new QuoteFault(start, -1);
                }
                int after = skipBlanks(close + 1);
                if (after < text.length() && text.charAt(after) != separator && !isLineEnd(after)) {
                    return new QuoteFault(start, after);
                }
            }
            int end = cellEnd(offset);
            if (end >= text.length() || text.charAt(end) != separator) {
                return null;
            }
            offset = end + 1;
        }
    }

    /** The offset of the comma or line end after the cell that starts there, or the text's length. */
    private int cellEnd(int cellStart) {
        int offset = skipBlanks(cellStart);
        if (offset < text.length() && text.charAt(offset) == '"') {
            offset = Math.min(closingQuote(offset) + 1, text.length());
        }
        while (offset < text.length() && text.charAt(offset) != separator && !isLineEnd(offset)) {
            offset++;
        }
        return offset;
    }

    /** The offset of the quote that closes the one given, or the text's length. */
    private int closingQuote(int openingQuote) {
        int offset = text.indexOf('"', openingQuote + 1);
        while (offset >= 0 && offset + 1 < text.length() && text.charAt(offset + 1) == '"') {
            offset = text.indexOf('"', offset + 2);
        }
        return offset < 0 ? text.length() : offset;
    }

    private int skipBlanks(int start) {
        int offset = start;
        while (offset < text.length() && Character.isWhitespace(text.charAt(offset)) && !isLineEnd(offset)) {
            offset++;
        }
        return offset;
    }

    private boolean isLineEnd(int offset) {
        return text.charAt(offset) == '\n' || text.charAt(offset) == '\r';
    }

    private int pastLineEnd(int offset) {
        boolean pair = offset + 1 < text.length() && text.charAt(offset) == '\r' && text.charAt(offset + 1) == '\n';
        return Math.min(text.length(), offset + (pair ? 2 : 1));
    }
}

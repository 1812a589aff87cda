package org.duskloom.engine.document;

/**
 * A table as CSV (RFC 4180, but for semicolons), of cells as {@link CsvReader} reads them back; a header row comes
 * first, and lines end with LF. The printer of Commons CSV is not asked: it also quotes what needs none, such as an
 * empty cell at the start of a row.
 */
public final class CsvText {
    private final CsvStyle style;
    private final StringBuilder text = new StringBuilder();

    /**
     * Begins a table.
     *
     * @param header the names of its columns with commas between them, none of which needs quotes
     */
    public CsvText(CsvStyle style, String header) {
        this.style = style;
        text.append(style.start()).append(style.header(header)).append('\n');
    }

    /** Adds a row. */
    public void row(String... cells) {
        for (int i = 0; i < cells.length; i++) {
            if (i > 0) {
                text.append(style.separator());
            }
            text.append(style.cell(cells[i]));
        }
        text.append('\n');
    }

    /** The table so far. */
    @Override
    public String toString() {
        return text.toString();
    }
}

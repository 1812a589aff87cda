package org.duskloom.cli;

/** Lines and tables for a terminal, one after the other. */
final class ReportText {
    private static final int WIDTH = 120;

    private final StringBuilder text = new StringBuilder();

    /** Begins a section, after a line that is empty. */
    void heading(String heading) {
        text.append(System.lineSeparator());
        line(heading);
    }

    /** A long line, broken between words. */
    void broken(String line) {
        TextTable table = new TextTable(WIDTH, 0);
        table.row(line);
        text.append(table.text());
    }

    void line(String line) {
        text.append(line).append(System.lineSeparator());
    }

    /** An empty table, as wide as a line. */
    static TextTable table(int columns) {
        return new TextTable(WIDTH, columns);
    }

    void add(TextTable table) {
        text.append(table.text());
    }

    @Override
    public String toString() {
        return text.toString();
    }
}

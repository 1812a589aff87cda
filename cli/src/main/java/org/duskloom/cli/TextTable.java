package org.duskloom.cli;

import java.util.ArrayList;
import java.util.List;

/** Columns of text side by side, two blanks apart. Some columns give way, and break their cells between words. */
final class TextTable {
    private static final String GAP = "  ";

    /** No column is squeezed further. */
    private static final int NARROWEST = 12;

    private final int width;
    private final int[] yielding;
    private final List<String[]> rows = new ArrayList<>();

    /**
     * @param width how wide it may be in characters
     * @param yielding which columns, from 0, give way when it would be wider
     */
    TextTable(int width, int... yielding) {
        this.width = width;
        this.yielding = yielding;
    }

    /** Adds a row, with as many cells as the others. */
    void row(String... cells) {
        rows.add(cells);
    }

    /** All rows, each line ended. */
    String text() {
        int[] widths = widths();
        StringBuilder text = new StringBuilder();
        for (String[] row : rows) {
            append(text, row, widths);
        }
        return text.toString();
    }

    private int[] widths() {
        int[] widths = new int[rows.get(0).length];
        for (String[] row : rows) {
            for (int column = 0; column < widths.length; column++) {
                widths[column] = Math.max(widths[column], row[column].length());
            }
        }
        int excess = GAP.length() * (widths.length - 1) - width;
        for (int columnWidth : widths) {
            excess += columnWidth;
        }
        for (; excess > 0 && squeeze(widths); excess--) {}
        return widths;
    }

    /** Takes a character from the widest column that gives way. */
    private boolean squeeze(int[] widths) {
        int widest = yielding[0];
        for (int column : yielding) {
            widest = widths[column] > widths[widest] ? column : widest;
        }
        if (widths[widest] <= NARROWEST) {
            return false;
        }
        widths[widest]--;
        return true;
    }

    private static void append(StringBuilder text, String[] row, int[] widths) {
        List<List<String>> cells = new ArrayList<>();
        int lines = 1;
        for (int column = 0; column < row.length; column++) {
            List<String> broken = broken(row[column], widths[column]);
            cells.add(broken);
            lines = Math.max(lines, broken.size());
        }
        for (int line = 0; line < lines; line++) {
            StringBuilder joined = new StringBuilder();
            for (int column = 0; column < row.length; column++) {
                String cell =
                        line < cells.get(column).size() ? cells.get(column).get(line) : "";
                joined.append(cell).append(" ".repeat(Math.max(0, widths[column] - cell.length())));
                joined.append(GAP);
            }
            text.append(joined.toString().stripTrailing()).append(System.lineSeparator());
        }
    }

    /** A word that is longer than the column stays whole and sticks out. */
    private static List<String> broken(String cell, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : cell.split(" ")) {
            if (line.length() > 0 && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}

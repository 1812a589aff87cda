package org.duskloom.engine.display;

import java.util.List;
import java.util.Optional;

/**
 * {@code grid}: pixels in rows and columns.
 *
 * <p>The wire runs along one row after the other, or along one column after the other. Those lines are numbered parts: 1 is the
 * one at the first corner, and all of them run the way the first one does, however the wire snakes.
 *
 * <table>
 * <caption>Fields</caption>
 * <tr><td>{@code rows}, {@code columns}</td><td>how many; required, 1 to 10,000</td></tr>
 * <tr><td>{@code spacing}</td><td>distance between neighbours, one number or {@code [across, up]}; required, above 0</td></tr>
 * <tr><td>{@code corner}</td><td>where the wire begins: {@code "top-left"} (default), {@code "top-right"}, {@code "bottom-left"},
 *     {@code "bottom-right"}</td></tr>
 * <tr><td>{@code along}</td><td>what the wire runs along: {@code "rows"} (default) or {@code "columns"}</td></tr>
 * <tr><td>{@code path}</td><td>{@code "straight"} (default): every line runs the same way; {@code "serpentine"}: every second one
 *     runs back</td></tr>
 * <tr><td>{@code centre}</td><td>the middle of the grid; {@code [0, 0]}</td></tr>
 * </table>
 */
record GridStep(int rows, int columns, double across, double up, Wiring wiring, Point centre) implements Step {
    private static final List<String> CORNERS = List.of("top-left", "top-right", "bottom-left", "bottom-right");

    /** How the wire runs through the grid. */
    record Wiring(String corner, boolean alongColumns, boolean serpentine) {
        /** 1 where columns count from left to right, else -1. */
        int columnSign() {
            return corner.endsWith("left") ? 1 : -1;
        }

        /** 1 where rows count from the bottom to the top, else -1. */
        int rowSign() {
            return corner.startsWith("bottom") ? 1 : -1;
        }
    }

    static Optional<Step> read(StepFields fields) {
        fields.require("rows", "columns", "spacing");
        int rows = fields.count("rows", 1, MOST_LINES);
        int columns = fields.count("columns", 1, MOST_LINES);
        double[] spacing = fields.lengths("spacing", StepFields.SMALLEST_LENGTH);
        String corner = fields.word("corner", CORNERS);
        boolean alongColumns = fields.word("along", List.of("rows", "columns")).equals("columns");
        Wiring wiring = new Wiring(corner, alongColumns, fields.serpentine());
        Point centre = fields.point("centre");
        return fields.finish(() -> new GridStep(rows, columns, spacing[0], spacing[1], wiring, centre));
    }

    @Override
    public long pixelCount() {
        return (long) rows * columns;
    }

    @Override
    public void lay(Strand strand) {
        int lines = wiring.alongColumns() ? columns : rows;
        int perLine = wiring.alongColumns() ? rows : columns;
        for (int line = 0; line < lines; line++) {
            boolean back = wiring.serpentine() && line % 2 == 1;
            int first = strand.size();
            for (int i = 0; i < perLine; i++) {
                int step = back ? perLine - 1 - i : i;
                strand.add(wiring.alongColumns() ? place(step, line) : place(line, step));
            }
            strand.closeLine(first, back);
        }
    }

    /** Row and column count from the first corner. */
    private Point place(int row, int column) {
        double x = wiring.columnSign() * (column - (columns - 1) / 2.0) * across;
        double y = wiring.rowSign() * (row - (rows - 1) / 2.0) * up;
        return new Point(centre.x() + x, centre.y() + y, centre.z());
    }
}

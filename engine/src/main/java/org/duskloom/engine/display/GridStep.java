package org.duskloom.engine.display;

import java.util.Optional;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.DeclaredObject;
import org.duskloom.engine.document.Node;

/**
 * {@code grid}: pixels in rows and columns.
 *
 * <p>The wire runs along one row after the other, or along one column after the other. Those lines are numbered parts:
 * 1 is the one at the first corner, and all of them run the way the first one does, however the wire snakes.
 */
record GridStep(int rows, int columns, double across, double up, Wiring wiring, Point centre) implements Step {
    static final DeclaredField<Long> ROWS = StepFields.count("rows", 1, MOST_LINES, "how many rows");
    static final DeclaredField<Long> COLUMNS = StepFields.count("columns", 1, MOST_LINES, "how many columns");
    static final DeclaredField<Node> SPACING = DeclaredField.required(
            "spacing", StepFields.lengths(StepFields.LENGTH, "across, up"), "distance between neighbours");
    static final DeclaredField<String> CORNER =
            StepFields.word("corner", "where the wire begins", "top-left", "top-right", "bottom-left", "bottom-right");
    static final DeclaredField<String> ALONG =
            StepFields.word("along", "what the wire runs along, one line after the other", "rows", "columns");
    static final DeclaredObject FIELDS =
            DeclaredObject.of("grid", ROWS, COLUMNS, SPACING, CORNER, ALONG, StepFields.PATH, StepFields.CENTRE);

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
        int rows = fields.count(ROWS);
        int columns = fields.count(COLUMNS);
        double[] spacing = fields.lengths(SPACING, StepFields.LENGTH);
        boolean alongColumns = fields.value(ALONG).equals("columns");
        Wiring wiring = new Wiring(fields.value(CORNER), alongColumns, fields.serpentine());
        Point centre = fields.point(StepFields.CENTRE);
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

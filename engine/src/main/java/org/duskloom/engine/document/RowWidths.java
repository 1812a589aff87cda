package org.duskloom.engine.document;

import java.util.LinkedHashMap;
import java.util.Map;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Counted;
import org.duskloom.engine.text.Quoted;

/**
 * The rows of a table that have more or fewer cells than its header. Where many have as many it is one slip, mostly in
 * the header, so that it is told once.
 */
final class RowWidths {
    private final SourceText source;
    private final Cell lastNamed;
    private final int namedColumns;
    private final Map<Integer, Wrong> byWidth = new LinkedHashMap<>();

    /**
     * Counts the rows of a table.
     *
     * @param lastNamed the last cell of the header that is not empty
     * @param namedColumns how many cells the header has up to there
     */
    RowWidths(SourceText source, Cell lastNamed, int namedColumns) {
        this.source = source;
        this.lastNamed = lastNamed;
        this.namedColumns = namedColumns;
    }

    /** Rows of one width: the first, and how many there are. */
    private record Wrong(int start, String hint, int rows) {
        Wrong again() {
            return new Wrong(start, hint, rows + 1);
        }
    }

    /**
     * Notes a row.
     *
     * @param hint what to do about it if it is the only one
     */
    void add(String[] values, int start, String hint) {
        byWidth.compute(values.length, (width, before) -> before == null ? new Wrong(start, hint, 1) : before.again());
    }

    /** Adds an error for each width. */
    void report(Problems problems) {
        byWidth.forEach((width, wrong) -> problems.error(
                source.locationAt(wrong.start()),
                "the row has " + Counted.of(width, "cell") + ", the header in line "
                        + lastNamed.location().line() + " has " + namedColumns
                        + (wrong.rows() > 1 ? ", and so it is with " + Counted.of(wrong.rows() - 1, "more row") : ""),
                wrong.rows() > 1 ? ofMany(width) + wrong.hint() : wrong.hint()));
    }

    /** What is likely where many rows have as many cells: a column that one of both sides does not know of. */
    private String ofMany(int width) {
        if (width + 1 == namedColumns) {
            return "if no row has a cell for " + Quoted.of(lastNamed.text()) + ", take it out of the header; ";
        }
        return width == namedColumns + 1 ? "if the last cell is a note, write #notes at the end of the header; " : "";
    }
}

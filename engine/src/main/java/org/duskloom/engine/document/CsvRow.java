package org.duskloom.engine.document;

import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.text.Quoted;

/** One row of a CSV file. Where its cells stand is worked out only when asked for. */
public final class CsvRow {
    private final CsvTable table;
    private final String[] values;
    private final int start;

    CsvRow(CsvTable table, String[] values, int start) {
        this.table = table;
        this.values = values;
        this.start = start;
    }

    /** The text of the cell in that column, from 0; empty where a column without a name has no cell. */
    public String text(int column) {
        return column < values.length ? values[column] : "";
    }

    /** The cell in that column, from 0. */
    public Cell cell(int column) {
        return new Cell(text(column), location(column));
    }

    /** The row's place as one number, for {@link CsvTable#location(int, int)}; larger for later rows. */
    public int start() {
        return start;
    }

    /** Where the row starts. */
    public Location location() {
        return location(0);
    }

    /** Where the cell in that column starts. */
    public Location location(int column) {
        return table.location(start, column);
    }

    /** The number in that column between the two bounds, both allowed; else an error is added. */
    public OptionalDouble number(int column, double min, double max) {
        OptionalDouble value = CellNumber.parse(text(column), table.style());
        if (value.isEmpty()) {
            table.problems().error(location(column), label(column), CellNumber.hint(text(column), table.style()));
        } else if (!(value.getAsDouble() >= min && value.getAsDouble() <= max)) {
            table.problems().error(location(column), label(column), Expected.range("a number", min, max));
            return OptionalDouble.empty();
        }
        return value;
    }

    /** The number of that kind in that column; else an error is added. */
    public OptionalDouble number(int column, ValueKind.Number kind) {
        return number(column, kind.min(), kind.max());
    }

    /** The whole number of that kind in that column; else an error is added. */
    public OptionalLong whole(int column, ValueKind.Whole kind) {
        return whole(column, kind.min(), kind.max());
    }

    /** The whole number in that column between the two bounds, both allowed; else an error is added. */
    public OptionalLong whole(int column, long min, long max) {
        OptionalDouble value = CellNumber.parse(text(column), table.style());
        if (value.isEmpty()) {
            table.problems().error(location(column), label(column), CellNumber.hint(text(column), table.style()));
            return OptionalLong.empty();
        }
        double number = value.getAsDouble();
        if (number != Math.rint(number) || !(number >= min && number <= max)) {
            table.problems().error(location(column), label(column), Expected.range("a whole number", min, max));
            return OptionalLong.empty();
        }
        return OptionalLong.of((long) number);
    }

    private String label(int column) {
        return Quoted.of(table.header().get(column).text()) + " is " + Quoted.of(text(column));
    }
}

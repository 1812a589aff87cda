package org.duskloom.engine.document;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;

/** A CSV file whose header is read and whose rows are read one by one, so that a million of them need no memory. */
public final class CsvTable {
    private final SourceText source;
    private final CsvScan scan;
    private final List<Cell> header;
    private final int firstRowOffset;
    private final Problems problems;
    private final Map<String, Integer> columns = new HashMap<>();

    CsvTable(SourceText source, CsvScan scan, List<Cell> header, int firstRowOffset, Problems problems) {
        this.source = source;
        this.scan = scan;
        this.header = List.copyOf(header);
        this.firstRowOffset = firstRowOffset;
        this.problems = problems;
        for (int i = 0; i < header.size(); i++) {
            columns.putIfAbsent(CsvHeader.key(header.get(i).text()), i);
        }
    }

    /** The header cells, as written. */
    public List<Cell> header() {
        return header;
    }

    /**
     * Adds an error for every required column that is missing and every column that is neither required nor optional.
     * Columns without a name and columns whose name begins with {@code #} are notes and are left alone.
     *
     * @param required names in small letters
     * @param optional names in small letters
     * @return whether the header is as it should be
     */
    public boolean expectColumns(List<String> required, List<String> optional) {
        return CsvHeader.expect(header, required, optional, problems);
    }

    /** Where the column stands, from 0. Upper and lower case are one. */
    public OptionalInt column(String name) {
        Integer found = columns.get(CsvHeader.key(name));
        return found == null ? OptionalInt.empty() : OptionalInt.of(found);
    }

    /**
     * Reads the rows in the order of the file. A row that has more or fewer cells than the header, or wrong quotes, is an
     * error and is left out. To be called once.
     *
     * @return how many rows were handed over
     */
    public int forEachRow(Consumer<CsvRow> action) {
        int[] count = new int[1];
        CsvReader.forEachRow(this, source, firstRowOffset, problems, row -> {
            count[0]++;
            action.accept(row);
        });
        return count[0];
    }

    Optional<CsvRow> row(String[] values, int start) {
        if (isIdle(values, start)) {
            return Optional.empty();
        }
        if (values.length < header.size() || !isBlank(values, header.size())) {
            problems.error(
                    source.locationAt(start),
                    "the row has " + count(values.length) + ", the header has " + header.size(),
                    widthHint(values));
            return Optional.empty();
        }
        return Optional.of(new CsvRow(this, values, start));
    }

    Location locationAt(int recordStart, int column) {
        return source.locationAt(scan.cellStart(recordStart, column));
    }

    Problems problems() {
        return problems;
    }

    private boolean isIdle(String[] values, int start) {
        int firstCell = scan.cellStart(start, 0);
        return isBlank(values, 0)
                || firstCell < source.text().length() && source.text().charAt(firstCell) == '#';
    }

    private static boolean isBlank(String[] values, int from) {
        for (int i = from; i < values.length; i++) {
            if (!values[i].isEmpty()) {
                return false;
            }
        }
        return true;
    }

    private String widthHint(String[] values) {
        if (values.length < header.size()) {
            return values.length == 1 && values[0].indexOf(';') >= 0
                    ? "the separator is a comma, not a semicolon"
                    : "an empty cell needs its comma too";
        }
        return "a decimal sign is a dot (1.5, not 1,5), and a cell that holds a comma stands in quotes";
    }

    private static String count(int cells) {
        return cells == 1 ? "1 cell" : cells + " cells";
    }
}

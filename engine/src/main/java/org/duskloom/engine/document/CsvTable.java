package org.duskloom.engine.document;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Consumer;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;

/** A CSV file whose header is read and whose rows are read one by one, so that a million of them need no memory. */
public final class CsvTable {
    private static final int MAX_ERRORS = 10_000;

    private final SourceText source;
    private final CsvStyle style;
    private final CsvScan scan;
    private final LineCursor places;
    private final List<Cell> header;
    private final int namedColumns;
    private final int firstRowOffset;
    private final Problems problems;
    private final Map<String, Integer> columns = new HashMap<>();

    CsvTable(
            SourceText source, CsvStyle style, CsvScan scan, List<Cell> header, int firstRowOffset, Problems problems) {
        this.source = source;
        this.style = style;
        this.scan = scan;
        this.places = new LineCursor(source);
        this.header = List.copyOf(header);
        this.firstRowOffset = firstRowOffset;
        this.problems = problems;
        int named = 0;
        for (int i = 0; i < header.size(); i++) {
            named = header.get(i).text().isEmpty() ? named : i + 1;
            columns.putIfAbsent(CsvHeader.key(header.get(i).text()), i);
        }
        this.namedColumns = named;
    }

    /** The header cells, as written. */
    public List<Cell> header() {
        return header;
    }

    /**
     * Adds an error for every required column that is missing and every column that is neither required nor optional.
     * Columns without a name and columns whose name begins with {@code #} are notes and are left alone.
     *
     * @param columns names in small letters, as fields of a row
     * @return whether the header is as it should be
     */
    public boolean expectColumns(DeclaredObject columns) {
        return CsvHeader.expect(header, columns, problems);
    }

    /** Where the column stands, from 0. Upper and lower case are one. */
    public OptionalInt column(DeclaredField<?> column) {
        Integer found = columns.get(CsvHeader.key(column.name()));
        return found == null ? OptionalInt.empty() : OptionalInt.of(found);
    }

    /**
     * Reads the rows in the order of the file. A row that has more or fewer cells than the header, or wrong quotes, is
     * an error and is left out; of rows with as many cells the first is told. After {@value #MAX_ERRORS} errors, the
     * caller's counted, the rest is not read. To be called once.
     *
     * @return whether every row was handed over
     */
    public boolean forEachRow(Consumer<CsvRow> action) {
        boolean[] complete = {true};
        int allowed = problems.errorCount() + MAX_ERRORS;
        RowWidths widths = new RowWidths(source, header.get(Math.max(0, namedColumns - 1)), namedColumns);
        boolean sound = CsvReader.forEachRecord(source, style, firstRowOffset, problems, (values, start) -> {
            if (hasHeadersWidth(values)) {
                action.accept(new CsvRow(this, values, start));
            } else {
                widths.add(values, start, widthHint(values));
                complete[0] = false;
            }
            return mayGoOn(start, allowed);
        });
        widths.report(problems);
        return sound && complete[0] && problems.errorCount() < allowed;
    }

    private boolean mayGoOn(int start, int allowed) {
        if (problems.errorCount() < allowed) {
            return true;
        }
        if (scan.skipIdleLines(scan.nextRecord(start)) < source.text().length()) {
            problems.stopReading(source.locationAt(start));
        }
        return false;
    }

    private boolean hasHeadersWidth(String[] values) {
        boolean enough = values.length >= namedColumns;
        for (int i = header.size(); i < values.length; i++) {
            enough &= values[i].isEmpty();
        }
        return enough;
    }

    /**
     * Where a cell starts.
     *
     * @param rowStart {@link CsvRow#start()} of its row
     * @param column its column, from 0
     */
    public Location location(int rowStart, int column) {
        return places.at(scan.cellStart(rowStart, column));
    }

    /**
     * The lines on which rows start, from 1. Each sign of the file is looked at once where rows come in their order.
     *
     * @param rowStarts {@link CsvRow#start()} of each row
     */
    public int[] lines(int[] rowStarts) {
        LineCursor places = new LineCursor(source);
        return Arrays.stream(rowStarts).map(places::lineAt).toArray();
    }

    CsvStyle style() {
        return style;
    }

    Problems problems() {
        return problems;
    }

    /** Whether the row would have as many cells as the header, were they parted by the other separator. */
    private boolean hasOtherSeparator(String[] values) {
        char other = style.other().separator();
        long found =
                String.join("", values).chars().filter(sign -> sign == other).count();
        return found > 0 && (values.length == 1 || found >= namedColumns - 1);
    }

    private String widthHint(String[] values) {
        if (values.length < namedColumns) {
            return hasOtherSeparator(values)
                    ? style.otherSeparator()
                    : "an empty cell needs its " + style.separatorWord() + " too";
        }
        if (style == CsvStyle.SEMICOLONS) {
            return "a cell that holds a semicolon stands in quotes";
        }
        return "a decimal sign is a dot (1.5, not 1,5), and a cell that holds a comma stands in quotes";
    }
}

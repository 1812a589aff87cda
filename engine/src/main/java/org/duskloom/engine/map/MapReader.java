package org.duskloom.engine.map;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import org.duskloom.engine.document.CsvReader;
import org.duskloom.engine.document.CsvRow;
import org.duskloom.engine.document.CsvTable;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.text.Quoted;

/**
 * Reads a pixel map: CSV with the columns {@code prop,pixel,x,y} and, where wanted, {@code z}, {@code part}, {@code
 * ownx}, {@code owny}, {@code ownz}.
 *
 * <ul>
 *   <li>{@code pixel} counts from 1 within the prop, in wiring order, without gaps. The order of the rows means nothing
 *       but this: the prop that appears first is wired first.
 *   <li>{@code x}, {@code y}, {@code z} are stage coordinates; {@code z} is 0 where it is absent.
 *   <li>{@code part} names the parts that the pixel belongs to, separated by {@code ;} and nested with {@code /}. A
 *       pixel of {@code petals/1} belongs to {@code petals} too. The pixels of a part are in wiring order, unless every
 *       one of them carries its rank in the part: {@code top#3} is the third pixel of {@code top}.
 *   <li>{@code ownx}, {@code owny}, {@code ownz} are the pixel's coordinates in its prop's own axes; without them they
 *       are the stage coordinates. {@code ownz} is 0 where only it is absent.
 * </ul>
 */
public final class MapReader {
    /** The largest coordinate, either way. */
    public static final double MAX_COORDINATE = 1e9;

    private final CsvTable table;
    private final MapColumns columns;
    private final String onlyProp;
    private final Problems problems;
    private final Map<String, PropRows> props = new LinkedHashMap<>();
    private final Set<String> faultyNames = new HashSet<>();
    private final Set<String> faultyPartCells = new HashSet<>();
    private final Map<String, List<PartCell>> partEntries = new HashMap<>();
    private final GrowingPositions stage = new GrowingPositions();
    private final GrowingPositions own = new GrowingPositions();
    private int[] rowStarts = new int[256];
    private boolean allRowsRead;
    private boolean full;

    private MapReader(CsvTable table, MapColumns columns, String onlyProp, Problems problems) {
        this.table = table;
        this.columns = columns;
        this.onlyProp = onlyProp;
        this.problems = problems;
    }

    /**
     * Reads a pixel map.
     *
     * @param source the file
     * @param problems where errors go, and a warning where pixels hang at one place
     * @return the map; in spite of errors too, as far as it could be understood, so that later checks know its names;
     *     nothing if no pixel could be read
     */
    public static Optional<PixelMap> read(SourceText source, Problems problems) {
        if (OwnTable.refusedWithOtherSigns(source, MapColumns.MAKE_MAP, problems)) {
            return Optional.empty();
        }
        return CsvReader.read(source, problems)
                .flatMap(table -> MapColumns.ofMap(table, problems)
                        .flatMap(columns -> new MapReader(table, columns, null, problems).map(source)))
                .map(map -> problems.hasErrors() ? map : Overlaps.warned(map, problems));
    }

    /**
     * Reads the pixels of one shape: {@code pixel,x,y} and, where wanted, {@code z} and {@code part}, in the shape's
     * own axes, which stand in the result as stage and as own positions.
     *
     * @param source the file
     * @param name what the only prop of the result is called
     * @param problems where errors go
     */
    public static Optional<PixelMap> readShape(SourceText source, String name, Problems problems) {
        if (OwnTable.refusedWithOtherSigns(source, MapColumns.SHAPE_COLUMNS, problems)) {
            return Optional.empty();
        }
        return CsvReader.read(source, problems)
                .flatMap(table -> MapColumns.ofShape(table, problems)
                        .flatMap(columns -> new MapReader(table, columns, name, problems).map(source)));
    }

    private Optional<PixelMap> map(SourceText source) {
        int errorsBefore = problems.errorCount();
        allRowsRead = table.forEachRow(this::take) && !full;
        if (stage.size() == 0) {
            if (problems.errorCount() == errorsBefore) {
                problems.error(source.end(), "the file has a header, but no pixels", "add one row for each pixel");
            }
            return Optional.empty();
        }
        return Optional.of(build());
    }

    private void take(CsvRow row) {
        if (full) {
            return;
        }
        PropRows prop = prop(row);
        OptionalLong number = row.whole(columns.pixel(), MapFields.PIXEL_NUMBER);
        double[] position = position(row, columns.x(), columns.y(), columns.z());
        double[] ownPosition =
                columns.hasOwn() ? position(row, columns.ownX(), columns.ownY(), columns.ownZ()) : position;
        if (prop == null) {
            return;
        }
        if (number.isEmpty()) {
            prop.markIncomplete();
            return;
        }
        if (stage.size() == PixelMap.MAX_PIXELS) {
            reportFull(row, PixelMap.MAX_PIXELS + " pixels");
            return;
        }
        prop.add((int) number.getAsLong(), stage.size());
        takeParts(row, prop, (int) number.getAsLong());
        keep(row, position, ownPosition);
    }

    private void keep(CsvRow row, double[] position, double[] ownPosition) {
        if (stage.size() == rowStarts.length) {
            rowStarts = Arrays.copyOf(rowStarts, rowStarts.length * 2);
        }
        rowStarts[stage.size()] = row.start();
        stage.add(position[0], position[1], position[2]);
        if (columns.hasOwn()) {
            own.add(ownPosition[0], ownPosition[1], ownPosition[2]);
        }
    }

    private void reportFull(CsvRow row, String limit) {
        full = true;
        problems.error(
                row.location(),
                "the map holds more than " + limit + ", the rest is not read",
                "split the display into several");
    }

    private PropRows prop(CsvRow row) {
        String name = onlyProp == null ? row.text(columns.prop()) : onlyProp;
        PropRows known = props.get(name);
        if (known != null || faultyNames.contains(name)) {
            return known;
        }
        Optional<String> fault = onlyProp == null ? Names.fault(name) : Optional.empty();
        if (fault.isPresent()) {
            faultyNames.add(name);
            problems.error(row.location(columns.prop()), "the prop name " + Quoted.of(name) + " " + fault.get());
            return null;
        }
        if (props.size() == PixelMap.MAX_PROPS) {
            reportFull(row, PixelMap.MAX_PROPS + " props");
            return null;
        }
        PropRows fresh = new PropRows(name, row.start());
        props.put(name, fresh);
        return fresh;
    }

    private double[] position(CsvRow row, int x, int y, int z) {
        return new double[] {coordinate(row, x), coordinate(row, y), z < 0 ? 0 : coordinate(row, z)};
    }

    private static double coordinate(CsvRow row, int column) {
        OptionalDouble value = row.number(column, MapFields.COORDINATE);
        return value.orElse(0);
    }

    private void takeParts(CsvRow row, PropRows prop, int number) {
        String cell = columns.part() < 0 ? "" : row.text(columns.part());
        if (cell.isEmpty() || faultyPartCells.contains(cell)) {
            return;
        }
        try {
            prop.addParts(partEntries(cell), number, row.start());
        } catch (TextFormatException fault) {
            faultyPartCells.add(cell);
            problems.error(row.location(columns.part()), fault.getMessage(), fault.hint());
        }
    }

    /** Most cells of a column stand in it many times, those with ranks do not. */
    private List<PartCell> partEntries(String cell) throws TextFormatException {
        List<PartCell> known = partEntries.get(cell);
        if (known != null) {
            return known;
        }
        List<PartCell> entries = PartCell.parse(cell);
        if (cell.indexOf('#') < 0) {
            partEntries.put(cell, entries);
        }
        return entries;
    }

    private PixelMap build() {
        List<Prop> built = new ArrayList<>();
        int[] rows = new int[stage.size()];
        int count = 0;
        for (PropRows prop : props.values()) {
            int[] ordered = prop.rowsInOrder(table, columns.pixel(), rowStarts, allRowsRead, problems);
            if (ordered.length > 0) {
                built.add(prop.build(count, table, columns, problems));
                System.arraycopy(ordered, 0, rows, count, ordered.length);
                count += ordered.length;
            }
        }
        int[] used = Arrays.copyOf(rows, count);
        Positions positions = stage.inOrder(used);
        int[] lineOf = table.lines(Arrays.copyOf(rowStarts, stage.size()));
        int[] lines = Arrays.stream(used).map(row -> lineOf[row]).toArray();
        return new PixelMap(built, positions, columns.hasOwn() ? own.inOrder(used) : positions, lines);
    }
}

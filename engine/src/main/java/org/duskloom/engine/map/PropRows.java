package org.duskloom.engine.map;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.duskloom.engine.document.CsvTable;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.problem.TextFormatException;

/** The rows of one prop, while the file is read and when they are put in order. */
final class PropRows {
    private static final int MAX_GAPS_SHOWN = 5;

    /** Null until a pixel belongs to a part: most of many props have none. */
    private PartCollector parts;

    private final String name;
    private final int firstRowStart;
    private boolean complete = true;
    /** Pixel number in the upper half, row number in the lower. */
    private long[] keys = new long[4];

    private int size;

    PropRows(String name, int firstRowStart) {
        this.name = name;
        this.firstRowStart = firstRowStart;
    }

    void add(int number, int row) {
        if (size == keys.length) {
            keys = Arrays.copyOf(keys, size * 2);
        }
        keys[size++] = (long) number << 32 | row;
    }

    void addParts(List<PartCell> entries, int number, int rowStart) throws TextFormatException {
        parts = parts == null ? new PartCollector() : parts;
        parts.add(entries, number, rowStart);
    }

    /** A row of this prop could not be read, so gaps say nothing. */
    void markIncomplete() {
        complete = false;
    }

    /** Rows by pixel number, the first of each number; numbers that stand twice or are left out become errors. */
    int[] rowsInOrder(CsvTable table, int pixelColumn, int[] rowStarts, boolean allRowsRead, Problems problems) {
        Arrays.sort(keys, 0, size);
        long[] kept = new long[size];
        int count = 0;
        int gaps = 0;
        for (int i = 0; i < size; i++) {
            Location place = null;
            int before = count == 0 ? 0 : number(kept[count - 1]);
            if (number(keys[i]) == before) {
                place = table.location(rowStarts[row(keys[i])], pixelColumn);
                reportDouble(place, table.location(rowStarts[row(kept[count - 1])], pixelColumn), before, problems);
                continue;
            }
            if (number(keys[i]) > before + 1 && complete && allRowsRead && gaps++ < MAX_GAPS_SHOWN) {
                place = table.location(rowStarts[row(keys[i])], pixelColumn);
                reportGap(place, before + 1, number(keys[i]) - 1, problems);
            }
            kept[count++] = keys[i];
        }
        keys = Arrays.copyOf(kept, count);
        size = count;
        return Arrays.stream(keys).mapToInt(PropRows::row).toArray();
    }

    /** The prop, after {@link #rowsInOrder}. */
    Prop build(int firstPixel, CsvTable table, MapColumns columns, Problems problems) {
        int[] numbers = Arrays.stream(keys).mapToInt(PropRows::number).toArray();
        List<PartCollector.Fault> faults = new ArrayList<>();
        List<Part> built =
                parts == null ? List.of() : parts.build(number -> Arrays.binarySearch(numbers, number), faults);
        for (PartCollector.Fault fault : faults) {
            problems.error(
                    table.location(fault.rowStart(), columns.part()),
                    fault.message(),
                    "without ranks a part is in wiring order");
        }
        Location definedAt = table.location(firstRowStart, Math.max(columns.prop(), 0));
        return new Prop(name, firstPixel, numbers.length, built, definedAt);
    }

    private void reportDouble(Location place, Location first, int number, Problems problems) {
        problems.error(
                place,
                "pixel " + number + " of \"" + name + "\" stands twice",
                "first at " + first + "; the pixels of a prop are numbered 1, 2, 3 in wiring order");
    }

    private void reportGap(Location place, int from, int to, Problems problems) {
        String missing = from == to ? "pixel " + from : "pixels " + from + " to " + to;
        problems.error(
                place, "\"" + name + "\" lacks " + missing, "the pixels of a prop are numbered 1, 2, 3 without gaps");
    }

    private static int number(long key) {
        return (int) (key >>> 32);
    }

    private static int row(long key) {
        return (int) key;
    }
}

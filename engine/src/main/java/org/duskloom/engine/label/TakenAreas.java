package org.duskloom.engine.label;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What is taken on a sheet, in a grid, so that thousands of labels are laid out quickly. */
final class TakenAreas {
    private final double cell;
    private final Map<Long, List<Area>> taken = new HashMap<>();

    /** @param cell side of a grid cell: about the size of a label */
    TakenAreas(double cell) {
        this.cell = cell;
    }

    void take(Area area) {
        for (long column = index(area.left()); column <= index(area.right()); column++) {
            for (long row = index(area.bottom()); row <= index(area.top()); row++) {
                taken.computeIfAbsent(key(column, row), unseen -> new ArrayList<>())
                        .add(area);
            }
        }
    }

    /** Whether nothing taken meets the area. */
    boolean isFree(Area area) {
        for (long column = index(area.left()); column <= index(area.right()); column++) {
            for (long row = index(area.bottom()); row <= index(area.top()); row++) {
                for (Area other : taken.getOrDefault(key(column, row), List.of())) {
                    if (other.meets(area)) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    private static long key(long column, long row) {
        return column << 32 ^ row & 0xFFFFFFFFL;
    }

    private long index(double value) {
        return (long) Math.floor(value / cell);
    }
}

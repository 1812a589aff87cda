package org.duskloom.engine.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.document.CsvTable;
import org.duskloom.engine.problem.Problems;

/** Where the columns of a pixel map stand, from 0; -1 where one is absent. */
record MapColumns(int prop, int pixel, int x, int y, int z, int part, int ownX, int ownY, int ownZ) {
    private static final List<String> SHAPE = List.of("pixel", "x", "y");
    private static final List<String> SHAPE_OPTIONAL = List.of("z", "part");
    private static final List<String> MAP = List.of("prop", "pixel", "x", "y");
    private static final List<String> MAP_OPTIONAL = List.of("z", "part", "ownx", "owny", "ownz");

    static Optional<MapColumns> ofMap(CsvTable table, Problems problems) {
        if (!table.expectColumns(MAP, MAP_OPTIONAL)) {
            return Optional.empty();
        }
        List<String> own = new ArrayList<>(List.of("ownx", "owny"));
        own.removeIf(name -> table.column(name).isEmpty());
        if (own.size() == 1 || own.isEmpty() && table.column("ownz").isPresent()) {
            problems.error(
                    table.header().get(0).location(),
                    "the columns ownx and owny belong together",
                    "give both, and ownz where props have depth, or none of them");
            return Optional.empty();
        }
        return Optional.of(of(table));
    }

    static Optional<MapColumns> ofShape(CsvTable table) {
        return table.expectColumns(SHAPE, SHAPE_OPTIONAL) ? Optional.of(of(table)) : Optional.empty();
    }

    boolean hasOwn() {
        return ownX >= 0;
    }

    private static MapColumns of(CsvTable table) {
        return new MapColumns(
                at(table, "prop"),
                at(table, "pixel"),
                at(table, "x"),
                at(table, "y"),
                at(table, "z"),
                at(table, "part"),
                at(table, "ownx"),
                at(table, "owny"),
                at(table, "ownz"));
    }

    private static int at(CsvTable table, String name) {
        return table.column(name).orElse(-1);
    }
}

package org.duskloom.engine.map;

import java.util.Optional;
import org.duskloom.engine.document.CsvTable;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.problem.Problems;

/** Where the columns of a pixel map stand, from 0; -1 where one is absent. */
record MapColumns(int prop, int pixel, int x, int y, int z, int part, int ownX, int ownY, int ownZ) {
    static Optional<MapColumns> ofMap(CsvTable table, Problems problems) {
        if (!table.expectColumns(MapFields.MAP)) {
            return Optional.empty();
        }
        boolean hasOwnX = table.column(MapFields.OWN_X).isPresent();
        boolean hasOwnY = table.column(MapFields.OWN_Y).isPresent();
        if (hasOwnX != hasOwnY || !hasOwnX && table.column(MapFields.OWN_Z).isPresent()) {
            problems.error(
                    table.header().get(0).location(),
                    "the columns ownx and owny belong together",
                    "give both, and ownz where props have depth, or none of them");
            return Optional.empty();
        }
        return Optional.of(of(table));
    }

    static Optional<MapColumns> ofShape(CsvTable table) {
        return table.expectColumns(MapFields.SHAPE) ? Optional.of(of(table)) : Optional.empty();
    }

    boolean hasOwn() {
        return ownX >= 0;
    }

    private static MapColumns of(CsvTable table) {
        return new MapColumns(
                at(table, MapFields.PROP),
                at(table, MapFields.PIXEL),
                at(table, MapFields.X),
                at(table, MapFields.Y),
                at(table, MapFields.Z),
                at(table, MapFields.PART),
                at(table, MapFields.OWN_X),
                at(table, MapFields.OWN_Y),
                at(table, MapFields.OWN_Z));
    }

    private static int at(CsvTable table, DeclaredField<?> column) {
        return table.column(column).orElse(-1);
    }
}

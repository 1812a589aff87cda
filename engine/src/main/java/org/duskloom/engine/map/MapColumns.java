package org.duskloom.engine.map;

import java.util.Optional;
import org.duskloom.engine.document.Cell;
import org.duskloom.engine.document.CsvTable;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.problem.Problems;

/** Where the columns of a pixel map stand, from 0; -1 where one is absent. */
record MapColumns(int prop, int pixel, int x, int y, int z, int part, int ownX, int ownY, int ownZ) {
    static final String MAKE_MAP = "\"duskloom map DISPLAY.json -o map.csv\" writes a pixel map";
    static final String SHAPE_COLUMNS = "the pixels of one shape have the columns pixel,x,y";

    static Optional<MapColumns> ofMap(CsvTable table, Problems problems) {
        if (holdsPlacesInPicture(table, problems)
                || OwnTable.refused(table, MAKE_MAP, problems)
                || !table.expectColumns(MapFields.MAP)) {
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

    static Optional<MapColumns> ofShape(CsvTable table, Problems problems) {
        return !holdsPlacesInPicture(table, problems)
                        && !OwnTable.refused(table, SHAPE_COLUMNS, problems)
                        && table.expectColumns(MapFields.SHAPE)
                ? Optional.of(of(table))
                : Optional.empty();
    }

    /** Such a table has all columns of a map, and is upside down. */
    private static boolean holdsPlacesInPicture(CsvTable table, Problems problems) {
        Optional<Cell> sure = table.header().stream()
                .filter(cell -> cell.text().equalsIgnoreCase("sure"))
                .findFirst();
        sure.ifPresent(cell -> problems.error(
                cell.location(),
                "the column \"sure\" says that these are places in a picture, as \"duskloom locate\" writes them, and"
                        + " not on the stage",
                "\"duskloom map DISPLAY.json --from\" makes a pixel map of them; without a display leave out the column,"
                        + " and change the sign of every y, which counts down in a picture"));
        return sure.isPresent();
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

package org.duskloom.effects.kit;

import java.util.List;
import org.duskloom.engine.color.Palette;

/**
 * Any palette, as a table of colours for each piece, with straight lines between its entries: as many as it takes to
 * come within 5e-5 of the palette between them.
 */
final class TableRamp extends Ramp {
    private static final int FEWEST_INTERVALS = 64;
    private static final int MOST_INTERVALS = 1 << 14;

    private final TablePlaces tablePlaces;
    private final float[] tables;
    private final boolean opaque;

    TableRamp(List<PalettePiece> pieces) {
        int[] intervals = pieces.stream().mapToInt(TableRamp::intervals).toArray();
        tablePlaces = new TablePlaces(pieces, intervals);
        tables = new float[tablePlaces.size()];
        for (int i = 0; i < intervals.length; i++) {
            float[] table = TablePlaces.table(pieces.get(i)::at, intervals[i]);
            System.arraycopy(table, 0, tables, tablePlaces.tableStart(i), table.length);
        }
        opaque = isOpaque(pieces.get(0).palette());
    }

    private static int intervals(PalettePiece piece) {
        return isEven(piece) ? 1 : TablePlaces.intervals(piece::at, FEWEST_INTERVALS, MOST_INTERVALS);
    }

    /** Whether it has one colour. */
    static boolean isEven(PalettePiece piece) {
        return piece.width() == 0 || piece.palette().style().stepped();
    }

    static boolean isOpaque(Palette palette) {
        return palette.stops().stream().allMatch(stop -> stop.color().alpha() == 1);
    }

    @Override
    public boolean isOpaque() {
        return opaque;
    }

    @Override
    void fillLight(float[] places, int from, int to, float[] red, float[] green, float[] blue, float[] alpha) {
        tablePlaces.fill(tables, opaque, places, from, to, red, green, blue, alpha);
    }
}

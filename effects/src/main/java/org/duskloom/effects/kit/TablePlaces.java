package org.duskloom.effects.kit;

import java.util.List;
import java.util.function.DoubleFunction;
import org.duskloom.engine.color.LinearColor;

/**
 * Where in tables of colours a place of a palette lies: each piece of the palette has a table, between whose entries
 * the colours go straight. Immutable.
 */
final class TablePlaces {
    static final int CHANNELS = 4;
    private static final int CELLS = 1024;
    private static final double TOLERANCE = 5e-5;

    /** The first float of each piece, then a sentinel above 1. */
    private final float[] starts;
    /** How many table entries one unit of place is. */
    private final float[] entriesPerPlace;

    private final int[] lastInterval;
    /** Where the table of each piece begins, in floats; at last, where all end. */
    private final int[] tableStarts;
    /** The piece that holds the start of each of the cells, which cut [0, 1] evenly. */
    private final int[] pieceOfCell = new int[CELLS + 1];

    /**
     * Places in tables of so many intervals.
     *
     * @param intervals of each piece, at least 1; a table has one entry more
     */
    TablePlaces(List<PalettePiece> pieces, int[] intervals) {
        int count = pieces.size();
        starts = new float[count + 1];
        entriesPerPlace = new float[count];
        lastInterval = new int[count];
        tableStarts = new int[count + 1];
        for (int i = 0; i < count; i++) {
            PalettePiece piece = pieces.get(i);
            starts[i] = piece.firstFloat();
            entriesPerPlace[i] = piece.width() > 0 ? (float) (intervals[i] / piece.width()) : 0;
            lastInterval[i] = intervals[i] - 1;
            tableStarts[i + 1] = tableStarts[i] + (intervals[i] + 1) * CHANNELS;
        }
        starts[count] = Float.POSITIVE_INFINITY;
        for (int cell = 1; cell <= CELLS; cell++) {
            pieceOfCell[cell] = pieceAt((float) cell / CELLS, pieceOfCell[cell - 1]);
        }
    }

    /** How many floats the tables of all pieces have. */
    int size() {
        return tableStarts[starts.length - 1];
    }

    /** Where the table of a piece begins, in floats. */
    int tableStart(int piece) {
        return tableStarts[piece];
    }

    /**
     * Fills planes with the colours at places.
     *
     * @param tables red, green, blue and alpha, premultiplied, of each entry, piece after piece
     * @param places in [0, 1]
     * @param opaque whether alpha is 1 everywhere: then its plane is left as it is
     */
    void fill(
            float[] tables,
            boolean opaque,
            float[] places,
            int from,
            int to,
            float[] red,
            float[] green,
            float[] blue,
            float[] alpha) {
        for (int i = from; i < to; i++) {
            float place = places[i];
            int piece = pieceAt(place, pieceOfCell[(int) (place * CELLS)]);
            float along = (place - starts[piece]) * entriesPerPlace[piece];
            int entry = Math.min(lastInterval[piece], (int) along);
            float share = Math.min(1f, along - entry);
            int at = tableStarts[piece] + entry * CHANNELS;
            red[i] = between(tables[at], tables[at + 4], share);
            green[i] = between(tables[at + 1], tables[at + 5], share);
            blue[i] = between(tables[at + 2], tables[at + 6], share);
            if (!opaque) {
                alpha[i] = between(tables[at + 3], tables[at + 7], share);
            }
        }
    }

    private int pieceAt(float place, int notAfter) {
        int piece = notAfter;
        while (place >= starts[piece + 1]) {
            piece++;
        }
        return piece;
    }

    private static float between(float a, float b, float share) {
        return a * (1f - share) + b * share;
    }

    /**
     * How many intervals, a power of 2, it takes to come within 5e-5 of a way of colours between their ends, from 0 to
     * 1.
     */
    static int intervals(DoubleFunction<LinearColor> way, int fewest, int most) {
        int intervals = fewest;
        while (intervals < most && error(table(way, intervals), table(way, intervals * 4)) > TOLERANCE) {
            intervals *= 2;
        }
        return intervals;
    }

    /** A way of colours as a table, premultiplied. */
    static float[] table(DoubleFunction<LinearColor> way, int intervals) {
        float[] table = new float[(intervals + 1) * CHANNELS];
        for (int entry = 0; entry <= intervals; entry++) {
            LinearColor color = way.apply((double) entry / intervals);
            table[entry * CHANNELS] = color.red() * color.alpha();
            table[entry * CHANNELS + 1] = color.green() * color.alpha();
            table[entry * CHANNELS + 2] = color.blue() * color.alpha();
            table[entry * CHANNELS + 3] = color.alpha();
        }
        return table;
    }

    /** How far the straight lines of a table run from one that is four times as fine. */
    private static double error(float[] table, float[] fine) {
        double error = 0;
        for (int i = 0; i < fine.length; i++) {
            int step = i / CHANNELS;
            int at = Math.min(step / 4, table.length / CHANNELS - 2) * CHANNELS + i % CHANNELS;
            float share = (step - at / CHANNELS * 4) / 4f;
            error = Math.max(error, Math.abs(between(table[at], table[at + CHANNELS], share) - fine[i]));
        }
        return error;
    }
}

package org.duskloom.effects.morph;

import java.util.Arrays;
import org.duskloom.effects.assign.Points;

/**
 * Pixels by cell, to find those near a point at once: equal cubes over the box round all of them, those of a row of
 * cells side by side in memory. Immutable.
 */
final class PixelGrid {
    /** How many cells there may be for each pixel. Beyond, cells are made larger. */
    private static final int MOST_CELLS_PER_PIXEL = 8;

    private static final double LARGER = 1.25;

    /** Rounding must not put a pixel that is just within reach outside of the cells that are looked at. */
    private static final double ROUNDING = 1 + 1e-9;

    /** The pixels' numbers, cell by cell. */
    private final int[] pixels;
    /** Where they are, likewise. */
    private final Spots spots;
    /** Where each cell begins among them; one more for the end. */
    private final int[] cellStarts;
    /** The edges of all cells along each axis, and how many there are. */
    private final Edges columns;

    private final Edges rows;
    private final Edges layers;

    /** The cells along one axis: the lower edge of the first, how many stand in one unit, how many there are. */
    private record Edges(double low, double perUnit, int count) {
        static Edges of(double[] values, int[] numbers, double side) {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (int number : numbers) {
                low = Math.min(low, values[number]);
                high = Math.max(high, values[number]);
            }
            double count = high > low ? Math.floor((high - low) / side) + 1 : 1;
            return new Edges(low, 1 / side, (int) Math.min(Integer.MAX_VALUE, count));
        }

        /** The cell in which a coordinate lies; the nearest if it lies in none. */
        int cell(double value) {
            return Math.max(0, Math.min(count - 1, (int) ((value - low) * perUnit)));
        }
    }

    /**
     * A grid of some pixels.
     *
     * @param all the places of all pixels, by number
     * @param numbers those that the grid is of, none twice, at least one
     * @param leastSide how wide a cell is at least, above 0
     * @param flat whether z is 0 for all of them
     */
    PixelGrid(Points all, int[] numbers, double leastSide, boolean flat) {
        double side = leastSide;
        double most = (double) MOST_CELLS_PER_PIXEL * numbers.length;
        while (cells(all, numbers, side) > most) {
            side *= LARGER;
        }
        columns = Edges.of(all.x(), numbers, side);
        rows = Edges.of(all.y(), numbers, side);
        layers = Edges.of(all.z(), numbers, side);
        cellStarts = new int[columns.count() * rows.count() * layers.count() + 1];
        pixels = sorted(all, numbers);
        spots = Spots.of(all, pixels, flat);
    }

    private static double cells(Points all, int[] numbers, double side) {
        return (double) Edges.of(all.x(), numbers, side).count()
                * Edges.of(all.y(), numbers, side).count()
                * Edges.of(all.z(), numbers, side).count();
    }

    /** Sorts by counting; fills in where cells begin. */
    private int[] sorted(Points all, int[] numbers) {
        int[] cellOf = Arrays.stream(numbers)
                .map(number ->
                        row(rows.cell(all.y()[number]), layers.cell(all.z()[number])) + columns.cell(all.x()[number]))
                .toArray();
        for (int cell : cellOf) {
            cellStarts[cell + 1]++;
        }
        Arrays.parallelPrefix(cellStarts, Integer::sum);
        int[] next = cellStarts.clone();
        int[] sorted = new int[numbers.length];
        for (int i = 0; i < numbers.length; i++) {
            sorted[next[cellOf[i]]++] = numbers[i];
        }
        return sorted;
    }

    /** How many cells there are. */
    int cellCount() {
        return cellStarts.length - 1;
    }

    /** The first cell of a row. */
    private int row(int row, int layer) {
        return (layer * rows.count() + row) * columns.count();
    }

    /** How many pixels there are. */
    int size() {
        return pixels.length;
    }

    /** The number of the pixel at a place in the order of the grid. */
    int pixel(int place) {
        return pixels[place];
    }

    /** Where some of the pixels stand in the order of the grid. */
    int[] ranks(int[] numbers) {
        int[] rankOf = new int[Arrays.stream(pixels).max().orElse(-1) + 1];
        for (int place = 0; place < pixels.length; place++) {
            rankOf[pixels[place]] = place;
        }
        return Arrays.stream(numbers).map(number -> rankOf[number]).toArray();
    }

    /** The square of how far a dot reaches, above 0: without reach it lights the pixel that it is on. */
    static double square(double reach) {
        return Math.max(reach * reach, Double.MIN_NORMAL);
    }

    /** Where the pixels are, in the order of the grid. */
    Spots spots() {
        return spots;
    }

    /**
     * Adds the pixels that a dot meets on its way.
     *
     * @param reach how far it reaches
     */
    void addWithin(Segment way, int dot, double reach, Meetings meetings) {
        double margin = reach * ROUNDING;
        int firstColumn = columns.cell(Math.min(way.x(), way.toX()) - margin);
        int lastColumn = columns.cell(Math.max(way.x(), way.toX()) + margin);
        int firstRow = rows.cell(Math.min(way.y(), way.toY()) - margin);
        int lastRow = rows.cell(Math.max(way.y(), way.toY()) + margin);
        int lastLayer = layers.cell(Math.max(way.z(), way.toZ()) + margin);
        for (int layer = layers.cell(Math.min(way.z(), way.toZ()) - margin); layer <= lastLayer; layer++) {
            for (int row = firstRow; row <= lastRow; row++) {
                int start = row(row, layer);
                int end = cellStarts[start + lastColumn + 1];
                for (int i = cellStarts[start + firstColumn]; i < end; i++) {
                    if (way.squaredDistance(spots, i) <= reach * reach) {
                        meetings.add(dot, i);
                    }
                }
            }
        }
    }

    /**
     * Lights the pixels near dots, each by the level (1 − d²/reach²)², where d is how far it is away.
     *
     * @param count how many dots there are
     * @param frame where they are, and their colours
     * @param reach 0 or more; with 0, those at the very point are lit
     * @param light is turned to this grid
     */
    void shine(int count, DotFrame frame, double reach, Light light) {
        double square = square(reach);
        frame.found.begin(0, 0);
        for (int dot = 0; dot < count; dot++) {
            find(dot, frame, reach * ROUNDING, square, light);
        }
        light.add(frame.found, frame, square);
    }

    private void find(int dot, DotFrame frame, double margin, double square, Light light) {
        double x = frame.spots.x(dot);
        double y = frame.spots.y(dot);
        double z = frame.spots.z(dot);
        int firstColumn = columns.cell(x - margin);
        int lastColumn = columns.cell(x + margin);
        int firstRow = rows.cell(y - margin);
        int lastRow = rows.cell(y + margin);
        int lastLayer = layers.cell(z + margin);
        for (int layer = layers.cell(z - margin); layer <= lastLayer; layer++) {
            for (int row = firstRow; row <= lastRow; row++) {
                int start = row(row, layer);
                int from = cellStarts[start + firstColumn];
                find(from, cellStarts[start + lastColumn + 1], dot, frame, square, light);
            }
        }
    }

    private void find(int from, int to, int dot, DotFrame frame, double square, Light light) {
        Found found = frame.found;
        for (int first = from; first < to; first += Found.BLOCK) {
            if (!found.takes(first, dot)) {
                light.add(found, frame, square);
                found.begin(Math.max(0, first - Found.MOST_APART / 2), dot);
            }
            int end = Math.min(to, first + Found.BLOCK);
            if (spots.isFlat()) {
                findFlat(first, end, dot, frame.spots.plane(), square, found);
            } else {
                find(first, end, dot, frame.spots, square, found);
            }
        }
    }

    private void findFlat(int from, int to, int dot, double[] dots, double square, Found found) {
        double[] pixels = spots.plane();
        double[] squares = found.squares;
        int[] words = found.words;
        int firstPlace = found.firstPlace;
        int dotAbove = dot - found.firstDot;
        int next = found.count;
        for (int i = from; i < to; i++) {
            double distance = Spots.flatSquare(pixels, i, dots, dot);
            squares[next] = distance;
            words[next] = Found.word(i - firstPlace, dotAbove);
            next += Found.isWithin(distance, square);
        }
        found.count = next;
    }

    private void find(int from, int to, int dot, Spots dots, double square, Found found) {
        int next = found.count;
        for (int i = from; i < to; i++) {
            double distance = spots.squaredDistance(i, dots, dot);
            found.squares[next] = distance;
            found.words[next] = Found.word(i - found.firstPlace, dot - found.firstDot);
            next += Found.isWithin(distance, square);
        }
        found.count = next;
    }
}

package org.duskloom.engine.preview;

import java.util.Arrays;

/**
 * How far apart the pixels of a display hang: the median, over a sample, of the distance to the nearest other pixel
 * that does not hang at the same place. Points are sorted into square cells, so that a search looks at few of them.
 */
final class DotSpacing {
    private static final int SAMPLE = 1024;
    private static final double POINTS_PER_CELL = 2;

    private final double[] x;
    private final double[] y;
    private final double left;
    private final double bottom;
    private final double cellSize;
    private final int columns;
    private final int rows;
    private final int[] cellStart;
    private final int[] pointsByCell;

    private DotSpacing(double[] x, double[] y, double width, double height) {
        this.x = x;
        this.y = y;
        this.left = Arrays.stream(x).min().orElse(0);
        this.bottom = Arrays.stream(y).min().orElse(0);
        double cells = Math.max(1, x.length / POINTS_PER_CELL);
        // A display that is a line has no area: it is cut along its length alone.
        this.cellSize = Math.max(Math.sqrt(width / cells) * Math.sqrt(height), Math.max(width, height) / cells);
        this.columns = 1 + (int) (width / cellSize);
        this.rows = 1 + (int) (height / cellSize);
        this.cellStart = new int[columns * rows + 1];
        this.pointsByCell = new int[x.length];
        sortIntoCells();
    }

    /**
     * The median distance, in the unit of the coordinates; 0 if all points are in one place.
     *
     * @param x finite coordinates to the right
     * @param y finite coordinates up, as many
     */
    static double median(double[] x, double[] y) {
        double width = Arrays.stream(x).max().orElse(0) - Arrays.stream(x).min().orElse(0);
        double height =
                Arrays.stream(y).max().orElse(0) - Arrays.stream(y).min().orElse(0);
        if (width == 0 && height == 0) {
            return 0;
        }
        DotSpacing spacing = new DotSpacing(x, y, width, height);
        int sample = Math.min(SAMPLE, x.length);
        double[] distances = new double[sample];
        for (int i = 0; i < sample; i++) {
            distances[i] = spacing.nearest((int) ((long) i * x.length / sample));
        }
        Arrays.sort(distances);
        return distances[sample / 2];
    }

    private void sortIntoCells() {
        for (int i = 0; i < x.length; i++) {
            cellStart[cellOf(i) + 1]++;
        }
        for (int cell = 1; cell < cellStart.length; cell++) {
            cellStart[cell] += cellStart[cell - 1];
        }
        int[] next = cellStart.clone();
        for (int i = 0; i < x.length; i++) {
            pointsByCell[next[cellOf(i)]++] = i;
        }
    }

    private int cellOf(int point) {
        return row(point) * columns + column(point);
    }

    private int column(int point) {
        return Math.min(columns - 1, (int) ((x[point] - left) / cellSize));
    }

    private int row(int point) {
        return Math.min(rows - 1, (int) ((y[point] - bottom) / cellSize));
    }

    /** Looks at the cells round the point's, ring after ring, until what is farther out cannot be nearer. */
    private double nearest(int point) {
        double best = Double.POSITIVE_INFINITY;
        int rings = Math.max(columns, rows);
        for (int ring = 0; ring <= rings && best > (ring - 1) * cellSize; ring++) {
            best = Math.min(best, nearestInRing(point, ring));
        }
        return best;
    }

    private double nearestInRing(int point, int ring) {
        double best = Double.POSITIVE_INFINITY;
        int column = column(point);
        int row = row(point);
        for (int r = Math.max(0, row - ring); r <= Math.min(rows - 1, row + ring); r++) {
            boolean wholeRow = Math.abs(r - row) == ring;
            int step = wholeRow || ring == 0 ? 1 : 2 * ring;
            for (int c = column - ring; c <= column + ring; c += step) {
                if (c >= 0 && c < columns) {
                    best = Math.min(best, nearestInCell(point, r * columns + c));
                }
            }
        }
        return best;
    }

    private double nearestInCell(int point, int cell) {
        double best = Double.POSITIVE_INFINITY;
        for (int k = cellStart[cell]; k < cellStart[cell + 1]; k++) {
            double dx = x[pointsByCell[k]] - x[point];
            double dy = y[pointsByCell[k]] - y[point];
            double distance = Math.sqrt(dx * dx + dy * dy);
            if (distance > 0 && distance < best) {
                best = distance;
            }
        }
        return best;
    }
}

package org.duskloom.engine.label;

import java.util.Arrays;

/**
 * The places of all pixels of a picture, in a grid: what is near an area is found without asking every pixel.
 * Immutable.
 */
public final class PixelField {
    /** Cells that a pixel has on average, at the most. */
    private static final int CELLS_PER_PIXEL = 2;

    private static final int MOST_COMPARED = 5000;

    private final double[] x;
    private final double[] y;
    private final Area box;
    private final double cell;
    private final int columns;
    private final int rows;
    /** Index into {@link #order} of the first pixel of each cell, row after row. */
    private final int[] firstOfCell;

    private final int[] order;

    /** Whether a pixel is what is looked for. */
    @FunctionalInterface
    interface Test {
        boolean holds(int pixel);
    }

    /**
     * Keeps the arrays, which must not be changed.
     *
     * @param x one value per pixel, at least one
     * @param y as many
     */
    public PixelField(double[] x, double[] y) {
        this.x = x;
        this.y = y;
        this.box = boxOf(new Span(0, x.length));
        double longer = Math.max(box.width(), box.height());
        double even = Math.sqrt(box.width() * box.height() / x.length / CELLS_PER_PIXEL);
        this.cell = Math.max(1e-9, Math.max(even, longer / x.length / CELLS_PER_PIXEL));
        this.columns = 1 + (int) (box.width() / cell);
        this.rows = 1 + (int) (box.height() / cell);
        this.firstOfCell = new int[columns * rows + 1];
        this.order = new int[x.length];
        sort();
    }

    private void sort() {
        for (int i = 0; i < x.length; i++) {
            firstOfCell[cellOf(i) + 1]++;
        }
        for (int c = 1; c < firstOfCell.length; c++) {
            firstOfCell[c] += firstOfCell[c - 1];
        }
        int[] next = Arrays.copyOf(firstOfCell, firstOfCell.length);
        for (int i = 0; i < x.length; i++) {
            order[next[cellOf(i)]++] = i;
        }
    }

    private int cellOf(int pixel) {
        return row(y[pixel]) * columns + column(x[pixel]);
    }

    private int column(double value) {
        return (int) Math.max(0, Math.min(columns - 1, Math.floor((value - box.left()) / cell)));
    }

    private int row(double value) {
        return (int) Math.max(0, Math.min(rows - 1, Math.floor((value - box.bottom()) / cell)));
    }

    /** The smallest area that holds the middles of some pixels. */
    public Area boxOf(Span span) {
        Area area = Area.round(x[span.from()], y[span.from()], 0);
        for (int i = span.from() + 1; i < span.toExclusive(); i++) {
            area = area.with(Area.round(x[i], y[i], 0));
        }
        return area;
    }

    /** x of a pixel. */
    public double x(int pixel) {
        return x[pixel];
    }

    /** y of a pixel. */
    public double y(int pixel) {
        return y[pixel];
    }

    /** The smallest area that holds the middles of all. */
    public Area box() {
        return box;
    }

    /** Whether any pixel is nearer to an area than so far. */
    boolean isNear(Area area, double within) {
        return any(area, within, pixel -> true);
    }

    /** Whether a pixel that is not of the span is nearer to an area than so far. */
    boolean isOtherNear(Span own, Area area, double within) {
        return any(area, within, pixel -> !own.has(pixel));
    }

    /** The distance from an area to the nearest pixel of a span, and not more than {@code within}. */
    double distance(Span own, Area area, double within) {
        double[] nearest = {within};
        any(area, within, pixel -> {
            if (own.has(pixel)) {
                nearest[0] = Math.min(nearest[0], area.distanceTo(x[pixel], y[pixel]));
            }
            return false;
        });
        return nearest[0];
    }

    /** The pixel of a span that is nearest to an area; of a very long span one that is about as near. */
    int nearest(Span own, Area area) {
        int nearest = own.from();
        int step = 1 + (own.toExclusive() - own.from()) / MOST_COMPARED;
        for (int i = own.from(); i < own.toExclusive(); i += step) {
            if (area.distanceTo(x[i], y[i]) < area.distanceTo(x[nearest], y[nearest])) {
                nearest = i;
            }
        }
        return nearest;
    }

    /** The pixel that is nearest to another one and nearer than so far; -1 if there is none. */
    public int nearestOther(int pixel, double within) {
        Area point = Area.round(x[pixel], y[pixel], 0);
        int[] nearest = {-1};
        any(point, within, other -> {
            boolean first = nearest[0] < 0;
            if (other != pixel && (first || away(point, other) < away(point, nearest[0]))) {
                nearest[0] = other;
            }
            return false;
        });
        return nearest[0];
    }

    private double away(Area area, int pixel) {
        return area.distanceTo(x[pixel], y[pixel]);
    }

    private boolean any(Area area, double within, Test test) {
        Area reach = area.grown(within);
        if (!(reach.left() <= box.right() && reach.right() >= box.left())
                || !(reach.bottom() <= box.top() && reach.top() >= box.bottom())) {
            return false;
        }
        for (int row = row(reach.bottom()); row <= row(reach.top()); row++) {
            int first = firstOfCell[row * columns + column(reach.left())];
            int end = firstOfCell[row * columns + column(reach.right()) + 1];
            for (int k = first; k < end; k++) {
                int pixel = order[k];
                if (area.distanceTo(x[pixel], y[pixel]) < within && test.holds(pixel)) {
                    return true;
                }
            }
        }
        return false;
    }
}

package org.duskloom.effects.kit.area;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.effect.Canvas;

/**
 * The lights of one member as an area: every light stands in the middle of a cell, and the field is the box round all
 * cells. So a grid of 40 by 12 lights is a field of 40 by 12 cells, and a picture of as many pixels lies on it with one
 * pixel for each light. A light by itself, or several at one place, make one cell of 2 by 2 canvas units.
 *
 * @param centreX the middle of the field
 * @param centreY the middle of the field
 * @param width above 0
 * @param height above 0
 * @param cellWidth how far apart neighbours are that stand side by side
 * @param cellHeight how far apart neighbours are that stand above each other; where there are none in one of the two
 *     ways, or only some that are {@value #FAR} times as far as in the other, as between two rows of lights, cells are
 *     square
 */
public record LightField(
        double centreX, double centreY, double width, double height, double cellWidth, double cellHeight) {
    private static final double LONELY_CELL = 2;
    private static final int FAR = 8;

    /** The fields of the members of a canvas, in their order. */
    static List<LightField> of(Canvas canvas) {
        int[] counts = new int[canvas.memberCount()];
        for (int member : canvas.memberOf()) {
            counts[member]++;
        }
        int[][] pixels = new int[counts.length][];
        for (int member = 0; member < counts.length; member++) {
            pixels[member] = new int[counts[member]];
        }
        for (int pixel = canvas.pixelCount() - 1; pixel >= 0; pixel--) {
            int member = canvas.memberOf()[pixel];
            pixels[member][--counts[member]] = pixel;
        }
        List<LightField> fields = new ArrayList<>();
        for (int[] own : pixels) {
            fields.add(of(canvas, own));
        }
        return fields;
    }

    private static LightField of(Canvas canvas, int[] pixels) {
        double[] x = new double[pixels.length];
        double[] y = new double[pixels.length];
        for (int i = 0; i < pixels.length; i++) {
            x[i] = canvas.x()[pixels[i]];
            y[i] = canvas.y()[pixels[i]];
        }
        return of(x, y);
    }

    /** The field of lights at these places. */
    static LightField of(double[] x, double[] y) {
        Span across = Span.of(x);
        Span up = Span.of(y);
        Spacing spacing = Spacing.of(x, y, Math.max(across.length(), up.length()));
        double cellWidth = spacing.across() < FAR * spacing.up() ? spacing.across() : spacing.up();
        double cellHeight = spacing.up() < FAR * spacing.across() ? spacing.up() : spacing.across();
        if (Double.isInfinite(cellWidth)) {
            return new LightField(across.middle(), up.middle(), LONELY_CELL, LONELY_CELL, LONELY_CELL, LONELY_CELL);
        }
        return new LightField(
                across.middle(),
                up.middle(),
                across.length() + cellWidth,
                up.length() + cellHeight,
                cellWidth,
                cellHeight);
    }

    /** From the least to the greatest of some values; 0 to 0 if there are none. */
    private record Span(double low, double high) {
        static Span of(double[] values) {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (double value : values) {
                low = Math.min(low, value);
                high = Math.max(high, value);
            }
            return values.length == 0 ? new Span(0, 0) : new Span(low, high);
        }

        double length() {
            return high - low;
        }

        double middle() {
            return low + (high - low) / 2;
        }
    }
}

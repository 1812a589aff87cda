package org.duskloom.engine.sheet;

import org.duskloom.engine.display.Shape;
import org.duskloom.engine.label.Area;
import org.duskloom.engine.label.PixelField;

/**
 * A shape as it is seen from one side, in millimetres.
 *
 * @param scaled what it is
 * @param view from which side
 * @param x of every pixel, to the right
 * @param y of every pixel, up
 * @param field the same for laying out labels
 * @param holeRadius of the hole for a pixel
 */
record Outline(ScaledShape scaled, View view, double[] x, double[] y, PixelField field, double holeRadius) {
    static Outline of(ScaledShape scaled, double millimetresPerUnit, View view, SheetOptions options) {
        Shape shape = scaled.shape();
        double millimetres = millimetresPerUnit * scaled.scale();
        int count = shape.pixelCount();
        double[] x = new double[count];
        double[] y = new double[count];
        for (int i = 0; i < count; i++) {
            x[i] = view.sign() * shape.pixels().x(i) * millimetres;
            y[i] = shape.pixels().y(i) * millimetres;
        }
        return new Outline(scaled, view, x, y, new PixelField(x, y), options.holeMm() / 2);
    }

    int count() {
        return x.length;
    }

    /** What the middles of the pixels take. */
    Area box() {
        return field.box();
    }

    /** What the holes take. */
    Area outerBox() {
        return box().grown(holeRadius);
    }

    /**
     * The direction in which the number of a pixel stands best, in turns counter-clockwise from the right: away from
     * its neighbours on the wire; across the wire where that is straight, on the side that is away from the middle.
     */
    double outwardTurns(int pixel) {
        int before = Math.max(0, pixel - 1);
        int after = Math.min(x.length - 1, pixel + 1);
        double awayX = 2 * x[pixel] - x[before] - x[after];
        double awayY = 2 * y[pixel] - y[before] - y[after];
        double alongX = x[after] - x[before];
        double alongY = y[after] - y[before];
        if (StrictMath.hypot(awayX, awayY) < StrictMath.hypot(alongX, alongY) / 100) {
            double fromMiddleX = x[pixel] - box().centreX();
            double fromMiddleY = y[pixel] - box().centreY();
            boolean left = -alongY * fromMiddleX + alongX * fromMiddleY >= 0;
            awayX = left ? -alongY : alongY;
            awayY = left ? alongX : -alongX;
        }
        return awayX == 0 && awayY == 0 ? 0.25 : StrictMath.atan2(awayY, awayX) / (2 * Math.PI);
    }
}

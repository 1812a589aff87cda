package org.duskloom.engine.sheet;

import java.util.Optional;
import org.duskloom.engine.display.Shape;

/**
 * Two holes of a shape that run into each other.
 *
 * @param first index of the first pixel that has such a hole, from 0
 * @param second index of the pixel nearest to it
 * @param distanceMm from the middle of one to the middle of the other, in millimetres
 */
public record HoleOverlap(int first, int second, double distanceMm) {
    /** Holes that just touch do not overlap, whatever the last bit of a coordinate is. */
    private static final double TOUCHING = 1 - 1e-9;

    /**
     * The first overlap in wiring order; nothing if there is none, or if the shape is no plate: what is deeper than a
     * hole is wide is not drilled from its sheet.
     */
    public static Optional<HoleOverlap> of(ScaledShape shape, double millimetresPerUnit, SheetOptions options) {
        if (depth(shape.shape()) * shape.scale() * millimetresPerUnit > options.holeMm()) {
            return Optional.empty();
        }
        Outline outline = Outline.of(shape, millimetresPerUnit, View.FRONT, options);
        for (int i = 0; i < outline.count(); i++) {
            int near = outline.field().nearestOther(i, options.holeMm() * TOUCHING);
            if (near >= 0) {
                double x = outline.x()[near] - outline.x()[i];
                double y = outline.y()[near] - outline.y()[i];
                return Optional.of(new HoleOverlap(i, near, StrictMath.hypot(x, y)));
            }
        }
        return Optional.empty();
    }

    private static double depth(Shape shape) {
        double least = Double.POSITIVE_INFINITY;
        double greatest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < shape.pixelCount(); i++) {
            least = Math.min(least, shape.pixels().z(i));
            greatest = Math.max(greatest, shape.pixels().z(i));
        }
        return greatest - least;
    }
}

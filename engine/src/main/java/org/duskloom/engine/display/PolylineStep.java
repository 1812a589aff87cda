package org.duskloom.engine.display;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.DeclaredObject;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.ValueKind;

/**
 * {@code polyline}: pixels evenly along a line with corners, measured along the line.
 *
 * <p>With {@code count} the first pixel is at the first point and the last at the last; on a closed line the last
 * stands one step before the first. With {@code spacing} pixels follow each other at that distance from the first point
 * on, as long as there is line; on a closed line none comes back to the first point.
 */
record PolylineStep(List<Point> corners, long pixelCount, double stepLength) implements Step {
    static final DeclaredField<Node> POINTS =
            DeclaredField.required("points", PointList.places(2), "the corners, two at least");
    static final DeclaredField<Long> COUNT = DeclaredField.optional(
            "count", new ValueKind.Whole("", 2, MOST_PIXELS), "", "how many pixels; this or `spacing`");
    static final DeclaredField<Double> SPACING = DeclaredField.optional(
            "spacing", StepFields.LENGTH, "", "distance between pixels along the line; this or `count`");
    static final DeclaredField<Boolean> CLOSED =
            DeclaredField.of("closed", new ValueKind.Flag(), false, "true: the line goes back to its first point");
    static final DeclaredObject FIELDS =
            DeclaredObject.of("polyline", POINTS, COUNT, SPACING, CLOSED).needsOne("give one of them", COUNT, SPACING);

    /** The share of a step or side that is taken for rounding. */
    private static final double SLACK = 1e-9;

    PolylineStep {
        corners = List.copyOf(corners);
    }

    static Optional<Step> read(StepFields fields) {
        List<Point> points = fields.points(POINTS, 2);
        boolean closed = fields.value(CLOSED);
        boolean counted = fields.has(COUNT);
        int count = fields.count(COUNT);
        double spacing = fields.length(SPACING);
        List<Point> corners = corners(points, closed);
        double length = length(corners);
        if (fields.sound() && length == 0) {
            fields.error(POINTS, "all points of a polyline are the same", "for a single pixel use \"points\"");
        }
        return fields.finish(() -> counted
                ? new PolylineStep(corners, count, length / (closed ? count : count - 1))
                : new PolylineStep(corners, countAt(spacing, length, closed), spacing));
    }

    private static List<Point> corners(List<Point> points, boolean closed) {
        List<Point> corners = new ArrayList<>(points);
        if (closed && !points.isEmpty()) {
            corners.add(points.get(0));
        }
        return corners;
    }

    private static double length(List<Point> corners) {
        double length = 0;
        for (int i = 1; i < corners.size(); i++) {
            length += corners.get(i - 1).distance(corners.get(i));
        }
        return length;
    }

    private static long countAt(double spacing, double length, boolean closed) {
        return closed
                ? Math.max(1, (long) Math.ceil(length / spacing - SLACK))
                : (long) Math.floor(length / spacing + SLACK) + 1;
    }

    @Override
    public void lay(Strand strand) {
        int corner = 0;
        double before = 0;
        double side = corners.get(0).distance(corners.get(1));
        for (int i = 0; i < pixelCount; i++) {
            double along = i * stepLength;
            while (along > before + side && corner + 2 < corners.size()) {
                before += side;
                corner++;
                side = corners.get(corner).distance(corners.get(corner + 1));
            }
            double share = side == 0 ? 1 : (along - before) / side;
            strand.add(corners.get(corner).toward(corners.get(corner + 1), share > 1 - SLACK ? 1 : share));
        }
    }
}

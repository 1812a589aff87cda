package org.duskloom.engine.display;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * {@code polyline}: pixels evenly along a line with corners, measured along the line.
 *
 * <p>With {@code count} the first pixel is at the first point and the last at the last; on a closed line the last stands one step
 * before the first. With {@code spacing} pixels follow each other at that distance from the first point on, as long as there
 * is line; on a closed line none comes back to the first point.
 *
 * <table>
 * <caption>Fields</caption>
 * <tr><td>{@code points}</td><td>the corners, each {@code [x, y]} or {@code [x, y, z]}; required, at least 2</td></tr>
 * <tr><td>{@code count}</td><td>how many pixels, 2 to 1,000,000; this or {@code spacing}</td></tr>
 * <tr><td>{@code spacing}</td><td>distance between pixels, above 0; this or {@code count}</td></tr>
 * <tr><td>{@code closed}</td><td>whether the line goes back to its first point; false</td></tr>
 * </table>
 */
record PolylineStep(List<Point> corners, long pixelCount, double stepLength) implements Step {
    /** The share of a step or side that is taken for rounding. */
    private static final double SLACK = 1e-9;

    PolylineStep {
        corners = List.copyOf(corners);
    }

    static Optional<Step> read(StepFields fields) {
        fields.require("points");
        List<Point> points = fields.points("points", 2);
        boolean closed = fields.flag("closed");
        boolean counted = fields.has("count");
        if (counted == fields.has("spacing")) {
            fields.error(
                    counted ? "spacing" : "",
                    "a polyline has "
                            + (counted ? "both \"count\" and \"spacing\"" : "neither \"count\" nor \"spacing\""),
                    "give one of them");
        }
        int count = fields.count("count", 2, MOST_PIXELS);
        double spacing = fields.length("spacing");
        List<Point> corners = corners(points, closed);
        double length = length(corners);
        if (fields.sound() && length == 0) {
            fields.error("points", "all points of a polyline are the same", "for a single pixel use \"points\"");
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

package org.duskloom.engine.display.svg;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.xml.stream.XMLStreamReader;
import org.duskloom.engine.problem.TextFormatException;
import org.joml.Matrix3x2dc;
import org.joml.Vector2d;

/** A line of straight pieces on the page, in millimetres, along which pixels can be put in order. */
final class SvgLine {
    private final double[] x;
    private final double[] y;
    private final boolean[] begins;

    /**
     * A {@code path}, {@code line}, {@code polyline} or {@code polygon}.
     *
     * @param millimetresFromInside from its places to the page
     */
    static SvgLine of(XMLStreamReader xml, String word, Matrix3x2dc millimetresFromInside) throws TextFormatException {
        List<double[]> points = switch (word) {
            case "path" -> SvgPath.points(text(xml, "d"));
            case "line" ->
                List.of(
                        new double[] {SvgLength.attribute(xml, "x1"), SvgLength.attribute(xml, "y1")},
                        new double[] {SvgLength.attribute(xml, "x2"), SvgLength.attribute(xml, "y2")});
            default -> corners(text(xml, "points"), word.equals("polygon"));
        };
        if (points.isEmpty()) {
            throw new TextFormatException("nothing can be wired along it: it has no points", "");
        }
        return new SvgLine(points, millimetresFromInside);
    }

    private static List<double[]> corners(String written, boolean closed) throws TextFormatException {
        List<Double> numbers = new SvgScan(written).rest();
        List<double[]> corners = new ArrayList<>();
        for (int i = 0; i + 1 < numbers.size(); i += 2) {
            corners.add(new double[] {numbers.get(i), numbers.get(i + 1)});
        }
        if (closed && !corners.isEmpty()) {
            corners.add(corners.get(0));
        }
        return corners;
    }

    private static String text(XMLStreamReader xml, String name) {
        String text = xml.getAttributeValue(null, name);
        return text == null ? "" : text;
    }

    /**
     * A line.
     *
     * @param points in the order of the line, NaN in x before a new stretch that does not go on from the one before
     * @param millimetresFromInside from the places of the points to the page
     */
    private SvgLine(List<double[]> points, Matrix3x2dc millimetresFromInside) {
        List<double[]> real =
                points.stream().filter(point -> !Double.isNaN(point[0])).toList();
        x = new double[real.size()];
        y = new double[real.size()];
        begins = new boolean[real.size()];
        int at = 0;
        boolean gap = true;
        for (double[] point : points) {
            if (Double.isNaN(point[0])) {
                gap = true;
            } else {
                Vector2d place = millimetresFromInside.transformPosition(new Vector2d(point[0], point[1]));
                x[at] = place.x;
                y[at] = place.y;
                begins[at++] = gap;
                gap = false;
            }
        }
    }

    /** How many points it has. */
    int size() {
        return x.length;
    }

    /** Circles in the order in which they lie along the line; those at one place as they were. */
    List<SvgCircle> inOrder(List<SvgCircle> circles) {
        double[] lengths = circles.stream()
                .mapToDouble(circle -> lengthTo(circle.x(), circle.y()))
                .toArray();
        Integer[] order = new Integer[circles.size()];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, (a, b) -> Double.compare(lengths[a], lengths[b]));
        return Arrays.stream(order).map(circles::get).toList();
    }

    /** How far along the line, in millimetres, its point nearest to a place lies. */
    private double lengthTo(double placeX, double placeY) {
        double nearest = Double.POSITIVE_INFINITY;
        double found = 0;
        double before = 0;
        for (int i = 0; i < x.length; i++) {
            double fromX = begins[i] ? x[i] : x[i - 1];
            double fromY = begins[i] ? y[i] : y[i - 1];
            double dx = x[i] - fromX;
            double dy = y[i] - fromY;
            double square = dx * dx + dy * dy;
            double share = square == 0 ? 0 : ((placeX - fromX) * dx + (placeY - fromY) * dy) / square;
            share = Math.min(1, Math.max(0, share));
            double offX = fromX + share * dx - placeX;
            double offY = fromY + share * dy - placeY;
            double distance = offX * offX + offY * offY;
            double length = Math.sqrt(square);
            if (distance < nearest) {
                nearest = distance;
                found = before + share * length;
            }
            before += length;
        }
        return found;
    }
}

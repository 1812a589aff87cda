package org.duskloom.engine.time;

import java.util.List;
import org.duskloom.engine.digest.FingerprintWriter;

/**
 * Straight lines between points (W3C CSS Easing Functions Level 2, "The linear() easing function").
 *
 * @param points at least two, whose inputs never fall; where two have one input, the output jumps
 */
record LinearStops(List<Point> points) implements Easing {
    /** The output at an input of progress. */
    record Point(double input, double output) {}

    LinearStops {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException("a line needs two points");
        }
    }

    @Override
    public double at(double progress) {
        double x = Easing.clamped(progress);
        int from = lastAtOrBefore(x);
        Point a = points.get(from);
        Point b = points.get(from + 1);
        if (b.input == a.input || x == b.input) {
            return b.output;
        }
        return a.output + (b.output - a.output) * ((x - a.input) / (b.input - a.input));
    }

    /** The last point that is not after x and has one behind it; the first, where all are after x. */
    private int lastAtOrBefore(double x) {
        int index = points.size() - 2;
        while (index > 0 && points.get(index).input > x) {
            index--;
        }
        return index;
    }

    @Override
    public void addTo(FingerprintWriter parts) {
        parts.text("linear()")
                .list(points, (list, point) -> list.number(point.input).number(point.output));
    }
}

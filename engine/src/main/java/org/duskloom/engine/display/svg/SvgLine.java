package org.duskloom.engine.display.svg;

import java.util.List;
import org.joml.Matrix3x2dc;
import org.joml.Vector2d;

/** A line of straight pieces on the page, in millimetres, along which pixels can be put in order. */
final class SvgLine {
    private final double[] x;
    private final double[] y;
    private final boolean[] begins;

    /**
     * A line.
     *
     * @param points in the order of the line, NaN in x before a new stretch that does not go on from the one before
     * @param millimetresFromInside from the places of the points to the page
     */
    SvgLine(List<double[]> points, Matrix3x2dc millimetresFromInside) {
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

    /** How far along the line, in millimetres, its point nearest to a place lies. */
    double lengthTo(double placeX, double placeY) {
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

package org.duskloom.engine.display.svg;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.problem.TextFormatException;

/** The data of a {@code path} as points near enough to each other: W3C SVG 1.1, section 8.3. */
final class SvgPath {
    private static final int PIECES = 32;
    private static final int MOST_POINTS = 200_000;

    private final SvgScan scan;
    private final List<double[]> points = new ArrayList<>();
    private double x;
    private double y;
    private double startX;
    private double startY;
    /** The control point of the curve before, which smooth curves mirror. */
    private double controlX;

    private double controlY;
    private char before;

    private SvgPath(String data) {
        this.scan = new SvgScan(data);
    }

    /** The points; NaN in x stands before each new stretch. */
    static List<double[]> points(String data) throws TextFormatException {
        SvgPath path = new SvgPath(data);
        path.read();
        return path.points;
    }

    private void read() throws TextFormatException {
        char command = 0;
        while (!scan.isAtEnd()) {
            if (!scan.isAtNumber()) {
                command = scan.take();
            } else if (command == 'M' || command == 'm') {
                command = command == 'M' ? 'L' : 'l';
            } else if (command == 0 || command == 'Z' || command == 'z') {
                throw scan.fault("a command is needed");
            }
            if (points.isEmpty() && command != 'M' && command != 'm') {
                throw scan.fault("a path begins with M");
            }
            step(command);
            before = Character.toUpperCase(command);
            if (points.size() > MOST_POINTS) {
                throw new TextFormatException("the path has too many points", "allowed: " + MOST_POINTS);
            }
        }
    }

    private void step(char command) throws TextFormatException {
        boolean relative = Character.isLowerCase(command);
        double fromX = relative ? x : 0;
        double fromY = relative ? y : 0;
        switch (Character.toUpperCase(command)) {
            case 'M' -> moveTo(fromX + scan.number(), fromY + scan.number());
            case 'L' -> lineTo(fromX + scan.number(), fromY + scan.number());
            case 'H' -> lineTo(fromX + scan.number(), y);
            case 'V' -> lineTo(x, fromY + scan.number());
            case 'C' -> curve(fromX + scan.number(), fromY + scan.number(), fromX, fromY);
            case 'S' -> {
                boolean smooth = before == 'C' || before == 'S';
                curve(smooth ? 2 * x - controlX : x, smooth ? 2 * y - controlY : y, fromX, fromY);
            }
            case 'Q' -> quadratic(fromX + scan.number(), fromY + scan.number(), fromX, fromY);
            case 'T' -> {
                boolean smooth = before == 'Q' || before == 'T';
                quadratic(smooth ? 2 * x - controlX : x, smooth ? 2 * y - controlY : y, fromX, fromY);
            }
            case 'A' -> arc(fromX, fromY);
            case 'Z' -> lineTo(startX, startY);
            default -> throw scan.fault("the command " + command + " is not understood");
        }
    }

    private void moveTo(double toX, double toY) {
        points.add(new double[] {Double.NaN, Double.NaN});
        lineTo(toX, toY);
        startX = toX;
        startY = toY;
    }

    private void lineTo(double toX, double toY) {
        x = toX;
        y = toY;
        points.add(new double[] {x, y});
    }

    private void curve(double x1, double y1, double fromX, double fromY) throws TextFormatException {
        double x2 = fromX + scan.number();
        double y2 = fromY + scan.number();
        double toX = fromX + scan.number();
        double toY = fromY + scan.number();
        bezier(x1, y1, x2, y2, toX, toY);
        controlX = x2;
        controlY = y2;
    }

    /** A quadratic curve is a cubic one whose control points lie two thirds of the way to its own. */
    private void quadratic(double controlToX, double controlToY, double fromX, double fromY)
            throws TextFormatException {
        double toX = fromX + scan.number();
        double toY = fromY + scan.number();
        bezier(
                x + (controlToX - x) * 2 / 3,
                y + (controlToY - y) * 2 / 3,
                toX + (controlToX - toX) * 2 / 3,
                toY + (controlToY - toY) * 2 / 3,
                toX,
                toY);
        controlX = controlToX;
        controlY = controlToY;
    }

    private void bezier(double x1, double y1, double x2, double y2, double toX, double toY) {
        double fromX = x;
        double fromY = y;
        for (int i = 1; i <= PIECES; i++) {
            double t = (double) i / PIECES;
            double s = 1 - t;
            lineTo(
                    s * s * s * fromX + 3 * s * s * t * x1 + 3 * s * t * t * x2 + t * t * t * toX,
                    s * s * s * fromY + 3 * s * s * t * y1 + 3 * s * t * t * y2 + t * t * t * toY);
        }
    }

    private void arc(double fromX, double fromY) throws TextFormatException {
        double radiusX = Math.abs(scan.number());
        double radiusY = Math.abs(scan.number());
        double degrees = scan.number();
        boolean large = scan.flag();
        boolean sweep = scan.flag();
        double toX = fromX + scan.number();
        double toY = fromY + scan.number();
        if (radiusX == 0 || radiusY == 0 || toX == x && toY == y) {
            lineTo(toX, toY);
            return;
        }
        double[] arc = SvgArc.pieces(new double[] {x, y, radiusX, radiusY, degrees, toX, toY}, large, sweep, PIECES);
        for (int i = 0; i < arc.length; i += 2) {
            lineTo(arc[i], arc[i + 1]);
        }
        lineTo(toX, toY);
    }
}

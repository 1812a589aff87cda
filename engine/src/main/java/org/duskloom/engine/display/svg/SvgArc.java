package org.duskloom.engine.display.svg;

/** An elliptical arc between two points: W3C SVG 1.1, appendix F.6.5 and F.6.6. */
final class SvgArc {
    private SvgArc() {}

    /**
     * Points on the way, without its two ends, x and y in turn.
     *
     * @param arc x and y of its start, its radii, its turn in degrees, x and y of its end
     */
    static double[] pieces(double[] arc, boolean large, boolean sweep, int count) {
        double turn = StrictMath.toRadians(arc[4]);
        double cos = StrictMath.cos(turn);
        double sin = StrictMath.sin(turn);
        double halfX = (arc[0] - arc[5]) / 2;
        double halfY = (arc[1] - arc[6]) / 2;
        double ownX = cos * halfX + sin * halfY;
        double ownY = cos * halfY - sin * halfX;
        double tooSmall = StrictMath.hypot(ownX / arc[2], ownY / arc[3]);
        double grown = Math.max(1, tooSmall);
        double unitX = ownX / (arc[2] * grown);
        double unitY = ownY / (arc[3] * grown);
        double square = unitX * unitX + unitY * unitY;
        double root = Math.sqrt(Math.max(0, 1 / square - 1)) * (large == sweep ? -1 : 1);
        double centreX = root * unitY;
        double centreY = -root * unitX;
        double from = StrictMath.atan2(unitY - centreY, unitX - centreX);
        double way = StrictMath.atan2(-unitY - centreY, -unitX - centreX) - from;
        if (sweep && way < 0) {
            way += 2 * Math.PI;
        } else if (!sweep && way > 0) {
            way -= 2 * Math.PI;
        }
        double[] points = new double[2 * (count - 1)];
        for (int i = 1; i < count; i++) {
            double angle = from + way * i / count;
            double x = (centreX + StrictMath.cos(angle)) * arc[2] * grown;
            double y = (centreY + StrictMath.sin(angle)) * arc[3] * grown;
            points[2 * i - 2] = cos * x - sin * y + (arc[0] + arc[5]) / 2;
            points[2 * i - 1] = sin * x + cos * y + (arc[1] + arc[6]) / 2;
        }
        return points;
    }
}

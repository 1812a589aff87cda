package org.duskloom.engine.survey.fit;

import org.duskloom.engine.map.Positions;
import org.joml.Matrix3dc;
import org.joml.Vector3dc;

/**
 * All that a fit of two point sets has to know of them, about one origin each: with the origins at the means a fit may
 * move, with fixed origins it may not.
 *
 * @param points how many pairs of points
 * @param from sum of the squared distances of the points that are moved from their origin
 * @param to the same for the points that they are to come to
 * @param cross sum of the products of coordinates: rows for {@code to}, columns for {@code from}
 */
record PairSpread(int points, double from, double to, Matrix3dc cross) {
    private static final double SMALLEST = 0.25;
    private static final double LARGEST = 4;

    /** The spread about the means, which are worked out first so that far-off points lose no digits. */
    static PairSpread aboutMeans(Positions from, Positions to, Vector3dc fromMean, Vector3dc toMean) {
        Moments moments = new Moments();
        for (int i = 0; i < from.size(); i++) {
            moments.add(
                    from.x(i) - fromMean.x(),
                    from.y(i) - fromMean.y(),
                    from.z(i) - fromMean.z(),
                    to.x(i) - toMean.x(),
                    to.y(i) - toMean.y(),
                    to.z(i) - toMean.z());
        }
        return moments.aboutOrigin();
    }

    /**
     * The sum of squared distances that is left, where the sum of products of the turned points with the others is the
     * match; infinite where no scale within reason leaves least, so that the end of what is reasonable is not taken for
     * a measurement.
     */
    double left(double match, Sizing sizing) {
        if (sizing == Sizing.WITHIN_REASON && from > 0 && !(match >= SMALLEST * from && match <= LARGEST * from)) {
            return Double.POSITIVE_INFINITY;
        }
        double scale = scale(match, sizing);
        return Math.max(0, to + scale * (scale * from - 2 * match));
    }

    /** The scale that leaves least. */
    double scale(double match, Sizing sizing) {
        if (sizing == Sizing.KEPT || from == 0) {
            return 1;
        }
        double best = Math.max(0, match / from);
        return sizing == Sizing.FREE ? best : Math.max(SMALLEST, Math.min(LARGEST, best));
    }
}

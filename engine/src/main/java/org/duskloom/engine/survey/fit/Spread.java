package org.duskloom.engine.survey.fit;

import org.duskloom.engine.map.Positions;

/**
 * All that a fit of two point sets has to know of them, about one origin each: with the origins at the means a fit may move,
 * with fixed origins it may not.
 *
 * @param points how many pairs of points
 * @param from sum of the squared distances of the points that are moved from their origin
 * @param to the same for the points that they are to come to
 * @param cross sum of the products of coordinates: rows for {@code to}, columns for {@code from}
 */
record Spread(int points, double from, double to, Linear3 cross) {
    private static final double SMALLEST = 0.25;
    private static final double LARGEST = 4;

    /** The spread about the means, which are worked out first so that far-off points lose no digits. */
    static Spread aboutMeans(Positions from, Positions to, double[] fromMean, double[] toMean) {
        Moments moments = new Moments();
        for (int i = 0; i < from.size(); i++) {
            moments.add(
                    from.x(i) - fromMean[0],
                    from.y(i) - fromMean[1],
                    from.z(i) - fromMean[2],
                    to.x(i) - toMean[0],
                    to.y(i) - toMean[1],
                    to.z(i) - toMean[2]);
        }
        return moments.aboutOrigin();
    }

    /**
     * The sum of squared distances that is left, where the sum of products of the turned points with the others is the match;
     * infinite where no scale within reason leaves least, so that the end of what is reasonable is not taken for a measurement.
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

package org.duskloom.engine.survey.fit;

import java.util.Objects;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.survey.Dimensions;
import org.joml.Vector3d;

/**
 * The similarity that brings points nearest to others, pair by pair, in the sense of least squares. S. Umeyama, IEEE
 * Transactions on Pattern Analysis and Machine Intelligence 13(4):376-380, 1991, after W. Kabsch, Acta
 * Crystallographica A32:922, 1976.
 *
 * @param similarity the map; one of several equally good ones unless it is unique
 * @param squaredError the sum of squared distances that it leaves
 * @param rank how many directions the points spread in: 0 for one place, 1 for a line, 2 for a plane, 3
 * @param isUnique whether the points fix the turn: they spread along a line in two dimensions, in a plane in three, and
 *     do not match equally well all round
 */
record SimilarityFit(Similarity similarity, double squaredError, int rank, boolean isUnique) {
    SimilarityFit {
        Objects.requireNonNull(similarity, "similarity");
    }

    /**
     * Fits.
     *
     * @param from the points that are moved; z is not looked at in two dimensions
     * @param to where they are to come to
     * @throws IllegalArgumentException if there is no point, or not as many of the one as of the other
     */
    static SimilarityFit of(Positions from, Positions to, Dimensions dimensions, Handedness handedness, Sizing sizing) {
        if (from.size() == 0 || from.size() != to.size()) {
            throw new IllegalArgumentException(from.size() + " points for " + to.size());
        }
        Vector3d fromMean = mean(from, dimensions);
        Vector3d toMean = mean(to, dimensions);
        PairSpread spread =
                PairSpread.aboutMeans(flattened(from, dimensions), flattened(to, dimensions), fromMean, toMean);
        BestTurn turn = BestTurn.of(spread.cross(), dimensions, handedness);
        Similarity similarity =
                Similarity.taking(fromMean, toMean, turn.rotation(), spread.scale(turn.match(), sizing));
        return new SimilarityFit(similarity, spread.left(turn.match(), sizing), turn.rank(), turn.isUnique());
    }

    private static Vector3d mean(Positions points, Dimensions dimensions) {
        Vector3d sum = new Vector3d();
        for (int i = 0; i < points.size(); i++) {
            sum.add(points.x(i), points.y(i), dimensions == Dimensions.DEEP ? points.z(i) : 0);
        }
        return sum.div(points.size());
    }

    private static Positions flattened(Positions points, Dimensions dimensions) {
        if (dimensions == Dimensions.DEEP) {
            return points;
        }
        double[] x = new double[points.size()];
        double[] y = new double[points.size()];
        for (int i = 0; i < x.length; i++) {
            x[i] = points.x(i);
            y[i] = points.y(i);
        }
        return new Positions(x, y, new double[x.length]);
    }
}

package org.duskloom.engine.survey.fit;

import org.duskloom.engine.survey.Dimensions;
import org.joml.Matrix3d;
import org.joml.Matrix3dc;

/**
 * The turn that brings points nearest to others, in the sense of least squares: it maximises the match, the sum of the
 * products of the turned coordinates with the others.
 *
 * @param match that sum
 * @param rotation the turn
 * @param rank how many directions the points spread in, seen together: 0 to 3
 * @param isUnique whether no other turn brings them as near
 */
record BestTurn(double match, Matrix3dc rotation, int rank, boolean isUnique) {
    /** A singular value below this share of the largest one is rounding. */
    private static final double NOTHING = 1e-12;

    static BestTurn of(Matrix3dc cross, Dimensions dimensions, Handedness handedness) {
        return dimensions == Dimensions.FLAT ? flat(cross, handedness) : deep(cross, handedness);
    }

    /** A turn about z only; z itself is left as it is. In two dimensions this is the closed form of the general fit. */
    private static BestTurn flat(Matrix3dc c, Handedness handedness) {
        int sign = handedness.sign();
        double along = c.m00() + sign * c.m11();
        double across = c.m01() - sign * c.m10();
        double match = Math.sqrt(along * along + across * across);
        double otherAlong = c.m00() - sign * c.m11();
        double otherAcross = c.m01() + sign * c.m10();
        double other = Math.sqrt(otherAlong * otherAlong + otherAcross * otherAcross);
        double first = (match + other) / 2;
        double second = Math.abs(match - other) / 2;
        double least = NOTHING * first;
        int rank = first == 0 ? 0 : second <= least ? 1 : 2;
        double cosine = match > 0 ? along / match : 1;
        double sine = match > 0 ? across / match : 0;
        Matrix3dc rotation = Rotations.ofRows(cosine, -sign * sine, 0, sine, sign * cosine, 0, 0, 0, 1);
        return new BestTurn(match, rotation, rank, match > least);
    }

    /**
     * S. Umeyama, IEEE Transactions on Pattern Analysis and Machine Intelligence 13(4), 1991, equations 39, 40 and 43.
     */
    private static BestTurn deep(Matrix3dc cross, Handedness handedness) {
        Svd3 svd = Svd3.of(cross);
        boolean same = svd.u().determinant() * svd.v().determinant() > 0;
        double last = same ? handedness.sign() : -handedness.sign();
        Matrix3dc rotation =
                svd.u().scale(1, 1, last, new Matrix3d()).mul(svd.v().transpose(new Matrix3d()), new Matrix3d());
        double least = NOTHING * svd.first();
        int rank = svd.first() == 0 ? 0 : svd.second() <= least ? 1 : svd.third() <= least ? 2 : 3;
        double lesser = svd.second() + last * svd.third();
        return new BestTurn(svd.first() + lesser, rotation, rank, lesser > least);
    }
}

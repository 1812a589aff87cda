package org.duskloom.engine.survey.fit;

import org.duskloom.engine.survey.Dimensions;
import org.joml.Matrix3dc;

/**
 * The turn that matches best among those that a form allows.
 *
 * @param match the sum of the products of the turned coordinates with the others
 * @param degrees how far it is about z, 0 up to but not including 360; exact where it is a quarter
 * @param rotation the same as a matrix; a turn in all ways where the form allows it
 */
record TurnFit(double match, double degrees, Matrix3dc rotation) {
    /** Bits for the quarters 0, 1, 2 and 3. */
    private static final int NONE = 0b0001;

    private static final int OTHERS = 0b1110;
    private static final int NONE_OR_HALF = 0b0101;
    private static final int ODD_QUARTERS = 0b1010;

    /**
     * Only the match, fast.
     *
     * @param inY whether a half turn of the mirror image is no turn: see {@link Stance#mirrorsInY()}
     */
    static double match(Matrix3dc cross, Turn turn, boolean mirrored, boolean inY) {
        double along = cross.m00() + cross.m11();
        double across = cross.m01() - cross.m10();
        return switch (turn) {
            case STAYS, QUARTER ->
                quarterMatch(along, across, bestQuarter(along, across, quarters(turn, mirrored && inY))) + cross.m22();
            case FREE -> Math.sqrt(along * along + across * across) + cross.m22();
            case ALL_WAYS ->
                BestTurn.of(cross, Dimensions.DEEP, Handedness.PROPER).match();
        };
    }

    static TurnFit of(Matrix3dc cross, Turn turn, boolean mirrored, boolean inY) {
        double match = match(cross, turn, mirrored, inY);
        if (turn == Turn.ALL_WAYS) {
            return new TurnFit(
                    match,
                    0,
                    BestTurn.of(cross, Dimensions.DEEP, Handedness.PROPER).rotation());
        }
        double along = cross.m00() + cross.m11();
        double across = cross.m01() - cross.m10();
        if (turn == Turn.FREE) {
            Matrix3dc rotation =
                    BestTurn.of(cross, Dimensions.FLAT, Handedness.PROPER).rotation();
            double degrees = StrictMath.toDegrees(StrictMath.atan2(across, along));
            return new TurnFit(match, degrees < 0 ? degrees + 360 : degrees, rotation);
        }
        int quarter = bestQuarter(along, across, quarters(turn, mirrored && inY));
        return new TurnFit(
                match, 90.0 * quarter, Rotations.aboutZ(quarterMatch(1, 0, quarter), quarterMatch(0, 1, quarter)));
    }

    private static int quarters(Turn turn, boolean halfIsNone) {
        if (turn == Turn.STAYS) {
            return halfIsNone ? NONE_OR_HALF : NONE;
        }
        return halfIsNone ? ODD_QUARTERS : OTHERS;
    }

    private static int bestQuarter(double along, double across, int allowed) {
        int best = -1;
        for (int quarter = 0; quarter < 4; quarter++) {
            if ((allowed >> quarter & 1) != 0
                    && (best < 0 || quarterMatch(along, across, quarter) > quarterMatch(along, across, best))) {
                best = quarter;
            }
        }
        return best;
    }

    /** along * cosine + across * sine of the quarter. */
    private static double quarterMatch(double along, double across, int quarter) {
        return switch (quarter) {
            case 0 -> along;
            case 1 -> across;
            case 2 -> 0.0 - along;
            default -> 0.0 - across;
        };
    }
}

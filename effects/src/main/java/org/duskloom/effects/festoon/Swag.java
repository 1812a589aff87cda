package org.duskloom.effects.festoon;

/**
 * A catenary as a line of short straight pieces of equal arc length, in spans: it strays from the curve by less than a
 * thousandth of the span for a sag of 2, far less for less. Owns its memory; for one thread while it is hung anew.
 */
final class Swag {
    static final int PIECES = 128;

    /** Covers what rounding does: a share of a distance, or spans. */
    private static final double ROUNDING = 1e-9;

    private final Catenary chain = new Catenary();
    private final double[] x = new double[PIECES + 1];
    private final double[] y = new double[PIECES + 1];
    /** How much each piece rises for a unit of span. */
    private final double[] slope = new double[PIECES];
    /** Where the middle of each piece is. */
    private final double[] middleX = new double[PIECES];

    private final double[] middleY = new double[PIECES];
    /** No piece is longer than twice this. */
    private double half;
    /** The piece where each of so many equal parts of the span begins. */
    private final int[] pieceOfCell = new int[PIECES + 1];
    /** The height in the middle of each of these parts. */
    private final double[] heightOfCell = new double[PIECES];
    /** How much higher or lower it is at most within the part. */
    private double unevenness;

    /**
     * How many times as far a point may lie above or below the swag as from it: the steepest piece is the hypotenuse
     * over one unit of span.
     */
    private double steepness;

    private double rise = Double.NaN;
    private double sag = Double.NaN;

    /** What {@link #nearest} found: the distance. */
    private double distance;
    /** What {@link #nearest} found: the share of the length of the swag. */
    private double share;

    /** Hangs it, if it does not hang like that already. */
    void hang(double newRise, double newSag) {
        if (newRise == rise && newSag == sag) {
            return;
        }
        rise = newRise;
        sag = newSag;
        chain.hang(rise, sag);
        double length = chain.length();
        for (int i = 0; i <= PIECES; i++) {
            x[i] = i == PIECES ? 1 : chain.xAtArc(length * i / PIECES);
            y[i] = i == PIECES ? rise : chain.heightAt(x[i]);
        }
        for (int cell = 0, piece = 0; cell <= PIECES; cell++) {
            while (piece < PIECES - 1 && x[piece + 1] < (double) cell / PIECES) {
                piece++;
            }
            pieceOfCell[cell] = piece;
        }
        prepareToLook();
    }

    private void prepareToLook() {
        for (int i = 0; i < PIECES; i++) {
            slope[i] = (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
            middleX[i] = (x[i] + x[i + 1]) / 2;
            middleY[i] = (y[i] + y[i + 1]) / 2;
        }
        for (int cell = 0; cell < PIECES; cell++) {
            double middle = (cell + 0.5) / PIECES;
            heightOfCell[cell] = height(pieceAt(middle), middle);
        }
        half = chain.length() / PIECES / 2 + ROUNDING;
        double steepest = Math.max(Math.abs(slope[0]), Math.abs(slope[PIECES - 1]));
        unevenness = steepest / PIECES / 2 + ROUNDING;
        steepness = Math.sqrt(1 + steepest * steepest) * (1 + ROUNDING);
    }

    /** How much higher the second end is than the first. */
    double rise() {
        return rise;
    }

    /**
     * Whether a point is so far above or below the swag that none of it is within reach, nor any of another that hangs
     * beside it; there may be none within reach anyway.
     *
     * @param atX in [0, 1]
     */
    boolean isFar(double atX, double atY, double reach) {
        int cell = Math.min(PIECES - 1, (int) (atX * PIECES));
        return Math.abs(atY - heightOfCell[cell]) > reach * steepness + unevenness;
    }

    /**
     * Finds the nearest place on the swag.
     *
     * @param reach how far to look
     * @return whether there is one within reach; if so, {@link #distance} and {@link #share} tell
     */
    boolean nearest(double atX, double atY, double reach) {
        distance = reach;
        if (atX < -reach || atX > 1 + reach) {
            return false;
        }
        int above = pieceAt(atX);
        double enough = Math.min(reach, distanceOfFoot(above, atX, atY)) + ROUNDING;
        double ofMiddle = (enough + half) * (enough + half);
        for (int i = above; i < PIECES && x[i] < atX + enough; i++) {
            measure(i, atX, atY, ofMiddle);
        }
        for (int i = above - 1; i >= 0 && x[i + 1] > atX - enough; i--) {
            measure(i, atX, atY, ofMiddle);
        }
        return distance < reach;
    }

    /** How far it is to a corner near where the piece above or below would be met at a right angle if it went on. */
    private double distanceOfFoot(int above, double atX, double atY) {
        double gap = atY - height(above, atX);
        double footX = atX + gap * slope[above] / (1 + slope[above] * slope[above]);
        int corner = pieceOfCell[cell(footX)];
        double fromX = atX - x[corner];
        double fromY = atY - y[corner];
        return Math.sqrt(fromX * fromX + fromY * fromY);
    }

    double distance() {
        return distance;
    }

    double share() {
        return share;
    }

    /**
     * Measures a piece if it can be the nearest.
     *
     * @param ofMiddle how far its middle is at most then, squared
     */
    private void measure(int piece, double atX, double atY, double ofMiddle) {
        double fromX = atX - middleX[piece];
        double fromY = atY - middleY[piece];
        if (fromX * fromX + fromY * fromY > ofMiddle) {
            return;
        }
        double wayX = x[piece + 1] - x[piece];
        double wayY = y[piece + 1] - y[piece];
        double along = ((atX - x[piece]) * wayX + (atY - y[piece]) * wayY) / (wayX * wayX + wayY * wayY);
        double part = Math.min(1, Math.max(0, along));
        double gapX = atX - x[piece] - part * wayX;
        double gapY = atY - y[piece] - part * wayY;
        double squared = gapX * gapX + gapY * gapY;
        if (squared < distance * distance) {
            distance = Math.sqrt(squared);
            share = (piece + part) / PIECES;
        }
    }

    /** The piece over or under a place along the span; the first or the last one beyond the ends. */
    private int pieceAt(double atX) {
        int piece = pieceOfCell[cell(atX)];
        while (piece < PIECES - 1 && x[piece + 1] < atX) {
            piece++;
        }
        return piece;
    }

    private static int cell(double atX) {
        return (int) (Math.min(1, Math.max(0, atX)) * PIECES);
    }

    private double height(int piece, double atX) {
        return y[piece] + slope[piece] * (atX - x[piece]);
    }
}

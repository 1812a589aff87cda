package org.duskloom.effects.festoon;

/**
 * A catenary as a line of short straight pieces of equal arc length, in spans: it strays from the curve by less than a
 * thousandth of the span for a sag of 2, far less for less. Owns its memory; for one thread while it is hung anew.
 */
final class Swag {
    static final int PIECES = 128;

    private final Catenary chain = new Catenary();
    private final double[] x = new double[PIECES + 1];
    private final double[] y = new double[PIECES + 1];
    /** The piece where each of so many equal parts of the span begins. */
    private final int[] pieceOfCell = new int[PIECES + 1];

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
        for (int i = 0; i <= PIECES; i++) {
            x[i] = i == PIECES ? 1 : chain.xAtArc(chain.length() * i / PIECES);
            y[i] = i == PIECES ? rise : chain.heightAt(x[i]);
        }
        for (int cell = 0, piece = 0; cell <= PIECES; cell++) {
            while (piece < PIECES - 1 && x[piece + 1] < (double) cell / PIECES) {
                piece++;
            }
            pieceOfCell[cell] = piece;
        }
        steepness = Math.max(steepness(0), steepness(PIECES - 1)) * (1 + 1e-9);
    }

    private double steepness(int piece) {
        double slope = (y[piece + 1] - y[piece]) / (x[piece + 1] - x[piece]);
        return Math.sqrt(1 + slope * slope);
    }

    /** How much higher the second end is than the first. */
    double rise() {
        return rise;
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
        if (atX >= 0 && atX <= 1 && Math.abs(atY - heightOf(above, atX)) > reach * steepness) {
            return false;
        }
        for (int i = above; i < PIECES && x[i] < atX + distance; i++) {
            measure(i, atX, atY);
        }
        for (int i = above - 1; i >= 0 && x[i + 1] > atX - distance; i--) {
            measure(i, atX, atY);
        }
        return distance < reach;
    }

    double distance() {
        return distance;
    }

    double share() {
        return share;
    }

    private void measure(int piece, double atX, double atY) {
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
        int piece = pieceOfCell[(int) (Math.min(1, Math.max(0, atX)) * PIECES)];
        while (piece < PIECES - 1 && x[piece + 1] < atX) {
            piece++;
        }
        return piece;
    }

    private double heightOf(int piece, double atX) {
        return y[piece] + (y[piece + 1] - y[piece]) * (atX - x[piece]) / (x[piece + 1] - x[piece]);
    }
}

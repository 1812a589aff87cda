package org.duskloom.effects.festoon;

/**
 * A catenary as a line of short straight pieces of equal arc length, in spans: it strays from the curve by less than a
 * thousandth of the span for a sag of 2, far less for less. Owns its memory; for one thread while it is hung anew.
 */
final class Swag {
    static final int PIECES = 128;

    private final double[] x = new double[PIECES + 1];
    private final double[] y = new double[PIECES + 1];
    private double least;
    private double greatest;
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
        Catenary chain = Catenary.hung(rise, sag);
        least = Math.min(0, rise);
        greatest = Math.max(0, rise);
        for (int i = 0; i <= PIECES; i++) {
            x[i] = i == PIECES ? 1 : chain.xAtArc(chain.length() * i / PIECES);
            y[i] = i == PIECES ? rise : chain.heightAt(x[i]);
            least = Math.min(least, y[i]);
        }
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
        if (atX < -reach || atX > 1 + reach || atY < least - reach || atY > greatest + reach) {
            return false;
        }
        double nearestSquared = reach * reach;
        boolean found = false;
        for (int i = firstPieceEndingAfter(atX - reach); i < PIECES && x[i] <= atX + reach; i++) {
            double wayX = x[i + 1] - x[i];
            double wayY = y[i + 1] - y[i];
            double along = ((atX - x[i]) * wayX + (atY - y[i]) * wayY) / (wayX * wayX + wayY * wayY);
            double part = Math.min(1, Math.max(0, along));
            double gapX = atX - x[i] - part * wayX;
            double gapY = atY - y[i] - part * wayY;
            double squared = gapX * gapX + gapY * gapY;
            if (squared < nearestSquared) {
                nearestSquared = squared;
                share = (i + part) / PIECES;
                found = true;
            }
        }
        distance = Math.sqrt(nearestSquared);
        return found;
    }

    double distance() {
        return distance;
    }

    double share() {
        return share;
    }

    private int firstPieceEndingAfter(double atX) {
        int first = 0;
        int end = PIECES;
        while (first < end) {
            int middle = (first + end) >>> 1;
            if (x[middle + 1] < atX) {
                first = middle + 1;
            } else {
                end = middle;
            }
        }
        return first;
    }
}

package org.duskloom.effects.morph;

/**
 * Pixels within reach of dots, a few at a time. Of those looked at about half are, in no order that a processor could
 * guess; so each is written down, and counted only if it is: the sign of a number, rather than a branch. Scratch, for
 * one thread.
 */
final class Found {
    /** How many are found before they are lit. */
    static final int BLOCK = 512;

    /** The squares of their distances; later how far they are within reach. */
    final double[] squares;
    /** Where the pixels stand in the grid. */
    final int[] places;
    /** Whose reach they are within. */
    final int[] dots;

    int count;

    /** For grids of up to so many pixels. */
    Found(int pixels) {
        squares = new double[pixels + BLOCK + 1];
        places = new int[squares.length];
        dots = new int[squares.length];
    }

    /** 1 for a distance below that reach, both squared, else 0. */
    static int isWithin(double distance, double reach) {
        return (int) (Double.doubleToRawLongBits(distance - reach) >>> Double.SIZE - 1);
    }
}

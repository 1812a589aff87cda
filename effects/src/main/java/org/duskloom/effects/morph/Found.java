package org.duskloom.effects.morph;

/**
 * Pairs of a pixel and a dot within reach of it, a few at a time. Of those looked at about half are, in no order that
 * a processor could guess; so each is written down, and counted only if it is: the sign of a number, rather than a
 * branch. A pair is one word, so that a loop has few arrays: compilers otherwise run out of registers. Scratch, for one
 * thread.
 */
final class Found {
    /** How many are found before they are lit, about. */
    static final int BLOCK = 512;

    /** By how much the places of pixels, or the numbers of dots, may differ that are found together. */
    static final int MOST_APART = 0xffff;

    /** The squares of their distances; later how far they are within reach. */
    final double[] squares = new double[2 * BLOCK];
    /** Which they are, by {@link #word}. */
    final int[] words = new int[2 * BLOCK];

    int firstPlace;
    int firstDot;
    int count;

    /**
     * A pair: half a word says by how much its pixel's place in the grid is above the first, half a word by how much
     * its dot's number is.
     */
    static int word(int placeAbove, int dotAbove) {
        return placeAbove << Short.SIZE | dotAbove;
    }

    /** By how much the place of a pair's pixel is above the first. */
    static int placeAbove(int word) {
        return word >>> Short.SIZE;
    }

    /** By how much the number of a pair's dot is above the first. */
    static int dotAbove(int word) {
        return word & MOST_APART;
    }

    /** Begins anew. */
    void begin(int place, int dot) {
        firstPlace = place;
        firstDot = dot;
        count = 0;
    }

    /** Whether there is room for a dot and up to a {@link #BLOCK} of pixels at consecutive places. */
    boolean takes(int place, int dot) {
        return count <= BLOCK
                && place >= firstPlace
                && place - firstPlace <= MOST_APART - BLOCK
                && dot - firstDot <= MOST_APART;
    }

    /** 1 for a distance below that reach, both squared, else 0. */
    static int isWithin(double distance, double reach) {
        return (int) (Double.doubleToRawLongBits(distance - reach) >>> Double.SIZE - 1);
    }
}

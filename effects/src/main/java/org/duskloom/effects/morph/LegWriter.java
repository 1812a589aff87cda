package org.duskloom.effects.morph;

import java.util.Arrays;

/** Writes down what may meet on a {@link Leg}. */
final class LegWriter {
    private int[] words;
    private int count;
    /** The pairs of the block that is not written yet. */
    private final int[] places = new int[Found.BLOCK];

    private final int[] dots = new int[Found.BLOCK];
    private int open;
    private int leastPlace;
    private int mostPlace;
    private int leastDot;
    private int mostDot;

    /** For about so many pairs. */
    LegWriter(int pairs) {
        words = new int[pairs + Leg.HEAD * (1 + pairs / Found.BLOCK)];
    }

    /**
     * Adds a pair.
     *
     * @param place of the pixel in the grid
     */
    void add(int place, int dot) {
        if (open == Found.BLOCK || open > 0 && !fits(place, dot)) {
            close();
        }
        leastPlace = open == 0 ? place : Math.min(leastPlace, place);
        mostPlace = open == 0 ? place : Math.max(mostPlace, place);
        leastDot = open == 0 ? dot : Math.min(leastDot, dot);
        mostDot = open == 0 ? dot : Math.max(mostDot, dot);
        places[open] = place;
        dots[open++] = dot;
    }

    private boolean fits(int place, int dot) {
        return Math.max(mostPlace, place) - Math.min(leastPlace, place) <= Found.MOST_APART
                && Math.max(mostDot, dot) - Math.min(leastDot, dot) <= Found.MOST_APART;
    }

    private void close() {
        if (words.length < count + Leg.HEAD + open) {
            words = Arrays.copyOf(words, 2 * words.length + Leg.HEAD + open);
        }
        words[count++] = leastPlace;
        words[count++] = leastDot;
        words[count++] = open;
        for (int i = 0; i < open; i++) {
            words[count++] = Found.word(places[i] - leastPlace, dots[i] - leastDot);
        }
        open = 0;
    }

    /** All that was added, of dots that reach so far at most. */
    Leg leg(double reach) {
        if (open > 0) {
            close();
        }
        return new Leg(Arrays.copyOf(words, count), reach);
    }
}

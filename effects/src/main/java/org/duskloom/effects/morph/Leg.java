package org.duskloom.effects.morph;

/**
 * A stretch of the way of some dots, and which pixels each may meet on it. Immutable.
 *
 * @param pixels those that each dot may meet, dot after dot, by their places in the grid; the first of each dot has the
 *     highest bit set
 * @param dots that may meet any
 * @param reach how far dots reach at most
 */
record Leg(int[] dots, int[] pixels, double reach) {
    /** Beside the place of a pixel: the first that a dot may meet. */
    static final int FIRST = Integer.MIN_VALUE;

    /** Stands for a leg on which dots meet too many pixels to write them down. */
    static final Leg CROWDED = new Leg(new int[0], new int[0], -1);

    /** Whether this tells all that dots of a reach may light. */
    boolean covers(double dotReach) {
        return dotReach <= reach;
    }

    /**
     * Lights the pixels within reach of each dot.
     *
     * @param spots where the pixels of the grid are
     */
    void shine(double[] spots, DotFrame frame, double reach, Light light) {
        double square = PixelGrid.square(reach);
        int met = -1;
        for (int first = 0; first < dots.length; first += Found.BLOCK) {
            met = find(first, Math.min(dots.length, first + Found.BLOCK), met, spots, frame, square);
            light.add(frame.found, frame.colors, square);
        }
    }

    private int find(int from, int to, int metBefore, double[] spots, DotFrame frame, double square) {
        Found found = frame.found;
        int met = metBefore;
        int count = 0;
        for (int i = from; i < to; i++) {
            int word = dots[i];
            met += word >>> Integer.SIZE - 1;
            int place = pixels[met];
            int dot = word & Integer.MAX_VALUE;
            double distance = Spots.squaredDistance(spots, place, frame.spots, dot);
            found.squares[count] = distance;
            found.places[count] = place;
            found.dots[count] = dot;
            count += Found.isWithin(distance, square);
        }
        found.count = count;
        return met;
    }
}

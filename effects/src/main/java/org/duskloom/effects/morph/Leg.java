package org.duskloom.effects.morph;

/**
 * A stretch of the way of some dots, and which pixels each may meet on it. Immutable.
 *
 * @param words block after block: the least place of a pixel in the grid, the least number of a dot, how many pairs
 *     there are; for each by how much its pixel and its dot are more, in half a word each
 * @param reach how far dots reach at most
 */
record Leg(int[] words, double reach) {
    /** How many words a block begins with. */
    static final int HEAD = 3;

    /** Stands for a leg on which dots meet too many pixels to write them down. */
    static final Leg CROWDED = new Leg(new int[0], -1);

    /** Whether this tells all that dots of a reach may light. */
    boolean covers(double dotReach) {
        return dotReach <= reach;
    }

    /**
     * Lights the pixels within reach of each dot.
     *
     * @param spots where the pixels of the grid are; as flat as those of the dots
     */
    void shine(Spots spots, DotFrame frame, double reach, Light light) {
        double square = PixelGrid.square(reach);
        int count;
        for (int block = 0; block < words.length; block += HEAD + count) {
            frame.found.begin(words[block], words[block + 1]);
            count = words[block + 2];
            if (spots.isFlat()) {
                findFlat(block + HEAD, count, spots.plane(), frame.spots.plane(), square, frame.found);
            } else {
                find(block + HEAD, count, spots, frame.spots, square, frame.found);
            }
            light.add(frame.found, frame, square);
        }
    }

    private void findFlat(int from, int count, double[] pixels, double[] dots, double square, Found found) {
        int firstPlace = found.firstPlace;
        int firstDot = found.firstDot;
        int[] pairs = words;
        double[] squares = found.squares;
        int[] within = found.words;
        int next = 0;
        for (int i = from; i < from + count; i++) {
            int word = pairs[i];
            int place = firstPlace + Found.placeAbove(word);
            double distance = Spots.flatSquare(pixels, place, dots, firstDot + Found.dotAbove(word));
            squares[next] = distance;
            within[next] = word;
            next += Found.isWithin(distance, square);
        }
        found.count = next;
    }

    private void find(int from, int count, Spots pixels, Spots dots, double square, Found found) {
        int next = 0;
        for (int i = from; i < from + count; i++) {
            int word = words[i];
            int place = found.firstPlace + Found.placeAbove(word);
            double distance = pixels.squaredDistance(place, dots, found.firstDot + Found.dotAbove(word));
            found.squares[next] = distance;
            found.words[next] = word;
            next += Found.isWithin(distance, square);
        }
        found.count = next;
    }
}

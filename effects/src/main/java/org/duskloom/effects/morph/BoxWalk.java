package org.duskloom.effects.morph;

import org.duskloom.effects.assign.Points;

/** Goes through the stretches of a {@link PixelTree} that may hold pixels in a box. For one thread. */
final class BoxWalk {
    /** Two numbers for each time that pixels can be halved. */
    private static final int MOST_OPEN = 2 * Integer.SIZE;

    private final double[] low = new double[Points.AXES];
    private final double[] high = new double[Points.AXES];
    private final int[] open = new int[MOST_OPEN];
    private int openCount;
    private PixelTree tree;
    private int from;
    private int to;

    /** Lays the box round some places, one at least. */
    void fitRound(double[] x, double[] y, double[] z, int first, int end) {
        fitRound(0, x, first, end);
        fitRound(1, y, first, end);
        fitRound(2, z, first, end);
    }

    private void fitRound(int axis, double[] values, int first, int end) {
        double least = values[first];
        double greatest = least;
        for (int i = first + 1; i < end; i++) {
            least = Math.min(least, values[i]);
            greatest = Math.max(greatest, values[i]);
        }
        low[axis] = least;
        high[axis] = greatest;
    }

    double longestSide() {
        return Math.max(high[0] - low[0], Math.max(high[1] - low[1], high[2] - low[2]));
    }

    /** Grows the box on all sides, and goes before the first stretch in it. */
    void begin(PixelTree treeToWalk, double margin) {
        for (int axis = 0; axis < Points.AXES; axis++) {
            low[axis] -= margin;
            high[axis] += margin;
        }
        tree = treeToWalk;
        open[0] = 0;
        open[1] = tree.size();
        openCount = 2;
    }

    /** Goes to the next stretch; false if there is none. */
    boolean next() {
        if (openCount == 0) {
            return false;
        }
        to = open[--openCount];
        from = open[--openCount];
        while (tree.isCut(from, to)) {
            int middle = (from + to) >>> 1;
            int axis = tree.axis(middle);
            double cut = tree.cut(middle);
            if (high[axis] < cut) {
                to = middle;
            } else {
                if (low[axis] <= cut) {
                    open[openCount++] = from;
                    open[openCount++] = middle;
                }
                from = middle;
            }
        }
        return true;
    }

    /** The place of the first pixel of the stretch, in the order of the tree. */
    int from() {
        return from;
    }

    /** The place after that of the last. */
    int to() {
        return to;
    }
}

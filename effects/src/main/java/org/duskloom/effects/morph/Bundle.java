package org.duskloom.effects.morph;

/**
 * A few dots of one frame that are near each other, for which the pixels round them are looked up together. For one
 * thread; used for one bundle after the other.
 */
final class Bundle {
    /** The most dots. Chosen by measurement. */
    static final int CAPACITY = 16;

    /**
     * How many times the reach of its light a bundle may be wide; a wider one is looked at in halves. Likewise
     * measured.
     */
    private static final double WIDEST = 6;

    private final double[] x = new double[CAPACITY];
    private final double[] y = new double[CAPACITY];
    private final double[] z = new double[CAPACITY];
    private final int[] ways = new int[CAPACITY];
    private final BoxWalk walk = new BoxWalk();
    private final ColorWays.Colors colors;
    private final Light light;
    private int count;

    Bundle(ColorWays.Colors colors, Light light) {
        this.colors = colors;
        this.light = light;
    }

    boolean isFull() {
        return count == CAPACITY;
    }

    /** Adds a dot, whose colour goes a way. */
    void add(double dotX, double dotY, double dotZ, int way) {
        x[count] = dotX;
        y[count] = dotY;
        z[count] = dotZ;
        ways[count++] = way;
    }

    /** Lights the pixels round all dots, as far as their light reaches, and takes the dots away. */
    void shine(PixelTree tree, double reach) {
        shine(tree, reach, 0, count);
        count = 0;
    }

    private void shine(PixelTree tree, double reach, int from, int to) {
        walk.fitRound(x, y, z, from, to);
        if (to - from > 1 && walk.longestSide() > WIDEST * reach) {
            int middle = (from + to) >>> 1;
            shine(tree, reach, from, middle);
            shine(tree, reach, middle, to);
            return;
        }
        double square = Math.max(reach * reach, Double.MIN_NORMAL);
        walk.begin(tree, reach);
        while (walk.next()) {
            for (int dot = from; dot < to; dot++) {
                colors.give(ways[dot], light);
                tree.shine(walk.from(), walk.to(), x[dot], y[dot], z[dot], square, light);
            }
        }
    }
}

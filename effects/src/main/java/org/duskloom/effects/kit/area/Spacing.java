package org.duskloom.effects.kit.area;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * How far apart lights hang: the distance to the nearest neighbour that lies rather beside than above or below, and to
 * the nearest that lies rather above or below. Of these distances the lower quartile counts, so that a ring, where only
 * half of the lights have their neighbours beside them, has the spacing of its neighbours.
 *
 * @param across above 0; infinite if no two lights lie beside each other
 * @param up above 0; infinite if no two lights lie above each other
 */
record Spacing(double across, double up) {
    /** So many lights are asked for their neighbours, however many there are. */
    private static final int ASKED = 128;

    /** Nearer than this share of the whole size, two lights hang at one place. */
    private static final double SAME_PLACE = 1e-9;

    /** Which of the sorted distances counts. */
    private static final int QUARTER = 4;

    static Spacing of(double[] x, double[] y, double size) {
        int asked = Math.min(ASKED, x.length);
        int[] byPlace = byPlace(x, y);
        double[] across = new double[asked];
        double[] up = new double[asked];
        for (int i = 0; i < asked; i++) {
            int light = byPlace[(int) ((long) i * x.length / asked)];
            Spacing nearest = about(light, x, y, size * SAME_PLACE);
            across[i] = nearest.across;
            up[i] = nearest.up;
        }
        return new Spacing(lowerQuartile(across), lowerQuartile(up));
    }

    /**
     * From the left to the right, then upward: which lights are asked must not depend on the order of a file's rows.
     */
    private static int[] byPlace(double[] x, double[] y) {
        return IntStream.range(0, x.length)
                .boxed()
                .sorted(Comparator.<Integer>comparingDouble(light -> x[light]).thenComparingDouble(light -> y[light]))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    /** The distances to the neighbours of one light, endless where it has none. */
    private static Spacing about(int light, double[] x, double[] y, double samePlace) {
        double across = Double.POSITIVE_INFINITY;
        double up = Double.POSITIVE_INFINITY;
        for (int other = 0; other < x.length; other++) {
            double dx = Math.abs(x[other] - x[light]);
            double dy = Math.abs(y[other] - y[light]);
            double squared = dx * dx + dy * dy;
            if (squared > samePlace * samePlace) {
                across = dx >= dy - samePlace ? Math.min(across, squared) : across;
                up = dy >= dx - samePlace ? Math.min(up, squared) : up;
            }
        }
        return new Spacing(Math.sqrt(across), Math.sqrt(up));
    }

    private static double lowerQuartile(double[] distances) {
        double[] found =
                Arrays.stream(distances).filter(Double::isFinite).sorted().toArray();
        return found.length == 0 ? Double.POSITIVE_INFINITY : found[(found.length - 1) / QUARTER];
    }
}

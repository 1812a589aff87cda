package org.duskloom.engine.locate;

import java.util.stream.IntStream;

/**
 * Finds how far a picture is moved against the lit one: by as much as makes the light of both fall on the same dots,
 * that is, has the greatest sum of products. Lights that are dark in it take no part, so half of them will do. What is
 * bright in the dark picture is left out, as lamps outshine all.
 */
final class Aligner {
    /** About how many of the dots decide roughly. */
    private static final int ROUGHLY = 3000;

    private static final int NEAR = 8;
    private static final int FAR = 40;

    /** What is fainter than this share of a usual light says little, and there is much of it. */
    private static final double FAINT = 0.1;

    private final int[] x;
    private final int[] y;
    private final float[] weight;
    private final int count;

    private Aligner(int[] x, int[] y, float[] weight) {
        this.x = x;
        this.y = y;
        this.weight = weight;
        this.count = x.length;
    }

    static Aligner of(Reference reference) {
        KeptDots dots = reference.dots;
        int[] order = IntStream.range(0, dots.count())
                .filter(i -> !reference.nearLamp[i])
                .filter(i -> reference.lit[i] - reference.dark[i] > FAINT * reference.usualPeak)
                .toArray();
        float[] weight = new float[order.length];
        for (int i = 0; i < order.length; i++) {
            weight[i] = reference.lit[order[i]] - reference.dark[order[i]];
        }
        return new Aligner(
                IntStream.of(order).map(dots::x).toArray(),
                IntStream.of(order).map(dots::y).toArray(),
                weight);
    }

    /** How far a picture is moved; not at all if it shows no light. */
    Shift of(Plane picture) {
        if (count == 0) {
            return Shift.NONE;
        }
        int stride = Math.max(1, count / ROUGHLY);
        int[] best = best(picture, stride, 0, 0, NEAR);
        if (Math.max(Math.abs(best[0]), Math.abs(best[1])) >= NEAR - 1) {
            best = best(picture, stride, 0, 0, FAR);
        }
        best = best(picture, 1, best[0], best[1], 1);
        double middle = sum(picture, 1, best[0], best[1]);
        double dx = best[0] + top(sum(picture, 1, best[0] - 1, best[1]), middle, sum(picture, 1, best[0] + 1, best[1]));
        double dy = best[1] + top(sum(picture, 1, best[0], best[1] - 1), middle, sum(picture, 1, best[0], best[1] + 1));
        return new Shift(dx, dy);
    }

    private int[] best(Plane picture, int stride, int aroundX, int aroundY, int reach) {
        double most = Double.NEGATIVE_INFINITY;
        int[] best = {aroundX, aroundY};
        for (int dy = aroundY - reach; dy <= aroundY + reach; dy++) {
            for (int dx = aroundX - reach; dx <= aroundX + reach; dx++) {
                double sum = sum(picture, stride, dx, dy);
                if (sum > most) {
                    most = sum;
                    best[0] = dx;
                    best[1] = dy;
                }
            }
        }
        return best;
    }

    private double sum(Plane picture, int stride, int dx, int dy) {
        double sum = 0;
        for (int i = 0; i < count; i += stride) {
            int column = x[i] + dx;
            int row = y[i] + dy;
            if (column >= 0 && column < picture.width && row >= 0 && row < picture.height) {
                sum += weight[i] * picture.light(row * picture.width + column);
            }
        }
        return sum;
    }

    /** Where a parabola through three values at -1, 0 and 1 has its top; the middle one is the greatest. */
    private static double top(double before, double middle, double after) {
        double bend = before - 2 * middle + after;
        return bend < 0 ? Math.max(-0.5, Math.min(0.5, 0.5 * (before - after) / bend)) : 0;
    }
}

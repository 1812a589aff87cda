package org.duskloom.engine.plan;

import java.util.Arrays;
import org.duskloom.engine.timeline.PixelOrder;

/**
 * Where pixels stand along an order.
 *
 * @param position from 0 to {@code stepCount} less 1; pixels side by side share the middle of their places
 * @param stepCount how many places there are
 */
record OrderPlaces(double[] position, int stepCount) {
    /** Angles that differ by no more than this share of a turn are the same. */
    private static final double SAME_ANGLE_TURNS = 1e-6;

    /** All pixels on one step. */
    static OrderPlaces step(int pixelCount, int step, int stepCount) {
        double[] position = new double[pixelCount];
        Arrays.fill(position, step);
        return new OrderPlaces(position, stepCount);
    }

    /** Places along the wiring, or by where the pixels are. */
    static OrderPlaces along(PixelOrder order, int[] pixels, GroundAxes axes, Box box) {
        if (order == PixelOrder.WIRING) {
            double[] position = new double[pixels.length];
            for (int i = 0; i < position.length; i++) {
                position[i] = i;
            }
            return new OrderPlaces(position, pixels.length);
        }
        double[] key = new double[pixels.length];
        for (int i = 0; i < key.length; i++) {
            key[i] = key(order, pixels[i], axes, box);
        }
        double tolerance = order == PixelOrder.CLOCKWISE ? SAME_ANGLE_TURNS : box.samePlace();
        return new OrderPlaces(middleRanks(key, tolerance), pixels.length);
    }

    private static double key(PixelOrder order, int pixel, GroundAxes axes, Box box) {
        double x = axes.x(pixel) - box.centreX();
        double y = axes.y(pixel) - box.centreY();
        double z = axes.z(pixel) - box.centreZ();
        return switch (order) {
            case RIGHT -> x;
            case UP -> y;
            case OUTWARD -> Math.sqrt(x * x + y * y + z * z);
            case CLOCKWISE -> clockwiseTurns(x, y, box.samePlace());
            case WIRING, AROUND, MEMBERS -> throw new IllegalArgumentException(order.word());
        };
    }

    /**
     * The angle from straight up, as the hands of a clock go, in turns: 0 up to, but not including, 1. At the centre it
     * is 0.
     */
    static double clockwiseTurns(double x, double y, double samePlace) {
        if (Math.abs(x) <= samePlace && Math.abs(y) <= samePlace) {
            return 0;
        }
        double turns = StrictMath.atan2(x, y) / (2 * Math.PI);
        double positive = turns < 0 ? turns + 1 : turns;
        // What rounding puts just before the top belongs on the top.
        return positive > 1 - SAME_ANGLE_TURNS ? 0 : positive;
    }

    /** The rank of each key; keys that hardly differ share the middle of their ranks. */
    static double[] middleRanks(double[] key, double tolerance) {
        Integer[] sorted = new Integer[key.length];
        Arrays.setAll(sorted, i -> i);
        Arrays.sort(sorted, (a, b) -> Double.compare(key[a], key[b]));
        double[] rank = new double[key.length];
        int start = 0;
        for (int end = 1; end <= sorted.length; end++) {
            if (end == sorted.length || key[sorted[end]] - key[sorted[end - 1]] > tolerance) {
                for (int i = start; i < end; i++) {
                    rank[sorted[i]] = (start + end - 1) / 2.0;
                }
                start = end;
            }
        }
        return rank;
    }
}

package org.duskloom.effects.assign;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/** Sets of points to pair. */
public final class Clouds {
    private Clouds() {}

    /** Points from triples or pairs of coordinates. */
    public static Points of(double[]... places) {
        return new Points(axis(places, 0), axis(places, 1), axis(places, 2));
    }

    private static double[] axis(double[][] places, int axis) {
        return Arrays.stream(places)
                .mapToDouble(place -> axis < place.length ? place[axis] : 0)
                .toArray();
    }

    private static Points each(int count, IntFunction<double[]> place) {
        return of(IntStream.range(0, count).mapToObj(place).toArray(double[][]::new));
    }

    /** Scattered in a disc round the middle. */
    public static Points disc(int count, double radius, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        return each(count, i -> {
            double turn = 2 * Math.PI * random.nextDouble();
            double r = radius * Math.sqrt(random.nextDouble());
            return new double[] {r * Math.cos(turn), r * Math.sin(turn)};
        });
    }

    /** Scattered in a box that is a little higher for other seeds. */
    public static Points box(int count, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        return each(count, i ->
                new double[] {random.nextDouble(), 0.7 * random.nextDouble() + 0.2 * seed, 0.6 * random.nextDouble()});
    }

    /** Evenly along a line from the left to the right. */
    public static Points line(int count, double y) {
        return each(count, i -> new double[] {-1 + 2.0 * i / Math.max(1, count - 1), y});
    }

    /** Evenly round a ring, counter-clockwise from the right. */
    public static Points ring(int count, double radius) {
        return each(count, i ->
                new double[] {radius * Math.cos(2 * Math.PI * i / count), radius * Math.sin(2 * Math.PI * i / count)});
    }

    /** Rows and columns, about as many of each. */
    public static Points grid(int count, double left, double size) {
        int side = (int) Math.ceil(Math.sqrt(count));
        return each(count, i -> new double[] {left + size * (i % side) / side, -0.7 + size * (i / side) / side});
    }

    /** Five heaps of different sizes, at places that the seed turns. */
    public static Points heaps(int count, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        return each(count, i -> {
            double turn = 1.3 * seed * random.nextInt(5);
            return new double[] {
                Math.cos(turn) + 0.1 * random.nextDouble(), 0.8 * Math.sin(turn) + 0.1 * random.nextDouble()
            };
        });
    }

    /** The points with each coordinate changed: {@code matrix} {xx, xy, yx, yy} first, then moved by {dx, dy}. */
    public static Points moved(Points points, double[] matrix, double dx, double dy) {
        return each(points.count(), i -> new double[] {
            matrix[0] * points.x()[i] + matrix[1] * points.y()[i] + dx,
            matrix[2] * points.x()[i] + matrix[3] * points.y()[i] + dy,
            points.z()[i]
        });
    }

    /** The numbers below a limit in another order. */
    public static int[] shuffled(int count, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int[] order = IntStream.range(0, count).toArray();
        for (int i = count - 1; i > 0; i--) {
            int j = random.nextInt(i + 1);
            int moved = order[i];
            order[i] = order[j];
            order[j] = moved;
        }
        return order;
    }
}

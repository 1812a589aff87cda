package org.duskloom.cli;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * A canvas by the page of meanings, section "The canvas", in doubles; nothing of the program is used.
 *
 * @param pixels numbers on the stage
 * @param x canvas units
 * @param y canvas units
 * @param position along the order
 * @param count steps of the order
 */
record RecomputedCanvas(int[] pixels, double[] x, double[] y, double[] position, int count) {

    /** Lays a canvas over pixels; {@code member} says which member each belongs to, of so many. */
    static RecomputedCanvas of(double[][] places, int[] pixels, int[] member, int members, String fit, String order) {
        double[] middle = new double[3];
        double[] half = new double[3];
        for (int axis = 0; axis < 3; axis++) {
            int a = axis;
            double low =
                    Arrays.stream(pixels).mapToDouble(p -> places[p][a]).min().orElseThrow();
            double high =
                    Arrays.stream(pixels).mapToDouble(p -> places[p][a]).max().orElseThrow();
            middle[axis] = (low + high) / 2;
            half[axis] = (high - low) / 2;
        }
        double longest = Math.max(half[0], Math.max(half[1], half[2]));
        double[][] from = Arrays.stream(pixels)
                .mapToObj(p -> IntStream.range(0, 3)
                        .mapToDouble(a -> places[p][a] - middle[a])
                        .toArray())
                .toArray(double[][]::new);
        return new RecomputedCanvas(
                pixels,
                fitted(from, 0, fit, half[0], longest),
                fitted(from, 1, fit, half[1], longest),
                positions(from, member, order, longest),
                order.equals("members") ? members : pixels.length);
    }

    private static double[] fitted(double[][] from, int axis, String fit, double half, double longest) {
        double scale = switch (fit) {
            case "contain" -> longest;
            case "stretch" -> half;
            default -> 1;
        };
        boolean none = !fit.equals("none") && half <= 1e-6 * longest;
        return Arrays.stream(from)
                .mapToDouble(place -> none ? 0 : place[axis] / scale)
                .toArray();
    }

    private static double[] positions(double[][] from, int[] member, String order, double longest) {
        return switch (order) {
            case "wiring" -> IntStream.range(0, from.length).asDoubleStream().toArray();
            case "members" -> Arrays.stream(member).asDoubleStream().toArray();
            case "around" -> around(from, member);
            case "right" -> ranks(from.length, i -> from[i][0], 1e-6 * longest);
            case "up" -> ranks(from.length, i -> from[i][1], 1e-6 * longest);
            case "outward" ->
                ranks(from.length, i -> Math.hypot(Math.hypot(from[i][0], from[i][1]), from[i][2]), 1e-6 * longest);
            case "clockwise" -> ranks(from.length, i -> clock(from[i][0], from[i][1], 1e-6 * longest), 1e-6);
            default -> throw new IllegalArgumentException(order);
        };
    }

    /** The same with the positions of another canvas over the same pixels. */
    RecomputedCanvas withPositionsOf(RecomputedCanvas other) {
        return new RecomputedCanvas(pixels, x, y, other.position, count);
    }

    /** Member after member, each clockwise about its own middle. */
    private static double[] around(double[][] from, int[] member) {
        double[] position = new double[from.length];
        int before = 0;
        for (int m = 0; before < from.length; m++) {
            int number = m;
            int[] own = IntStream.range(0, from.length)
                    .filter(i -> member[i] == number)
                    .toArray();
            if (own.length > 0) {
                double x = middle(from, own, 0);
                double y = middle(from, own, 1);
                double[] rank = ranks(own.length, i -> clock(from[own[i]][0] - x, from[own[i]][1] - y, 1e-9), 1e-6);
                for (int i = 0; i < own.length; i++) {
                    position[own[i]] = before + rank[i];
                }
                before += own.length;
            }
        }
        return position;
    }

    /** The middle of the box round some places, along an axis. */
    static double middle(double[][] places, int[] some, int axis) {
        double low = Arrays.stream(some).mapToDouble(i -> places[i][axis]).min().orElseThrow();
        double high =
                Arrays.stream(some).mapToDouble(i -> places[i][axis]).max().orElseThrow();
        return (low + high) / 2;
    }

    /**
     * The places with those of some pixels turned until right points from the middle of all of a prop to that of the
     * pixels.
     */
    static double[][] turnedOutward(double[][] places, int[] prop, int[] pixels) {
        double dx = middle(places, pixels, 0) - middle(places, prop, 0);
        double dy = middle(places, pixels, 1) - middle(places, prop, 1);
        double distance = Math.hypot(dx, dy);
        double[][] turned = places.clone();
        for (int pixel : pixels) {
            double x = places[pixel][0];
            double y = places[pixel][1];
            turned[pixel] = new double[] {(x * dx + y * dy) / distance, (y * dx - x * dy) / distance, places[pixel][2]};
        }
        return turned;
    }

    /** Turns from straight up, as a clock's hands go. */
    static double clock(double x, double y, double nothing) {
        if (Math.abs(x) <= nothing && Math.abs(y) <= nothing) {
            return 0;
        }
        double turns = Math.atan2(x, y) / (2 * Math.PI);
        double positive = turns - Math.floor(turns);
        return positive > 1 - 1e-6 ? 0 : positive;
    }

    /** Ranks from 0; numbers that follow each other within the tolerance share the mean of theirs. */
    private static double[] ranks(int size, IntToDoubleFunction number, double tolerance) {
        int[] sorted = IntStream.range(0, size)
                .boxed()
                .sorted((a, b) -> Double.compare(number.applyAsDouble(a), number.applyAsDouble(b)))
                .mapToInt(Integer::intValue)
                .toArray();
        double[] rank = new double[size];
        for (int first = 0; first < size; ) {
            int last = first;
            while (last + 1 < size
                    && number.applyAsDouble(sorted[last + 1]) - number.applyAsDouble(sorted[last]) <= tolerance) {
                last++;
            }
            for (int i = first; i <= last; i++) {
                rank[sorted[i]] = (first + last) / 2.0;
            }
            first = last + 1;
        }
        return rank;
    }

    /** The share of each value in the range of all. */
    double[] share(IntToDoubleFunction value) {
        double[] values = IntStream.range(0, pixels.length).mapToDouble(value).toArray();
        double low = Arrays.stream(values).min().orElseThrow();
        double range = Arrays.stream(values).max().orElseThrow() - low;
        return Arrays.stream(values)
                .map(v -> range < 1e-9 ? 0 : (v - low) / range)
                .toArray();
    }

    double[] along(double degrees) {
        double cos = Math.cos(Math.toRadians(degrees));
        double sin = Math.sin(Math.toRadians(degrees));
        return share(i -> x[i] * cos + y[i] * sin);
    }
}

package org.duskloom.effects.morph;

import java.util.Arrays;
import org.duskloom.effects.assign.Halving;
import org.duskloom.effects.assign.Points;

/**
 * Pixels by place, to find those near a point: halved along the axis on which they reach farthest, down to a few (J. L.
 * Bentley, "Multidimensional binary search trees used for associative searching", Communications of the ACM 18(9),
 * 1975). Pixels stand in an array; a stretch of more than a few is cut in the middle. Immutable.
 */
final class PixelTree {
    /** The most pixels of a stretch that is not cut. Chosen by measurement. */
    private static final int FEW = 8;

    /** Beside the axis: all pixels of the stretch lie at one place. */
    private static final int ONE_PLACE = 4;

    /** The pixels' numbers, in the order of the tree. */
    private final int[] pixels;
    /** Their places, likewise. */
    private final Points places;
    /** Where a stretch is cut, by the place of its middle. */
    private final double[] cut;
    /** Along which axis. */
    private final byte[] axis;

    /**
     * A tree of some pixels.
     *
     * @param all the places of all pixels, by number
     * @param numbers those that the tree is of, none twice
     */
    PixelTree(Points all, int[] numbers) {
        pixels = numbers.clone();
        cut = new double[pixels.length];
        axis = new byte[pixels.length];
        halve(all, 0, pixels.length);
        places = all.picked(pixels);
    }

    private void halve(Points all, int from, int to) {
        if (!isCut(from, to)) {
            return;
        }
        int middle = (from + to) >>> 1;
        int longest = all.longestAxis(pixels, from, to);
        double[] values = all.along(longest);
        Halving.split(pixels, from, middle, to, values);
        axis[middle] = (byte) (all.extent(longest, pixels, from, to) == 0 ? longest | ONE_PLACE : longest);
        cut[middle] = Arrays.stream(pixels, middle, to)
                .mapToDouble(pixel -> values[pixel])
                .min()
                .orElseThrow();
        halve(all, from, middle);
        halve(all, middle, to);
    }

    /** How many pixels there are. */
    int size() {
        return pixels.length;
    }

    /** Whether a stretch is cut. */
    private static boolean isCut(int from, int to) {
        return to - from > FEW;
    }

    private double squaredDistance(int i, double x, double y, double z) {
        double dx = places.x()[i] - x;
        double dy = places.y()[i] - y;
        double dz = places.z()[i] - z;
        return dx * dx + dy * dy + dz * dz;
    }

    /**
     * How far the pixels of a part typically are from their nearest neighbours: the median; 0 if there are no
     * neighbours.
     */
    double spacing(Points part) {
        double[] distances = new double[part.count()];
        int count = 0;
        for (int i = 0; i < distances.length; i++) {
            double square = nearest(part.x()[i], part.y()[i], part.z()[i], 0, size(), Double.POSITIVE_INFINITY);
            if (square < Double.POSITIVE_INFINITY) {
                distances[count++] = Math.sqrt(square);
            }
        }
        Arrays.sort(distances, 0, count);
        return count == 0 ? 0 : distances[(count - 1) / 2];
    }

    /**
     * The square of the distance from a place to the nearest pixel of a stretch that is not at the very place, or the
     * best.
     */
    private double nearest(double x, double y, double z, int from, int to, double best) {
        int middle = (from + to) >>> 1;
        if (!isCut(from, to)) {
            return nearestOf(x, y, z, from, to, best);
        }
        if ((axis[middle] & ONE_PLACE) != 0) {
            return nearestOf(x, y, z, from, from + 1, best);
        }
        double beyond = (axis[middle] == 0 ? x : axis[middle] == 1 ? y : z) - cut[middle];
        boolean before = beyond < 0;
        double near = before ? nearest(x, y, z, from, middle, best) : nearest(x, y, z, middle, to, best);
        if (beyond * beyond > near) {
            return near;
        }
        return before ? nearest(x, y, z, middle, to, near) : nearest(x, y, z, from, middle, near);
    }

    private double nearestOf(double x, double y, double z, int from, int to, double before) {
        double best = before;
        for (int i = from; i < to; i++) {
            double square = squaredDistance(i, x, y, z);
            best = square > 0 && square < best ? square : best;
        }
        return best;
    }
}

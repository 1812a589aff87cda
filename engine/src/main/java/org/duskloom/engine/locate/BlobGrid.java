package org.duskloom.engine.locate;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Finds the blobs that are near a place. */
final class BlobGrid {
    private static final int[] NONE = {};

    private final List<Blob> blobs;
    private final double reach;
    private final Map<Long, int[]> cells = new HashMap<>();

    /** @param reach how far off a blob is near, above 0 */
    BlobGrid(List<Blob> blobs, double reach) {
        this.blobs = blobs;
        this.reach = reach;
        for (int i = 0; i < blobs.size(); i++) {
            int[] one = {i};
            cells.merge(
                    key(cell(blobs.get(i).x), cell(blobs.get(i).y)),
                    one,
                    (a, b) -> IntStream.concat(IntStream.of(a), IntStream.of(b)).toArray());
        }
    }

    private long cell(double at) {
        return (long) StrictMath.floor(at / reach);
    }

    private static long key(long column, long row) {
        return row << 32 ^ column & 0xFFFFFFFFL;
    }

    /** Which blobs are within reach, the nearest first, at most so many. */
    int[] nearest(double x, double y, int most) {
        int[] near = new int[8];
        double[] squares = new double[8];
        int count = 0;
        for (long row = cell(y) - 1; row <= cell(y) + 1; row++) {
            for (long column = cell(x) - 1; column <= cell(x) + 1; column++) {
                for (int blob : cells.getOrDefault(key(column, row), NONE)) {
                    double dx = blobs.get(blob).x - x;
                    double dy = blobs.get(blob).y - y;
                    double square = dx * dx + dy * dy;
                    if (square <= reach * reach) {
                        if (count == near.length) {
                            near = Arrays.copyOf(near, 2 * count);
                            squares = Arrays.copyOf(squares, 2 * count);
                        }
                        int at = count++;
                        for (; at > 0 && squares[at - 1] > square; at--) {
                            near[at] = near[at - 1];
                            squares[at] = squares[at - 1];
                        }
                        near[at] = blob;
                        squares[at] = square;
                    }
                }
            }
        }
        return Arrays.copyOf(near, Math.min(count, most));
    }
}

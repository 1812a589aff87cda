package org.duskloom.engine.locate;

import java.util.Arrays;
import java.util.List;

/**
 * Brings the rounds of a run together, in which pixels take turns: between them the tripod may have moved, and no
 * light is in two of them. A wire runs on smoothly, to one side as often as to the other, so that in the middle a
 * pixel is half way between its neighbours.
 */
final class Rounds {
    private static final int LEAST = 8;

    private Rounds() {}

    /** Moves the blobs of all rounds but the first to where the first one would have them. */
    static void join(List<Blob> blobs, int pixels, int rounds) {
        Candidates candidates = Candidates.of(blobs, pixels);
        double[] bendX = new double[rounds];
        double[] bendY = new double[rounds];
        for (int round = 0; round < rounds; round++) {
            double[] x = new double[pixels];
            double[] y = new double[pixels];
            int count = 0;
            for (int pixel = round; pixel < pixels; pixel += rounds) {
                if (pixel > 0
                        && pixel < pixels - 1
                        && candidates.has(pixel - 1)
                        && candidates.has(pixel)
                        && candidates.has(pixel + 1)) {
                    Blob before = candidates.of(pixel - 1);
                    Blob at = candidates.of(pixel);
                    Blob after = candidates.of(pixel + 1);
                    x[count] = at.x - 0.5 * (before.x + after.x);
                    y[count++] = at.y - 0.5 * (before.y + after.y);
                }
            }
            if (count < LEAST) {
                return;
            }
            bendX[round] = median(x, count);
            bendY[round] = median(y, count);
        }
        double[] offX = offsets(bendX);
        double[] offY = offsets(bendY);
        for (Blob blob : blobs) {
            blob.x -= offX[blob.pixel % rounds];
            blob.y -= offY[blob.pixel % rounds];
        }
    }

    private static double median(double[] values, int count) {
        Arrays.sort(values, 0, count);
        return 0.5 * (values[(count - 1) / 2] + values[count / 2]);
    }

    /**
     * Offsets with the first one 0, each as much more than the mean of those before and after it, round in a ring, as
     * is said; by averaging again and again, which is exact enough long before the end for rounds as few as these.
     */
    private static double[] offsets(double[] bends) {
        int n = bends.length;
        double[] offsets = new double[n];
        for (int turn = 0; turn < 1000; turn++) {
            for (int i = 0; i < n; i++) {
                offsets[i] = bends[i] + 0.5 * (offsets[(i + n - 1) % n] + offsets[(i + 1) % n]);
            }
        }
        double first = offsets[0];
        for (int i = 0; i < n; i++) {
            offsets[i] -= first;
        }
        return offsets;
    }
}

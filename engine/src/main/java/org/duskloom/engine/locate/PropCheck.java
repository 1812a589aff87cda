package org.duskloom.engine.locate;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.map.Prop;

/**
 * Refuses what stands off its prop: pixels that are near each other on a prop are near each other in the picture,
 * however the prop hangs and from wherever it is seen.
 */
final class PropCheck {
    /** With how many of the nearest pixels of the prop each is compared. */
    private static final int NEAREST = 6;

    /** How many times as far as usual a pixel may be from those that are near it on its prop. */
    private static final double FAR = 2.5;

    /** Below so many dots nothing is far. */
    private static final double LEAST_DOTS = 4;

    /**
     * By how many steps, from it to the nearest pixel on its prop, a pixel may be off where the others would have it:
     * two pixels that changed places are seen so.
     */
    private static final double STEPS = 1.5;

    private final Candidates candidates;
    private final Positions own;

    private PropCheck(Candidates candidates, Positions own) {
        this.candidates = candidates;
        this.own = own;
    }

    static void check(Candidates candidates, PixelMap map) {
        PropCheck check = new PropCheck(candidates, map.own());
        for (Prop prop : map.props()) {
            int[] found = IntStream.range(prop.firstPixel(), prop.firstPixel() + prop.pixelCount())
                    .filter(candidates::has)
                    .toArray();
            if (found.length > NEAREST) {
                check.check(found);
            }
        }
    }

    private void check(int[] found) {
        int[][] near =
                Arrays.stream(found).mapToObj(pixel -> nearest(pixel, found)).toArray(int[][]::new);
        if (near[0].length == 0) {
            // All of the prop at one place: nothing is near or far on it.
            return;
        }
        PropView view = PropView.of(found, candidates, own);
        double[] stretched = IntStream.range(0, found.length)
                .mapToDouble(i -> stretch(found[i], near[i]))
                .toArray();
        double[] strayed = IntStream.range(0, found.length)
                .mapToDouble(i -> view.strayed(found[i], near[i]))
                .toArray();
        double usualStretch = usual(stretched);
        double usualStray = usual(strayed);
        for (int i = 0; i < found.length; i++) {
            double tolerance = LEAST_DOTS / own.distance(found[i], near[i][near[i].length / 2]);
            double step = usualStretch * own.distance(found[i], near[i][0]);
            if (stretched[i] > FAR * usualStretch + tolerance
                    || strayed[i] > Math.max(LEAST_DOTS + STEPS * step, FAR * usualStray)) {
                candidates.refuse(found[i]);
            }
        }
    }

    /** Seen from aside a prop is narrower than high, so most of the greater ones are usual too. */
    private static double usual(double[] values) {
        return Arrays.stream(values).sorted().toArray()[values.length * 3 / 4];
    }

    /** The nearest one first; of those that are as near the first in wiring order. */
    private int[] nearest(int pixel, int[] found) {
        int[] near = new int[NEAREST];
        double[] distances = new double[NEAREST];
        int count = 0;
        for (int other : found) {
            double distance = own.distance(pixel, other);
            if (other == pixel || distance == 0 || count == NEAREST && distance >= distances[count - 1]) {
                continue;
            }
            count = Math.min(NEAREST, count + 1);
            int at = count - 1;
            for (; at > 0 && distances[at - 1] > distance; at--) {
                near[at] = near[at - 1];
                distances[at] = distances[at - 1];
            }
            near[at] = other;
            distances[at] = distance;
        }
        return Arrays.copyOf(near, count);
    }

    /** How many dots a unit is, by the median of the near pixels. */
    private double stretch(int pixel, int[] near) {
        double[] stretches = Arrays.stream(near)
                .mapToDouble(
                        other -> candidates.of(pixel).distanceTo(candidates.of(other)) / own.distance(pixel, other))
                .sorted()
                .toArray();
        return stretches[stretches.length / 2];
    }
}

package org.duskloom.engine.locate;

import java.util.Arrays;
import java.util.Comparator;
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
        double[] stretches = IntStream.range(0, found.length)
                .mapToDouble(i -> stretch(found[i], near[i]))
                .sorted()
                .toArray();
        // Seen from aside a prop is narrower than high, so most of the greater ones are usual too.
        double usual = stretches[stretches.length * 3 / 4];
        for (int i = 0; i < found.length; i++) {
            if (near[i].length == 0) {
                // All of the prop at one place: nothing is near or far on it.
                continue;
            }
            double tolerance = LEAST_DOTS / own.distance(found[i], near[i][near[i].length / 2]);
            if (stretch(found[i], near[i]) > FAR * usual + tolerance) {
                candidates.refuse(found[i]);
            }
        }
    }

    private int[] nearest(int pixel, int[] found) {
        return Arrays.stream(found)
                .filter(other -> other != pixel && own.distance(pixel, other) > 0)
                .boxed()
                .sorted(Comparator.comparingDouble(other -> own.distance(pixel, other)))
                .limit(NEAREST)
                .mapToInt(Integer::intValue)
                .toArray();
    }

    /** How many dots a unit is, by the median of the near pixels. */
    private double stretch(int pixel, int[] near) {
        double[] stretches = Arrays.stream(near)
                .filter(candidates::has)
                .mapToDouble(
                        other -> candidates.of(pixel).distanceTo(candidates.of(other)) / own.distance(pixel, other))
                .sorted()
                .toArray();
        return stretches.length == 0 ? 0 : stretches[stretches.length / 2];
    }
}

package org.duskloom.effects.drift;

import org.duskloom.effects.kit.Fractions;
import org.duskloom.effects.kit.SharePlane;
import org.duskloom.effects.kit.WindowOffsets;
import org.duskloom.engine.random.GradientNoise;
import org.duskloom.engine.random.NoiseCell;

/**
 * The two planes of whole z that each pixel is between. They are computed anew only for pixels that have come to the
 * next plane, so this is a cache of values that depend on pixel and plane alone. For one thread.
 */
final class PlanePairs {
    private final OctaveSpace space;
    private final float[] starts;
    /** How many planes have gone by for each pixel, modulo 2^32, which the period of the noise divides. */
    private final int[] goneBy;

    private final float[] values;
    private final float[] slopes;
    private final float[] nextValues;
    private final float[] nextSlopes;

    private final NoiseCell cell = new NoiseCell();
    private boolean known;
    private long begun;

    PlanePairs(OctaveSpace space) {
        this.space = space;
        int pixels = space.pixelCount();
        starts = new float[pixels];
        goneBy = new int[pixels];
        values = new float[pixels];
        slopes = new float[pixels];
        nextValues = new float[pixels];
        nextSlopes = new float[pixels];
    }

    /** Goes to an instant with places that have moved since the last one. */
    void compute(long wholePasses, float passFraction) {
        int[] order = space.places().nearOrder();
        int[] memberOf = space.memberOf();
        for (int from = 0; from < order.length; ) {
            int member = memberOf[order[from]];
            int to = from + 1;
            while (to < order.length && memberOf[order[to]] == member) {
                to++;
            }
            compute(order, from, to, member, wholePasses, passFraction);
            from = to;
        }
    }

    private void compute(int[] order, int from, int to, int member, long wholePasses, float passFraction) {
        double fineness = space.fineness();
        double[] placesX = space.places().x();
        double[] placesY = space.places().y();
        double[] placesZ = space.places().z();
        double offsetX = space.offset(member, 0);
        double offsetY = space.offset(member, 1);
        double offsetZ = space.offset(member, 2);
        GradientNoise noise = space.noiseOf(member);
        for (int i = from; i < to; i++) {
            int pixel = order[i];
            double z = placesZ[pixel] * fineness + offsetZ;
            double floorZ = Math.floor(z);
            float start = Math.min(SharePlane.LAST, (float) (z - floorZ));
            starts[pixel] = start;
            long plane = (long) floorZ + (int) wholePasses + Fractions.wholeOfSum(start, passFraction);
            cell.go(noise, placesX[pixel] * fineness + offsetX, placesY[pixel] * fineness + offsetY, plane);
            cell.near(pixel, values, slopes);
            cell.next(pixel, nextValues, nextSlopes);
        }
    }

    /**
     * Goes to an instant with places that never move.
     *
     * @param offsets the start of each pixel
     */
    void advance(long wholePasses, float passFraction, WindowOffsets offsets) {
        long nowBegun = offsets.begun(wholePasses, passFraction);
        int count = starts.length;
        if (known && nowBegun < begun && begun - nowBegun < count) {
            for (long plane = nowBegun; plane < begun; plane++) {
                go(offsets.pixelOfSlot((int) Math.floorMod(plane, (long) count)), (int)
                        Math.floorDiv(plane, (long) count));
            }
        } else {
            long first = known && begun <= nowBegun ? Math.max(begun, nowBegun - count) : nowBegun - count;
            for (long plane = first; plane < nowBegun; plane++) {
                int pixel = offsets.pixelOfSlot((int) Math.floorMod(plane, (long) count));
                go(pixel, (int) Math.floorDiv(plane, (long) count) + 1);
            }
        }
        known = true;
        begun = nowBegun;
    }

    /** Where each pixel stands between its planes when no pass has gone by; only after {@link #compute}. */
    float[] starts() {
        return starts;
    }

    /** What the nearer plane gives at the plane itself. */
    float[] values() {
        return values;
    }

    /** How this grows along z. */
    float[] slopes() {
        return slopes;
    }

    /** The same of the next plane. */
    float[] nextValues() {
        return nextValues;
    }

    /** The same of the next plane. */
    float[] nextSlopes() {
        return nextSlopes;
    }

    private void go(int pixel, int nowGoneBy) {
        boolean next = known && nowGoneBy == goneBy[pixel] + 1;
        goneBy[pixel] = nowGoneBy;
        if (next) {
            values[pixel] = nextValues[pixel];
            slopes[pixel] = nextSlopes[pixel];
            space.fill(pixel, nowGoneBy + 1, nextValues, nextSlopes);
        } else {
            fillBoth(pixel);
        }
    }

    private void fillBoth(int pixel) {
        space.fill(pixel, goneBy[pixel], values, slopes);
        space.fill(pixel, goneBy[pixel] + 1, nextValues, nextSlopes);
    }
}

package org.duskloom.effects.drift;

import org.duskloom.effects.kit.WindowOffsets;

/**
 * The two planes of whole z that each pixel is between. They are computed anew only for pixels that have come to the
 * next plane, so this is a cache of values that depend on pixel and plane alone. For one thread.
 */
final class PlanePairs {
    private final OctaveSpace space;
    /** How many planes have gone by for each pixel, modulo 2^32, which the period of the noise divides. */
    private final int[] goneBy;

    private final float[] values;
    private final float[] slopes;
    private final float[] nextValues;
    private final float[] nextSlopes;

    private boolean known;
    private long begun;

    PlanePairs(OctaveSpace space) {
        this.space = space;
        int pixels = space.pixelCount();
        goneBy = new int[pixels];
        values = new float[pixels];
        slopes = new float[pixels];
        nextValues = new float[pixels];
        nextSlopes = new float[pixels];
    }

    /**
     * Goes to an instant.
     *
     * @param offsets the start of each pixel
     */
    void advance(long wholePasses, float passFraction, WindowOffsets offsets) {
        long nowBegun = offsets.begun(wholePasses, passFraction);
        int count = goneBy.length;
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

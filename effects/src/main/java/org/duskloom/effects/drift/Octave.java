package org.duskloom.effects.drift;

import org.duskloom.effects.kit.Fractions;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.Patch;
import org.duskloom.engine.random.GradientNoise;
import org.duskloom.engine.random.StableHash;

/**
 * One octave of the noise. Time runs along z, and between two planes of whole z the noise of a pixel depends on four numbers
 * only; these are kept until the pixel comes to the next plane, so this is a cache of values that depend on pixel and plane
 * alone. For one thread.
 */
final class Octave {
    private final NoisePlaces places;
    private final double fineness;
    private final int[] memberOf;
    private final GradientNoise[] noiseOfMember;
    private final double[] offsetOfMember;

    /** Where each pixel stands between two planes when no pass has gone by, in [0, 1). */
    private final float[] starts;
    /** How many planes have gone by for each pixel, modulo 2^32, which the period of the noise divides. */
    private final int[] planes;

    private final float[] values;
    private final float[] slopes;
    private final float[] nextValues;
    private final float[] nextSlopes;
    private boolean stale = true;
    private int planesNow;
    private float fractionNow;

    Octave(Canvas canvas, NoisePlaces places, int number) {
        this.places = places;
        fineness = 1L << number;
        memberOf = canvas.memberOf();
        noiseOfMember = new GradientNoise[canvas.memberCount()];
        offsetOfMember = new double[3 * canvas.memberCount()];
        for (int member = 0; member < noiseOfMember.length; member++) {
            long key = StableHash.combine(canvas.memberKey(member), number);
            noiseOfMember[member] = new GradientNoise(key);
            for (int axis = 0; axis < 3; axis++) {
                offsetOfMember[3 * member + axis] = StableHash.unitDouble(StableHash.combine(key, axis));
            }
        }
        int pixels = canvas.pixelCount();
        starts = new float[pixels];
        planes = new int[pixels];
        values = new float[pixels];
        slopes = new float[pixels];
        nextValues = new float[pixels];
        nextSlopes = new float[pixels];
    }

    /** Forgets what is kept, because the places have moved. */
    void forget() {
        stale = true;
    }

    /** Goes to an instant. */
    void begin(double phi) {
        double way = phi * fineness;
        double whole = Math.floor(way);
        planesNow = (int) (long) whole;
        fractionNow = (float) (way - whole);
        if (stale) {
            stale = false;
            for (int pixel = 0; pixel < starts.length; pixel++) {
                start(pixel);
            }
        }
    }

    /**
     * Adds the octave to {@code patch.third}.
     *
     * @param patch all of its other planes are written to
     */
    void add(int firstPixel, float amplitude, Patch patch) {
        int from = patch.from();
        int to = patch.to();
        renew(firstPixel, firstPixel + to - from);
        patch.load(starts, firstPixel, patch.second);
        Fractions.ofSum(patch.second, fractionNow, from, to, patch.second);
        fade(patch.second, amplitude, from, to, patch.first);
        patch.load(values, firstPixel, patch.red);
        patch.load(slopes, firstPixel, patch.green);
        near(patch.red, patch.green, patch.second, from, to, patch.red);
        patch.load(nextValues, firstPixel, patch.blue);
        patch.load(nextSlopes, firstPixel, patch.alpha);
        far(patch.blue, patch.alpha, patch.second, from, to, patch.blue);
        mix(patch.red, patch.blue, amplitude, patch.first, from, to, patch.third);
    }

    private void start(int pixel) {
        double z = place(2, places.z(pixel), pixel);
        starts[pixel] = (float) (z - Math.floor(z));
        if (starts[pixel] == 1) {
            starts[pixel] = Math.nextDown(1f);
        }
        planes[pixel] = planesGoneBy(pixel);
        fill(pixel, 0, values, slopes);
        fill(pixel, 1, nextValues, nextSlopes);
    }

    private void renew(int firstPixel, int endPixel) {
        for (int pixel = firstPixel; pixel < endPixel; pixel++) {
            int goneBy = planesGoneBy(pixel);
            if (planes[pixel] != goneBy) {
                renewPixel(pixel, goneBy);
            }
        }
    }

    private void renewPixel(int pixel, int goneBy) {
        boolean isNext = goneBy == planes[pixel] + 1;
        planes[pixel] = goneBy;
        if (isNext) {
            values[pixel] = nextValues[pixel];
            slopes[pixel] = nextSlopes[pixel];
        } else {
            fill(pixel, 0, values, slopes);
        }
        fill(pixel, 1, nextValues, nextSlopes);
    }

    private int planesGoneBy(int pixel) {
        return planesNow + Fractions.wholeOfSum(starts[pixel], fractionNow);
    }

    private void fill(int pixel, int ahead, float[] planeValues, float[] planeSlopes) {
        long plane = (long) Math.floor(place(2, places.z(pixel), pixel)) + planes[pixel] + ahead;
        double x = place(0, places.x(pixel), pixel);
        double y = place(1, places.y(pixel), pixel);
        noiseOfMember[memberOf[pixel]].plane(x, y, plane, pixel, planeValues, planeSlopes);
    }

    private double place(int axis, double coarse, int pixel) {
        return coarse * fineness + offsetOfMember[3 * memberOf[pixel] + axis];
    }

    private static void fade(float[] fraction, float amplitude, int from, int to, float[] share) {
        for (int i = from; i < to; i++) {
            float f = fraction[i];
            share[i] = amplitude * (f * f * f * (f * (f * 6f - 15f) + 10f));
        }
    }

    private static void near(float[] value, float[] slope, float[] fraction, int from, int to, float[] noise) {
        for (int i = from; i < to; i++) {
            noise[i] = value[i] + slope[i] * fraction[i];
        }
    }

    private static void far(float[] value, float[] slope, float[] fraction, int from, int to, float[] noise) {
        for (int i = from; i < to; i++) {
            noise[i] = value[i] + slope[i] * (fraction[i] - 1f);
        }
    }

    private static void mix(float[] near, float[] far, float amplitude, float[] share, int from, int to, float[] sum) {
        for (int i = from; i < to; i++) {
            sum[i] += amplitude * near[i] + share[i] * (far[i] - near[i]);
        }
    }
}

package org.duskloom.effects.drift;

import java.util.Arrays;
import org.duskloom.effects.kit.Fractions;
import org.duskloom.effects.kit.SharePlane;
import org.duskloom.engine.random.NoiseBlock;

/**
 * The noise of places that move, anew in each frame: some hundred pixels at a time, near ones after each other, all
 * octaves of them before the next. For one thread.
 */
final class MovingNoise {
    private final NoisePlaces places;
    private final OctaveSpace[] octaves;
    private final int[] memberOf;
    /** The noise of each pixel. */
    private final float[] noise;

    private final NoiseBlock block = new NoiseBlock();
    private final double[] z = new double[NoiseBlock.CAPACITY];
    private final float[] starts = new float[NoiseBlock.CAPACITY];
    private final float[] shares = new float[NoiseBlock.CAPACITY];
    private final float[] sum = new float[NoiseBlock.CAPACITY];

    /** Noise of some octaves, from the first on. */
    MovingNoise(NoisePlaces places, OctaveSpace[] octaves) {
        this.places = places;
        this.octaves = octaves;
        memberOf = octaves[0].memberOf();
        noise = new float[memberOf.length];
    }

    /** Of each pixel, as {@link #compute} left it. */
    float[] noise() {
        return noise;
    }

    /**
     * Goes to an instant; the places have gone there before.
     *
     * @param amplitudes of the octaves that count
     */
    void compute(double phi, float[] amplitudes, int octaveCount) {
        int[] order = places.nearOrder();
        for (int from = 0; from < order.length; ) {
            int to = endOfBlock(order, from);
            Arrays.fill(sum, 0, to - from, 0f);
            for (int number = 0; number < octaveCount; number++) {
                add(octaves[number], from, to - from, memberOf[order[from]], phi, amplitudes[number]);
            }
            for (int i = from; i < to; i++) {
                noise[order[i]] = sum[i - from];
            }
            from = to;
        }
    }

    /** Pixels of a block are of one member. */
    private int endOfBlock(int[] order, int from) {
        int member = memberOf[order[from]];
        int most = Math.min(order.length, from + NoiseBlock.CAPACITY);
        int to = from + 1;
        while (to < most && memberOf[order[to]] == member) {
            to++;
        }
        return to;
    }

    private void add(OctaveSpace octave, int from, int count, int member, double phi, float amplitude) {
        double fineness = octave.fineness();
        double way = phi * fineness;
        double whole = Math.floor(way);
        float passFraction = (float) (way - whole);
        place(places.x(), from, fineness, octave.offset(member, 0), count, block.x);
        place(places.y(), from, fineness, octave.offset(member, 1), count, block.y);
        place(places.z(), from, fineness, octave.offset(member, 2), count, z);
        placeInTime((int) (long) whole, passFraction, count);
        block.compute(octave.noiseOf(member), count);
        Fractions.ofSum(starts, passFraction, 0, count, starts);
        Octave.fade(starts, 0, count, shares);
        Octave.near(block.values, block.slopes, starts, 0, count, block.values);
        Octave.step(block.values, block.nextValues, block.nextSlopes, starts, 0, count, block.nextValues);
        Octave.mix(block.values, block.nextValues, shares, amplitude, 0, count, sum);
    }

    private static void place(double[] coarse, int from, double fineness, double offset, int count, double[] places) {
        System.arraycopy(coarse, from, places, 0, count);
        for (int i = 0; i < count; i++) {
            places[i] = places[i] * fineness + offset;
        }
    }

    private void placeInTime(int planesGoneBy, float passFraction, int count) {
        for (int i = 0; i < count; i++) {
            double floor = Math.floor(z[i]);
            float start = Math.min(SharePlane.LAST, (float) (z[i] - floor));
            starts[i] = start;
            block.wholeZ[i] = (long) floor + planesGoneBy + Fractions.wholeOfSum(start, passFraction);
        }
    }
}

package org.duskloom.effects.drift;

import org.duskloom.effects.kit.Fractions;
import org.duskloom.effects.kit.WindowOffsets;
import org.duskloom.engine.effect.Patch;

/**
 * One octave of the noise: time runs along z, and between two planes of whole z four numbers for each pixel are enough.
 */
final class Octave {
    private final OctaveSpace space;
    private final WindowOffsets starts;

    private Octave(OctaveSpace space, WindowOffsets starts) {
        this.space = space;
        this.starts = starts;
    }

    /** An octave of places that do not move. */
    static Octave of(OctaveSpace space) {
        float[] starts = new float[space.pixelCount()];
        for (int pixel = 0; pixel < starts.length; pixel++) {
            starts[pixel] = space.start(pixel);
        }
        return new Octave(space, new WindowOffsets(starts));
    }

    /** A view for one thread. */
    View open() {
        return new View();
    }

    /** The octave at an instant. */
    final class View {
        private final PlanePairs planes = new PlanePairs(space);
        private float passFraction;

        private View() {}

        /** Goes to an instant. */
        void begin(double phi) {
            double way = phi * space.fineness();
            double whole = Math.floor(way);
            passFraction = (float) (way - whole);
            planes.advance((long) whole, passFraction, starts);
        }

        /**
         * Adds the octave to {@code patch.third}.
         *
         * @param patch all of its other planes are written to
         */
        void add(int firstPixel, float amplitude, Patch patch) {
            int from = patch.from();
            int to = patch.to();
            patch.load(starts.ofPixels(), firstPixel, patch.first);
            Fractions.ofSum(patch.first, passFraction, from, to, patch.first);
            fade(patch.first, from, to, patch.second);
            patch.load(planes.values(), firstPixel, patch.red);
            patch.load(planes.slopes(), firstPixel, patch.green);
            patch.load(planes.nextValues(), firstPixel, patch.blue);
            patch.load(planes.nextSlopes(), firstPixel, patch.alpha);
            near(patch.red, patch.green, patch.first, from, to, patch.red);
            step(patch.red, patch.blue, patch.alpha, patch.first, from, to, patch.blue);
            mix(patch.red, patch.blue, patch.second, amplitude, from, to, patch.third);
        }
    }

    /** 6 f^5 - 15 f^4 + 10 f^3. */
    static void fade(float[] fraction, int from, int to, float[] share) {
        for (int i = from; i < to; i++) {
            float f = fraction[i];
            share[i] = f * f * f * (f * (f * 6f - 15f) + 10f);
        }
    }

    /** The noise as the nearer plane has it. */
    static void near(float[] value, float[] slope, float[] fraction, int from, int to, float[] noise) {
        for (int i = from; i < to; i++) {
            noise[i] = value[i] + slope[i] * fraction[i];
        }
    }

    /** From there to the noise as the next plane has it. */
    static void step(
            float[] near, float[] nextValue, float[] nextSlope, float[] fraction, int from, int to, float[] step) {
        for (int i = from; i < to; i++) {
            step[i] = nextValue[i] + nextSlope[i] * (fraction[i] - 1f) - near[i];
        }
    }

    static void mix(float[] near, float[] step, float[] share, float amplitude, int from, int to, float[] sum) {
        for (int i = from; i < to; i++) {
            sum[i] += amplitude * (near[i] + share[i] * step[i]);
        }
    }
}

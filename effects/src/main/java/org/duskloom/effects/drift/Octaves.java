package org.duskloom.effects.drift;

import java.util.Arrays;
import org.duskloom.effects.kit.Dial;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.Patch;

/** The sum of the octaves, weighted. For one thread. */
final class Octaves {
    private final NoisePlaces places;
    private final Dial count;
    private final Dial roughness;
    private final Octave[] octaves;
    private final float[] amplitudes;
    private int countNow;

    Octaves(Canvas canvas, NoisePlaces places, Dial count, Dial roughness) {
        this.places = places;
        this.count = count;
        this.roughness = roughness;
        octaves = new Octave[(int) count.ceiling()];
        amplitudes = new float[octaves.length];
        for (int number = 0; number < octaves.length; number++) {
            octaves[number] = new Octave(canvas, places, number);
        }
    }

    void begin(double phi, double seconds) {
        countNow = (int) count.at(seconds);
        weigh(roughness.at(seconds));
        if (!places.isConstant()) {
            places.measure(seconds);
        }
        for (int number = 0; number < octaves.length; number++) {
            if (!places.isConstant()) {
                octaves[number].forget();
            }
            if (number < countNow) {
                octaves[number].begin(phi);
            }
        }
    }

    /** Fills {@code patch.third} with noise, nearly always within [-1, 1]; its other planes are written to. */
    void fill(int firstPixel, Patch patch) {
        Arrays.fill(patch.third, patch.from(), patch.to(), 0f);
        for (int number = 0; number < countNow; number++) {
            octaves[number].add(firstPixel, amplitudes[number], patch);
        }
    }

    private void weigh(double rough) {
        double sum = 0;
        double power = 1;
        for (int number = 0; number < countNow; number++, power *= rough) {
            sum += power;
        }
        power = 1;
        for (int number = 0; number < countNow; number++, power *= rough) {
            amplitudes[number] = (float) (power / sum);
        }
    }
}

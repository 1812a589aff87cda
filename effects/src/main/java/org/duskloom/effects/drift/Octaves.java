package org.duskloom.effects.drift;

import java.util.Arrays;
import org.duskloom.effects.kit.Dial;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Patch;
import org.duskloom.engine.effect.Settings;

/** The sum of the octaves, weighted. Can be shared by threads if the places do not move. */
final class Octaves {
    private final NoisePlaces places;
    private final Dial count;
    private final Dial roughness;
    private final Octave[] octaves;

    private Octaves(Canvas canvas, Settings settings) {
        places = NoisePlaces.of(canvas, settings);
        count = Dial.of(settings, Drift.OCTAVES);
        roughness = Dial.of(settings, Drift.ROUGHNESS);
        octaves = new Octave[(int) count.ceiling()];
        for (int number = 0; number < octaves.length; number++) {
            octaves[number] = Octave.of(canvas, places, number);
        }
    }

    static Octaves of(Canvas canvas, Settings settings) {
        return new Octaves(canvas, settings);
    }

    /** Whether threads may share it. */
    boolean isConstant() {
        return places.isConstant();
    }

    /** A view for one thread. */
    View open() {
        return new View();
    }

    /** The noise at an instant. */
    final class View {
        private final Octave.View[] views =
                Arrays.stream(octaves).map(Octave::open).toArray(Octave.View[]::new);
        private final float[] amplitudes = new float[octaves.length];
        private int countNow;

        private View() {}

        void begin(double phi, CueTime time) {
            countNow = (int) count.at(time);
            weigh(roughness.at(time));
            if (!places.isConstant()) {
                places.measure(time);
            }
            for (int number = 0; number < countNow; number++) {
                views[number].begin(phi);
            }
        }

        /** Fills {@code patch.third} with noise, nearly always within [-1, 1]; its other planes are written to. */
        void fill(int firstPixel, Patch patch) {
            Arrays.fill(patch.third, patch.from(), patch.to(), 0f);
            for (int number = 0; number < countNow; number++) {
                views[number].add(firstPixel, amplitudes[number], patch);
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
}

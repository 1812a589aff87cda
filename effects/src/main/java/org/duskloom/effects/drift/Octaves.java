package org.duskloom.effects.drift;

import java.util.Arrays;
import java.util.stream.IntStream;
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
    /** Of places that do not move. */
    private final Octave[] octaves;
    /** The noise of places that do, else null. */
    private final MovingNoise moving;

    private Octaves(Canvas canvas, Settings settings) {
        places = NoisePlaces.of(canvas, settings);
        count = Dial.of(settings, Drift.OCTAVES);
        roughness = Dial.of(settings, Drift.ROUGHNESS);
        OctaveSpace[] spaces = IntStream.range(0, (int) count.ceiling())
                .mapToObj(number -> new OctaveSpace(canvas, places, number))
                .toArray(OctaveSpace[]::new);
        moving = places.isConstant() ? null : new MovingNoise(places, spaces);
        octaves = Arrays.stream(places.isConstant() ? spaces : new OctaveSpace[0])
                .map(Octave::of)
                .toArray(Octave[]::new);
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
        private final float[] amplitudes = new float[(int) count.ceiling()];
        private int countNow;

        private View() {}

        void begin(double phi, CueTime time) {
            countNow = (int) count.at(time);
            weigh(roughness.at(time));
            if (moving != null) {
                places.measure(time);
                moving.compute(phi, amplitudes, countNow);
                return;
            }
            for (int number = 0; number < countNow; number++) {
                views[number].begin(phi);
            }
        }

        /** Fills {@code patch.third} with noise, nearly always within [-1, 1]; its other planes are written to. */
        void fill(int firstPixel, Patch patch) {
            if (moving != null) {
                patch.load(moving.noise(), firstPixel, patch.third);
                return;
            }
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

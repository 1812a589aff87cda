package org.duskloom.effects.drift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.assertj.core.data.Offset;
import org.duskloom.effects.Canvases;
import org.duskloom.effects.kit.Projection;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.effect.Patch;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.random.GradientNoise;
import org.duskloom.engine.random.StableHash;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against the noise itself, which is checked against the reference implementation of K. Perlin (SIGGRAPH 2002). */
class OctaveTest {
    private static final int PIXELS = 150;
    private static final Offset<Double> ROUNDING = within(2e-5);
    private static final Canvas CANVAS = Canvases.of(Canvases.scattered(PIXELS));

    /** The third octave is four times as fine as the first, so in a pass four planes go by. */
    @ParameterizedTest
    @CsvSource({"0, 0", "0, 0.3", "0, -7.25", "2, 0.3", "2, 1234.5", "2, -0.01"})
    void isTheNoiseOfItsKey(int number, double phi) {
        NoisePlaces places = still();
        float[] noise = shown(Octave.of(new OctaveSpace(CANVAS, places, number)).open(), phi, 1, 0);
        long key = StableHash.combine(CANVAS.memberKey(0), number);
        double fine = 1 << number;
        for (int pixel = 0; pixel < PIXELS; pixel++) {
            double expected = new GradientNoise(key)
                    .at(
                            fine * places.x(pixel) + offset(key, 0),
                            fine * places.y(pixel) + offset(key, 1),
                            fine * (places.z(pixel) + phi) + offset(key, 2));
            assertThat((double) noise[pixel]).isCloseTo(expected, ROUNDING);
        }
    }

    private static double offset(long key, int axis) {
        return StableHash.unitDouble(StableHash.combine(key, axis));
    }

    /** What is kept from frame to frame is what is computed anew: after steps forward, backward, none, and far away. */
    @Test
    void isTheSameFromWhereverItComes() {
        Octave octave = Octave.of(new OctaveSpace(CANVAS, still(), 1));
        Octave.View kept = octave.open();
        for (double phi : new double[] {0, 0.01, 0.02, 0.01, 0.9, 0.9, 0.3, -0.2, 500, 499.9, 0.02}) {
            assertThat(shown(kept, phi, 1, 0)).containsExactly(shown(octave.open(), phi, 1, 0));
        }
    }

    /** It adds to what is there: 10 and half of the noise. */
    @Test
    void addsToWhatIsThere() {
        Octave octave = Octave.of(new OctaveSpace(CANVAS, still(), 0));
        float[] whole = shown(octave.open(), 3.3, 1, 0);
        float[] half = shown(octave.open(), 3.3, 0.5f, 10);
        for (int pixel = 0; pixel < PIXELS; pixel++) {
            assertThat(half[pixel]).isCloseTo(10 + whole[pixel] / 2, within(2e-6f));
        }
    }

    private static float[] shown(Octave.View view, double phi, float amplitude, float before) {
        view.begin(phi);
        Patch patch = new Patch();
        patch.reset(0, PIXELS);
        Arrays.fill(patch.third, before);
        view.add(0, amplitude, patch);
        return Arrays.copyOf(patch.third, PIXELS);
    }

    /** Six cells over the canvas, with some wind. */
    private static NoisePlaces still() {
        return NoisePlaces.of(CANVAS, settings(NumberTrack.constant(6)));
    }

    private static Settings settings(NumberTrack scale) {
        Map<Setting<?>, Object> given = new HashMap<>();
        given.put(Drift.SCALE, scale);
        given.put(Drift.WIND, NumberTrack.constant(0.6));
        given.put(Projection.TOWARD, NumberTrack.constant(30));
        return Settings.of(given);
    }
}

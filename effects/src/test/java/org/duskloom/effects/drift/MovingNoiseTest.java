package org.duskloom.effects.drift;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.duskloom.effects.Canvases;
import org.duskloom.effects.kit.Projection;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.NumberKey;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.effect.Patch;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.time.Easing;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Places that move, against places that stay where those are at an instant: the same bits. */
class MovingNoiseTest {
    private static final int OCTAVES = 3;

    /** Members of many, few and one pixel, of a shape each, some of them more than a block. */
    private static final Canvas CANVAS = new Canvases()
            .member("bed", Canvases.scattered(1100))
            .member("one", Canvases.row(1))
            .member("fence", Canvases.grid(40, 3))
            .member("daisy", Canvases.scattered(36))
            .build();

    /** The scale goes from coarse to fine, with cells of thousands of pixels and pixels of many cells. */
    @ParameterizedTest
    @CsvSource({"0.1, 0, 0, 2.7", "2, 0, 30, -3.2", "4, 0.6, 200, 0.01", "40, 1, 77, 1234.5", "100, 0.3, -20, 99999.25"
    })
    void isThatOfPlacesThatStay(double scale, double wind, double toward, double phi) {
        NumberTrack growing = NumberTrack.keyed(
                List.of(new NumberKey(0, scale / 2, Easing.LINEAR), new NumberKey(2, 1.5 * scale, Easing.LINEAR)));
        float[] amplitudes = {0.5f, 0.3f, 0.2f};
        NoisePlaces places = NoisePlaces.of(CANVAS, settings(growing, wind, toward));
        MovingNoise moving = new MovingNoise(places, spaces(places));
        for (double second : new double[] {0, 1, 0.3, 2}) {
            places.measure(new CueTime().set(second, 100));
            moving.compute(phi, amplitudes, OCTAVES);
            NumberTrack now = NumberTrack.constant(growing.at(second));
            assertThat(moving.noise()).containsExactly(still(settings(now, wind, toward), phi, amplitudes));
        }
        moving.compute(phi, amplitudes, 1);
        float[] coarse = moving.noise().clone();
        moving.compute(phi, new float[] {0.5f, 0, 0}, OCTAVES);
        assertThat(coarse).containsExactly(moving.noise());
    }

    private static OctaveSpace[] spaces(NoisePlaces places) {
        return IntStream.range(0, OCTAVES)
                .mapToObj(number -> new OctaveSpace(CANVAS, places, number))
                .toArray(OctaveSpace[]::new);
    }

    private static float[] still(Settings settings, double phi, float[] amplitudes) {
        float[] noise = new float[CANVAS.pixelCount()];
        NoisePlaces places = NoisePlaces.of(CANVAS, settings);
        Patch patch = new Patch();
        patch.reset(0, noise.length);
        for (int number = 0; number < OCTAVES; number++) {
            Octave.View view =
                    Octave.of(new OctaveSpace(CANVAS, places, number)).open();
            view.begin(phi);
            view.add(0, amplitudes[number], patch);
        }
        System.arraycopy(patch.third, 0, noise, 0, noise.length);
        return noise;
    }

    private static Settings settings(NumberTrack scale, double wind, double toward) {
        Map<Setting<?>, Object> given = new HashMap<>();
        given.put(Drift.SCALE, scale);
        given.put(Drift.WIND, NumberTrack.constant(wind));
        given.put(Projection.TOWARD, NumberTrack.constant(toward));
        return Settings.of(given);
    }
}

package org.duskloom.effects.drift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.duskloom.effects.Canvases;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.NumberKey;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.effect.Patch;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.time.Easing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The sum of the octaves: the weights are 1, r, r² and so on, divided by their sum. */
class OctavesTest {
    private static final int PIXELS = 120;
    private static final Canvas CANVAS =
            new Canvases().member("bed", Canvases.scattered(PIXELS)).build();

    private final Map<Setting<?>, Object> given = new HashMap<>();

    private Settings settings(double octaves, double roughness) {
        given.put(Drift.OCTAVES, NumberTrack.constant(octaves));
        given.put(Drift.ROUGHNESS, NumberTrack.constant(roughness));
        return Settings.of(given);
    }

    private static float[] noise(Octaves octaves, double phi, CueTime time) {
        Octaves.View view = octaves.open();
        view.begin(phi, time);
        Patch patch = new Patch();
        patch.reset(0, PIXELS);
        Arrays.fill(patch.third, 99f);
        view.fill(0, patch);
        return Arrays.copyOf(patch.third, PIXELS);
    }

    /** The noise of one octave by itself, of weight 1. */
    private static float[] alone(Settings settings, int number, double phi) {
        Octave.View view = Octave.of(new OctaveSpace(CANVAS, NoisePlaces.of(CANVAS, settings), number))
                .open();
        view.begin(phi);
        Patch patch = new Patch();
        patch.reset(0, PIXELS);
        Arrays.fill(patch.third, 0f);
        view.add(0, 1, patch);
        return Arrays.copyOf(patch.third, PIXELS);
    }

    @ParameterizedTest
    @CsvSource({"1, 0.5", "2, 0.5", "3, 0.5", "4, 0.8", "3, 0", "2, 1"})
    void octavesAreWeighted(int octaves, double roughness) {
        Settings settings = settings(octaves, roughness);
        double sum = 0;
        for (int number = 0; number < octaves; number++) {
            sum += Math.pow(roughness, number);
        }
        float[] all = noise(Octaves.of(CANVAS, settings), 3.7, new CueTime());
        double[] expected = new double[PIXELS];
        for (int number = 0; number < octaves; number++) {
            float[] one = alone(settings, number, 3.7);
            for (int pixel = 0; pixel < PIXELS; pixel++) {
                expected[pixel] += Math.pow(roughness, number) / sum * one[pixel];
            }
        }
        for (int pixel = 0; pixel < PIXELS; pixel++) {
            assertThat((double) all[pixel]).isCloseTo(expected[pixel], within(2e-6));
        }
    }

    /** Weights add up to 1, so that more octaves are not more light: nearly all of the noise stays within 1. */
    @Test
    void moreOctavesAreNotMoreLight() {
        for (double phi = 0; phi < 40; phi += 0.37) {
            for (float value : noise(Octaves.of(CANVAS, settings(4, 1)), phi, new CueTime())) {
                assertThat(value).isBetween(-1f, 1f);
            }
        }
    }

    /** At 1 s of 2 the roughness is half-way, and the number of octaves rounded: as of settings that stay. */
    @Test
    void followsSettingsThatMove() {
        Settings still = settings(3, 0.5);
        float[] expected = noise(Octaves.of(CANVAS, still), 1.3, new CueTime());
        given.put(Drift.OCTAVES, moving(2, 4));
        given.put(Drift.ROUGHNESS, moving(0.2, 0.8));
        Octaves octaves = Octaves.of(CANVAS, Settings.of(given));
        assertThat(noise(octaves, 1.3, new CueTime().set(1, 10))).containsExactly(expected, within(1e-6f));
        assertThat(octaves.isConstant()).as("only places are shared").isTrue();
        given.put(Drift.SCALE, moving(2, 3));
        assertThat(Octaves.of(CANVAS, Settings.of(given)).isConstant()).isFalse();
    }

    private static NumberTrack moving(double from, double to) {
        return NumberTrack.keyed(List.of(new NumberKey(0, from, Easing.LINEAR), new NumberKey(2, to, Easing.LINEAR)));
    }
}

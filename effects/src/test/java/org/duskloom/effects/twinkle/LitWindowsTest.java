package org.duskloom.effects.twinkle;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.duskloom.effects.Look;
import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.Motion;
import org.duskloom.effects.kit.PaletteDial;
import org.duskloom.effects.kit.WindowOffsets;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.NumberSetting;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.effect.PaletteKey;
import org.duskloom.engine.effect.PaletteTrack;
import org.duskloom.engine.effect.Patch;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.random.StableHash;
import org.duskloom.engine.time.Easing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Six hundred pixels, more than are drawn in one batch; a pass takes 2 s, and the windows of pixels start spread over
 * it.
 */
class LitWindowsTest {
    private static final int PIXELS = 600;
    private static final NumberSetting DENSITY = NumberSetting.of("density", "", 0, 1, 0.5, "how many are lit");
    private static final Palette COLORS = Look.evenly(ColorMix.LINEAR, "red", "lime", "blue");

    static List<PaletteDial> palettes() {
        PaletteTrack moving = PaletteTrack.keyed(
                List.of(
                        new PaletteKey(0, COLORS, Easing.LINEAR),
                        new PaletteKey(9, Look.evenly(ColorMix.LINEAR, "blue", "gold"), Easing.LINEAR)),
                ColorMix.LINEAR);
        return List.of(
                PaletteDial.of(PaletteTrack.constant(COLORS)),
                PaletteDial.of(moving),
                PaletteDial.of(PaletteTrack.constant(Look.evenly(ColorMix.LINEAR, "gold"))));
    }

    /** What is kept from frame to frame is what would be drawn anew: after steps forward, backward and far away. */
    @ParameterizedTest
    @MethodSource("palettes")
    void keepsWhatItWouldDraw(PaletteDial palette) throws SettingException {
        LitWindows kept = windows(palette, 0.4);
        for (double phi : new double[] {0, 0.01, 0.5, 1.25, 1.2, 0.3, 0.3, 40, 39.5, -3, 0, 0.01}) {
            float[][] light = shown(kept, phi);
            assertThat(light).isDeepEqualTo(shown(windows(palette, 0.4), phi));
        }
    }

    /** All at density 1 and none at 0, whatever the palette. */
    @ParameterizedTest
    @MethodSource("palettes")
    void lightsAllOrNone(PaletteDial palette) throws SettingException {
        assertThat(shown(windows(palette, 1), 0.7)[3]).containsOnly(1);
        assertThat(shown(windows(palette, 0), 0.7)[3]).containsOnly(0);
    }

    /** A window that is lit at some density is lit at any higher one, in the colour that it has there. */
    @Test
    void lightsMoreWithMoreDensity() throws SettingException {
        PaletteDial palette = palettes().get(0);
        float[][] few = shown(windows(palette, 0.3), 5.5);
        float[][] many = shown(windows(palette, 0.6), 5.5);
        int more = 0;
        for (int pixel = 0; pixel < PIXELS; pixel++) {
            if (few[3][pixel] == 1) {
                assertThat(many[0][pixel]).isEqualTo(few[0][pixel]);
                assertThat(many[3][pixel]).isEqualTo(1);
            } else {
                more += many[3][pixel] == 1 ? 1 : 0;
            }
        }
        assertThat(more).isPositive();
    }

    private static LitWindows windows(PaletteDial palette, double density) throws SettingException {
        int[] keys = IntStream.range(0, PIXELS)
                .map(pixel -> StableHash.pixelKey(99, pixel))
                .toArray();
        Settings settings = Settings.of(Map.of(DENSITY, NumberTrack.constant(density)));
        return new LitWindows(keys, offsets(), Motion.of(settings), Dial.of(settings, DENSITY), palette);
    }

    private static WindowOffsets offsets() {
        float[] offsets = new float[PIXELS];
        for (int pixel = 0; pixel < PIXELS; pixel++) {
            offsets[pixel] = pixel * 7 % PIXELS / (float) PIXELS;
        }
        return new WindowOffsets(offsets);
    }

    /** What is seen, at full level, after so many passes. */
    private static float[][] shown(LitWindows windows, double phi) {
        long whole = (long) Math.floor(phi);
        windows.begin(offsets().begun(whole, (float) (phi - whole)), new CueTime().set(2 * phi, 100));
        Patch patch = new Patch();
        patch.reset(0, PIXELS);
        Arrays.fill(patch.second, 0, PIXELS, 1f);
        windows.paint(0, patch.second, patch);
        patch.fill();
        return new float[][] {
            Arrays.copyOf(patch.red, PIXELS),
            Arrays.copyOf(patch.green, PIXELS),
            Arrays.copyOf(patch.blue, PIXELS),
            Arrays.copyOf(patch.alpha, PIXELS)
        };
    }
}

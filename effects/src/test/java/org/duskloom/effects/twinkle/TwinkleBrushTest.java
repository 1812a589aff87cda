package org.duskloom.effects.twinkle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Map;
import org.duskloom.effects.Look;
import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.Motion;
import org.duskloom.effects.kit.PaletteDial;
import org.duskloom.effects.kit.WindowOffsets;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.effect.PaletteTrack;
import org.duskloom.engine.effect.Patch;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Four pixels whose windows begin 0, 1/4, 1/2 and 3/4 of a pass early, all of them lit; a pass takes 2 s. The
 * level of a pixel that is f of the way through its window is min(1, f / rise, (1 - f) / fall).
 */
class TwinkleBrushTest {
    private static final float[] OFFSETS = {0, 0.25f, 0.5f, 0.75f};

    /**
     * With rise 1/4 and fall 1/2 the level is 0, 1, 1 and 1/2 at 0, 1/4, 1/2 and 3/4 of the way. Worked by
     * hand.
     */
    @ParameterizedTest
    @CsvSource({
        "0, 0, 1, 1, 0.5",
        "0.1, 0.4, 1, 0.8, 0.3",
        "0.2, 0.8, 1, 0.6, 0.1",
        "0.25, 1, 1, 0.5, 0",
        "0.5, 1, 0.5, 0, 1",
        "7.1, 0.4, 1, 0.8, 0.3",
        "-0.9, 0.4, 1, 0.8, 0.3"
    })
    void risesAndFallsInEachWindow(double passes, float first, float second, float third, float fourth)
            throws SettingException {
        assertThat(levels(0.25, 0.5, passes))
                .containsExactly(new float[] {first, second, third, fourth}, within(1e-5f));
    }

    /**
     * Without a rise a pixel is there at once, without a fall it stays to the end; without both it is always
     * full.
     */
    @ParameterizedTest
    @CsvSource({
        "0, 0.5, 0, 1, 1, 1, 0.5",
        "0, 1, 0, 1, 0.75, 0.5, 0.25",
        "0.5, 0, 0, 0, 0.5, 1, 1",
        "1, 0, 0, 0, 0.25, 0.5, 0.75",
        "0, 0, 0, 1, 1, 1, 1",
        "0, 0, 0.999, 1, 1, 1, 1"
    })
    void hasEdgesThatAreLeftOut(
            double rise, double fall, double passes, float first, float second, float third, float fourth)
            throws SettingException {
        assertThat(levels(rise, fall, passes))
                .containsExactly(new float[] {first, second, third, fourth}, within(1e-5f));
    }

    /** A part of the pixels is painted as it is among all of them. */
    @Test
    void paintsPartsAsTheWhole() throws SettingException {
        TwinkleBrush brush = brush(0.25, 0.5);
        brush.begin(new CueTime().set(0.2, 100));
        Patch patch = new Patch();
        patch.reset(0, 2);
        brush.paint(2, patch);
        patch.fill();
        assertThat(Arrays.copyOf(patch.alpha, 2)).containsExactly(new float[] {0.8f, 0.3f}, within(1e-5f));
    }

    private static float[] levels(double rise, double fall, double passes) throws SettingException {
        TwinkleBrush brush = brush(rise, fall);
        brush.begin(new CueTime().set(2 * passes, 100));
        Patch patch = new Patch();
        patch.reset(0, OFFSETS.length);
        brush.paint(0, patch);
        patch.fill();
        return Arrays.copyOf(patch.alpha, OFFSETS.length);
    }

    private static TwinkleBrush brush(double rise, double fall) throws SettingException {
        Settings settings = Settings.of(Map.of(
                Twinkle.DENSITY, NumberTrack.constant(1),
                Twinkle.RISE, NumberTrack.constant(rise),
                Twinkle.FALL, NumberTrack.constant(fall)));
        Motion motion = Motion.of(settings);
        WindowOffsets offsets = new WindowOffsets(OFFSETS);
        PaletteDial white = PaletteDial.of(PaletteTrack.constant(Look.evenly(ColorMix.LINEAR, "white")));
        LitWindows windows =
                new LitWindows(new int[] {1, 2, 3, 4}, offsets, motion, Dial.of(settings, Twinkle.DENSITY), white);
        return new TwinkleBrush(
                motion, offsets, windows, Dial.of(settings, Twinkle.RISE), Dial.of(settings, Twinkle.FALL));
    }
}

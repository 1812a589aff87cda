package org.duskloom.effects.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.duskloom.effects.Look;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.color.PaletteStop;
import org.duskloom.engine.color.PaletteStyle;
import org.duskloom.engine.effect.PaletteKey;
import org.duskloom.engine.effect.PaletteTrack;
import org.duskloom.engine.effect.Patch;
import org.duskloom.engine.time.Easing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Palettes that move in linear light, a key each 4 seconds. */
class MovingRampTest {
    private static final Palette BLACK_TO_RED = Look.evenly(ColorMix.LINEAR, "black", "red");
    private static final Palette RED_TO_BLACK = Look.evenly(ColorMix.LINEAR, "red", "black");
    private static final Palette RED_GLASS = Look.evenly(ColorMix.LINEAR, "rgb(255 0 0 / 0.5)");

    /** From s at 0 s to 1 - s at 4 s: s (1 - t/4) + (1 - s) t/4, held before and after. */
    @ParameterizedTest
    @CsvSource({
        "-1, 0, 0",
        "0, 0.25, 0.25",
        "1, 0, 0.25",
        "1, 1, 0.75",
        "2, 0.9, 0.5",
        "3, 0.25, 0.625",
        "9, 0.25, 0.75"
    })
    void goesFromOnePaletteToTheOther(double second, float place, double red) {
        Ramp ramp = new MovingRamp(MovingTables.of(track(BLACK_TO_RED, RED_TO_BLACK)));
        ramp.begin(second);
        assertThat((double) red(ramp, place)).isCloseTo(red, within(1e-6));
    }

    /** A frame does not know which one was drawn before it. */
    @Test
    void isTheSameFromWhereverItComes() {
        PaletteTrack track = track(BLACK_TO_RED, RED_GLASS, RED_TO_BLACK);
        Ramp straight = PaletteDial.of(track).open();
        straight.begin(2.7);
        Ramp roundabout = PaletteDial.of(track).open();
        for (double second : new double[] {7, -3, 99, 2.7, 2.7}) {
            roundabout.begin(second);
        }
        for (float place = 0; place <= 1; place += 0.0625f) {
            assertThat(red(roundabout, place)).isEqualTo(red(straight, place));
        }
    }

    @Test
    void isOpaqueOnlyIfAllPalettesAre() {
        assertThat(new MovingRamp(MovingTables.of(track(BLACK_TO_RED, RED_TO_BLACK))).isOpaque())
                .isTrue();
        assertThat(new MovingRamp(MovingTables.of(track(BLACK_TO_RED, RED_GLASS))).isOpaque())
                .isFalse();
    }

    /**
     * Cut at 1/4 and 3/4 of the two, with the ends 0 and 1: three pieces and the place 1; steps need one interval each.
     */
    @Test
    void sharesTheCutsOfAllPalettes() {
        Palette stepped = Palette.of(
                List.of(new PaletteStop(0.25, Look.color("red")), new PaletteStop(0.5, Look.color("blue"))),
                new PaletteStyle(ColorMix.LINEAR, true, false));
        Palette other = Palette.of(
                List.of(new PaletteStop(0.5, Look.color("lime")), new PaletteStop(0.75, Look.color("gold"))),
                new PaletteStyle(ColorMix.LINEAR, true, false));
        MovingTables tables = MovingTables.of(track(stepped, other));
        assertThat(tables.entries().count()).isEqualTo(10);
    }

    /** Every table has one entry more than it has intervals. */
    @Test
    void hasEntriesForAllTables() {
        MovingTables tables = MovingTables.of(track(Look.evenly(ColorMix.OKLCH, "teal", "gold"), BLACK_TO_RED));
        assertThat(tables.entries().count()).isGreaterThanOrEqualTo(8 + 1);
    }

    /**
     * One colour at a time: from red, half shone through, to opaque blue; mixed premultiplied as W3C CSS Color 4 has
     * it.
     */
    @Test
    void mixesSingleColoursPremultiplied() {
        Ramp ramp = new MovingSingleRamp(track(RED_GLASS, Look.evenly(ColorMix.LINEAR, "blue")));
        ramp.begin(2);
        Patch patch = new Patch();
        patch.reset(0, 1);
        ramp.paint(patch.first, patch);
        patch.fill();
        assertThat(ramp.isSingle()).isTrue();
        assertThat(patch.alpha[0]).isCloseTo(0.75f, within(1e-6f));
        assertThat(patch.red[0]).isCloseTo(0.25f, within(1e-6f));
        assertThat(patch.blue[0]).isCloseTo(0.5f, within(1e-6f));
    }

    /** Dimmed to 1/2 and then by the product of 1/2 and 1/4, premultiplied: alpha 1/2 becomes 1/4 and 1/16. */
    @Test
    void dimsASingleColour() {
        Ramp ramp = new MovingSingleRamp(track(RED_GLASS, RED_GLASS));
        Patch patch = new Patch();
        patch.reset(0, 1);
        ramp.paintDimmed(patch.first, new float[] {0.5f}, patch);
        patch.fill();
        assertThat(patch.alpha[0]).isCloseTo(0.25f, within(1e-6f));
        assertThat(patch.red[0]).isCloseTo(0.25f, within(1e-6f));

        patch.reset(0, 1);
        ramp.paintSingle(new float[] {0.5f}, new float[] {0.25f}, patch);
        patch.fill();
        assertThat(patch.alpha[0]).isCloseTo(0.0625f, within(1e-6f));
    }

    private static float red(Ramp ramp, float place) {
        float[] red = new float[1];
        ramp.fill(new float[] {place}, 0, 1, red, new float[1], new float[1], new float[1]);
        return red[0];
    }

    private static PaletteTrack track(Palette... palettes) {
        return PaletteTrack.keyed(
                IntStream.range(0, palettes.length)
                        .mapToObj(key -> new PaletteKey(4 * key, palettes[key], Easing.LINEAR))
                        .toList(),
                ColorMix.LINEAR);
    }
}

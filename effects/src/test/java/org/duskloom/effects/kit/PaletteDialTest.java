package org.duskloom.effects.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.duskloom.effects.Look;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.color.LinearColor;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.color.PaletteStop;
import org.duskloom.engine.color.PaletteStyle;
import org.duskloom.engine.effect.PaletteKey;
import org.duskloom.engine.effect.PaletteTrack;
import org.duskloom.engine.effect.Patch;
import org.duskloom.engine.time.Easing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PaletteDialTest {
    private static final int PLACES = 997;
    private static final Palette SMOOTH = Look.evenly(ColorMix.OKLAB, "navy", "red", "gold");
    private static final Palette STEPPED = Palette.evenly(
            List.of(Look.color("lime"), Look.color("rgb(90 20 200 / 0.4)"), Look.color("white")),
            new PaletteStyle(ColorMix.LINEAR, true, false));
    private static final Palette CYCLIC = Palette.of(
            List.of(
                    new PaletteStop(0.2, Look.color("teal")),
                    new PaletteStop(0.7, Look.color("plum")),
                    new PaletteStop(0.7, LinearColor.TRANSPARENT)),
            new PaletteStyle(ColorMix.OKLCH, false, true));
    /**
     * No hue of the one is 180 degrees from that of the other at its place, where the shorter way round changes sides.
     */
    private static final Palette WARM = Look.evenly(ColorMix.OKLAB, "red", "gold");

    private static final Palette COOL = Look.evenly(ColorMix.OKLCH, "teal", "lime");
    private static final Palette SINGLE = Look.evenly(ColorMix.OKLAB, "gold");

    static Stream<PaletteTrack> tracks() {
        return Stream.of(
                track(ColorMix.OKLAB, Easing.LINEAR, SMOOTH, SINGLE),
                track(ColorMix.OKLAB, Easing.EASE_IN, SMOOTH, STEPPED, CYCLIC),
                track(ColorMix.LINEAR, Easing.LINEAR, CYCLIC, SINGLE, SMOOTH),
                track(ColorMix.OKLCH, Easing.EASE, WARM, COOL),
                track(ColorMix.OKLAB, Easing.LINEAR, SINGLE, Look.evenly(ColorMix.OKLAB, "rgb(0 0 255 / 0.3)")));
    }

    private static PaletteTrack track(ColorMix mix, Easing easing, Palette... palettes) {
        return PaletteTrack.keyed(
                IntStream.range(0, palettes.length)
                        .mapToObj(key -> new PaletteKey(2 * key, palettes[key], easing))
                        .toList(),
                mix);
    }

    /**
     * Every place has the mix of the colours that the two palettes have there, as the palettes themselves and the mix
     * have it (checked against published values in their own tests); hard edges lie at the same float.
     */
    @ParameterizedTest
    @MethodSource("tracks")
    void showsTheMixOfTwoPalettesAtEveryPlace(PaletteTrack track) {
        Ramp ramp = PaletteDial.of(track).open();
        List<Palette> palettes = track.palettes();
        for (double second : new double[] {-1, 0, 0.4, 1, 1.9, 2, 2.6, 99}) {
            ramp.begin(second);
            int before = (int) Math.min(palettes.size() - 1.0, Math.max(0, Math.floor(second / 2)));
            int after = Math.min(palettes.size() - 1, before + 1);
            double share = shareOf(track, second - 2 * before, before == after || second < 0);
            float[][] planes = painted(ramp);
            for (int i = 0; i <= PLACES; i++) {
                double place = (float) i / PLACES;
                LinearColor wanted = track.mix()
                        .mix(palettes.get(before).at(place), palettes.get(after).at(place), share);
                assertThat((double) planes[0][i]).isCloseTo(wanted.red() * wanted.alpha(), within(1e-3));
                assertThat((double) planes[1][i]).isCloseTo(wanted.green() * wanted.alpha(), within(1e-3));
                assertThat((double) planes[2][i]).isCloseTo(wanted.blue() * wanted.alpha(), within(1e-3));
                assertThat((double) planes[3][i]).isCloseTo(wanted.alpha(), within(1e-3));
            }
        }
    }

    private static double shareOf(PaletteTrack track, double sinceKey, boolean held) {
        if (held) {
            return 0;
        }
        Easing easing = track.mix() == ColorMix.OKLCH
                ? Easing.EASE
                : track.palettes().get(1) == STEPPED ? Easing.EASE_IN : Easing.LINEAR;
        return easing.at(sinceKey / 2);
    }

    /** At the times of keys nothing is mixed; what is left is the rounding of a weighted mean of two equal floats. */
    @Test
    void isThePaletteItselfAtAKey() {
        Ramp ramp = PaletteDial.of(track(ColorMix.OKLAB, Easing.LINEAR, SMOOTH, SINGLE))
                .open();
        ramp.begin(2);
        float[][] wanted = painted(Ramp.of(SINGLE));
        float[][] planes = painted(ramp);
        for (int channel = 0; channel < wanted.length; channel++) {
            assertThat(planes[channel]).containsExactly(wanted[channel], offset(1e-7f));
        }
    }

    /**
     * Half-way from black to white in OKLab is an eighth of the light: a grey's lightness is the cube root of its
     * light.
     */
    @Test
    void makesASinglePaletteFlat() {
        PaletteTrack track = track(
                ColorMix.OKLAB,
                Easing.LINEAR,
                Look.evenly(ColorMix.OKLAB, "black"),
                Look.evenly(ColorMix.OKLAB, "white", "white"));
        PaletteDial dial = PaletteDial.of(track);
        Ramp ramp = dial.open();
        ramp.begin(1);
        Patch patch = new Patch();
        patch.reset(0, 1);
        patch.second[0] = 0.5f;
        ramp.paintDimmed(patch.third, patch.second, patch);
        assertThat(dial.isSingle()).isTrue();
        assertThat(dial.isConstant()).isFalse();
        assertThat(patch.isFlat()).isTrue();
        assertThat((double) patch.flat(0)).isCloseTo(0.125, within(1e-5));
        assertThat(patch.alpha[0]).isEqualTo(0.5f);
    }

    @Test
    void sharesOneRampWhereNothingMoves() {
        PaletteDial dial = PaletteDial.of(track(ColorMix.OKLAB, Easing.LINEAR, SMOOTH, SMOOTH));
        assertThat(dial.isConstant()).isTrue();
        assertThat(dial.open()).isSameAs(dial.open());
        PaletteDial moving = PaletteDial.of(track(ColorMix.OKLAB, Easing.LINEAR, SMOOTH, SINGLE));
        assertThat(moving.open()).isNotSameAs(moving.open());
    }

    private static float[][] painted(Ramp ramp) {
        float[] places = new float[PLACES + 1];
        for (int i = 0; i <= PLACES; i++) {
            places[i] = (float) i / PLACES;
        }
        float[][] planes = new float[4][PLACES + 1];
        ramp.fill(places, 0, PLACES + 1, planes[0], planes[1], planes[2], planes[3]);
        return planes;
    }
}

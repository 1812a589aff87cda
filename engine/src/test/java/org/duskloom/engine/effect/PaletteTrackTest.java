package org.duskloom.engine.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.color.LinearColor;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.color.PaletteStyle;
import org.duskloom.engine.digest.Fingerprint;
import org.duskloom.engine.digest.FingerprintWriter;
import org.duskloom.engine.time.Easing;
import org.junit.jupiter.api.Test;

class PaletteTrackTest {
    private static final Palette DARK = palette(LinearColor.BLACK);
    private static final Palette BRIGHT = palette(LinearColor.WHITE);

    private static Palette palette(LinearColor color) {
        return Palette.evenly(List.of(color, LinearColor.BLACK), PaletteStyle.SMOOTH);
    }

    private static PaletteTrack track(double from, double to, Easing easing, ColorMix mix) {
        return PaletteTrack.keyed(
                List.of(new PaletteKey(from, DARK, Easing.LINEAR), new PaletteKey(to, BRIGHT, easing)), mix);
    }

    private static Fingerprint print(PaletteTrack track) {
        return new FingerprintWriter("t").value(track).finish();
    }

    /** Mixed in linear light, half of the way from black to white is 1/2, a quarter 1/4. */
    @Test
    void coloursGoFromKeyToKey() {
        ColorTracks first = track(1, 3, Easing.LINEAR, ColorMix.LINEAR)
                .picked(palette -> List.of(palette.stops().get(0).color()));
        float[] color = new float[ColorTracks.CHANNELS];
        for (double[] expected : new double[][] {{0, 0}, {1, 0}, {1.5, 0.25}, {2, 0.5}, {3, 1}, {9, 1}}) {
            first.fill(expected[0], color);
            assertThat(color[0]).as("at %s s", expected[0]).isCloseTo((float) expected[1], within(1e-6f));
            assertThat(color[3]).isEqualTo(1f);
        }
    }

    @Test
    void aTrackStaysIfAllItsPalettesAreTheSame() {
        assertThat(PaletteTrack.constant(DARK).isConstant()).isTrue();
        assertThat(PaletteTrack.keyed(
                                List.of(
                                        new PaletteKey(0, DARK, Easing.LINEAR),
                                        new PaletteKey(2, palette(LinearColor.BLACK), Easing.EASE)),
                                ColorMix.OKLAB)
                        .isConstant())
                .isTrue();
        assertThat(track(0, 2, Easing.LINEAR, ColorMix.OKLAB).isConstant()).isFalse();
        Palette stepped = Palette.evenly(
                List.of(LinearColor.BLACK, LinearColor.BLACK), new PaletteStyle(ColorMix.OKLAB, true, false));
        assertThat(PaletteTrack.keyed(
                                List.of(
                                        new PaletteKey(0, DARK, Easing.LINEAR),
                                        new PaletteKey(2, stepped, Easing.LINEAR)),
                                ColorMix.OKLAB)
                        .isConstant())
                .as("another style")
                .isFalse();
    }

    @Test
    void whatDecidesTheColoursDecidesTheFingerprint() {
        Fingerprint print = print(track(1, 3, Easing.LINEAR, ColorMix.OKLAB));
        assertThat(print(track(1, 3, Easing.LINEAR, ColorMix.OKLAB))).isEqualTo(print);
        assertThat(List.of(
                        print(track(1, 3, Easing.LINEAR, ColorMix.LINEAR)),
                        print(track(1, 3, Easing.EASE, ColorMix.OKLAB)),
                        print(track(1, 4, Easing.LINEAR, ColorMix.OKLAB)),
                        print(track(0, 3, Easing.LINEAR, ColorMix.OKLAB)),
                        print(PaletteTrack.constant(DARK)),
                        print(PaletteTrack.constant(BRIGHT))))
                .doesNotHaveDuplicates()
                .doesNotContain(print);
    }

    @Test
    void needsAKey() {
        List<PaletteKey> none = List.of();
        assertThatThrownBy(() -> PaletteTrack.keyed(none, ColorMix.OKLAB)).isInstanceOf(IllegalArgumentException.class);
    }
}

package org.duskloom.engine.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.color.LinearColor;
import org.duskloom.engine.time.Easing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ColorTrackTest {
    /**
     * Greys have the OKLab lightness of the cube root of their light (B. Ottosson, "A perceptual color space for image
     * processing", 2020), so half-way in lightness is an eighth of the light, and a quarter of the way a 64th.
     */
    @ParameterizedTest
    @CsvSource({
        "OKLAB, 1, 0",
        "OKLAB, 2, 0.015625",
        "OKLAB, 3, 0.125",
        "OKLAB, 5, 1",
        "LINEAR, 2, 0.25",
        "LINEAR, 3, 0.5",
        "LINEAR, 0, 0",
        "LINEAR, 9, 1"
    })
    void mixesFromKeyToKey(ColorMix mix, double second, double light) {
        ColorTrack track = ColorTrack.keyed(
                List.of(
                        new ColorKey(1, LinearColor.BLACK, Easing.LINEAR),
                        new ColorKey(5, LinearColor.WHITE, Easing.LINEAR)),
                mix);
        assertThat(track.isConstant()).isFalse();
        assertThat((double) track.at(second).green()).isEqualTo(light, within(1e-5));
        assertThat(track.at(second).alpha()).isEqualTo(1);
    }

    /** The ease-in of half the way is 0.315357 (W3C CSS Easing Functions Level 1). */
    @Test
    void easesTowardAKey() {
        ColorTrack track = ColorTrack.keyed(
                List.of(
                        new ColorKey(0, LinearColor.BLACK, Easing.LINEAR),
                        new ColorKey(2, LinearColor.WHITE, Easing.EASE_IN)),
                ColorMix.LINEAR);
        assertThat((double) track.at(1).red()).isEqualTo(0.315357, within(1e-6));
    }

    @Test
    void staysWithinColoursWhereAnEasingOvershoots() throws Exception {
        ColorTrack track = ColorTrack.keyed(
                List.of(
                        new ColorKey(0, LinearColor.BLACK, Easing.LINEAR),
                        new ColorKey(1, LinearColor.WHITE, Easing.parse("cubic-bezier(0.5, 3, 0.5, -2)"))),
                ColorMix.OKLAB);
        for (double second = 0; second <= 1; second += 0.01) {
            assertThat(track.at(second).red()).isBetween(0f, 1f);
        }
    }

    @Test
    void mayHaveOneColour() {
        ColorTrack track = ColorTrack.constant(LinearColor.WHITE);
        assertThat(track.isConstant()).isTrue();
        assertThat(track.at(-1)).isEqualTo(LinearColor.WHITE);
        assertThat(track.at(1)).isEqualTo(LinearColor.WHITE);
        List<ColorKey> none = List.of();
        assertThatThrownBy(() -> ColorTrack.keyed(none, ColorMix.LINEAR)).isInstanceOf(IllegalArgumentException.class);
    }
}

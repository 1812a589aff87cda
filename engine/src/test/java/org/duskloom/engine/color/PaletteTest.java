package org.duskloom.engine.color;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Expected colours are the stops themselves or the mixes of {@link ColorMixTest}. */
final class PaletteTest {
    private static final LinearColor RED = LinearColor.ofCodes(255, 0, 0);
    private static final LinearColor LIME = LinearColor.ofCodes(0, 255, 0);
    private static final LinearColor BLUE = LinearColor.ofCodes(0, 0, 255);
    private static final List<LinearColor> THREE = List.of(RED, LIME, BLUE);
    private static final PaletteStyle LOOP = new PaletteStyle(ColorMix.OKLAB, false, true);
    private static final PaletteStyle BANDS = new PaletteStyle(ColorMix.OKLAB, true, false);
    private static final PaletteStyle BAND_LOOP = new PaletteStyle(ColorMix.OKLAB, true, true);

    @Test
    void smoothRunsFromTheFirstColorToTheLast() {
        Palette palette = Palette.evenly(THREE, ColorMix.OKLAB);

        assertThat(palette.at(0)).isEqualTo(RED);
        assertThat(palette.at(0.5)).isEqualTo(LIME);
        assertThat(palette.at(1)).isEqualTo(BLUE);
        assertThat(palette.at(0.25)).isEqualTo(ColorMix.OKLAB.mix(RED, LIME, 0.5));
        assertThat(palette.at(0.875)).isEqualTo(ColorMix.OKLAB.mix(LIME, BLUE, 0.75));
        assertThat(palette.at(-3)).isEqualTo(RED);
        assertThat(palette.at(3)).isEqualTo(BLUE);
        assertThat(palette.stops()).extracting(PaletteStop::position).containsExactly(0.0, 0.5, 1.0);
    }

    @Test
    void mixesInItsSpace() {
        assertThat(Codes.of(Palette.evenly(THREE, ColorMix.OKLAB).at(0.25))).isEqualTo("208,168,0");
        assertThat(Codes.of(Palette.evenly(THREE, ColorMix.LINEAR).at(0.25))).isEqualTo("188,188,0");
        assertThat(Palette.evenly(THREE, ColorMix.OKLCH).at(0.7))
                .isEqualTo(ColorMix.OKLCH.mix(LIME, BLUE, (0.7 - 0.5) / 0.5));
    }

    /** Three bands of a third each: [0, 1/3), [1/3, 2/3), [2/3, 1]. */
    @Test
    void steppedHasEqualBands() {
        Palette palette = Palette.evenly(THREE, BANDS);

        assertThat(palette.at(0)).isEqualTo(RED);
        assertThat(palette.at(Math.nextDown(1 / 3.0))).isEqualTo(RED);
        assertThat(palette.at(1 / 3.0)).isEqualTo(LIME);
        assertThat(palette.at(Math.nextDown(2 / 3.0))).isEqualTo(LIME);
        assertThat(palette.at(2 / 3.0)).isEqualTo(BLUE);
        assertThat(palette.at(1)).isEqualTo(BLUE);
        assertThat(palette.at(-1)).isEqualTo(RED);
    }

    @Test
    void cyclicJoinsItsEnds() {
        Palette palette = Palette.evenly(THREE, LOOP);

        assertThat(palette.at(0)).isEqualTo(RED);
        assertThat(palette.at(1 / 3.0)).isEqualTo(LIME);
        assertThat(palette.at(2 / 3.0)).isEqualTo(BLUE);
        assertThat(palette.at(1)).isEqualTo(RED);
        assertThat(Codes.of(palette.at(5 / 6.0))).isEqualTo(Codes.of(ColorMix.OKLAB.mix(BLUE, RED, 0.5)));
        assertThat(palette.at(0.75)).isEqualTo(palette.at(7.75)).isEqualTo(palette.at(-0.25));
        assertThat(palette.at(-1e-20)).isEqualTo(RED);
    }

    @Test
    void steppedLoopWraps() {
        Palette palette = Palette.of(List.of(new PaletteStop(0.25, RED), new PaletteStop(0.75, BLUE)), BAND_LOOP);

        assertThat(palette.at(0.1)).isEqualTo(BLUE);
        assertThat(palette.at(0.25)).isEqualTo(RED);
        assertThat(palette.at(0.8)).isEqualTo(BLUE);
        assertThat(palette.at(1.3)).isEqualTo(RED);
        assertThat(Palette.evenly(THREE, BAND_LOOP).at(-0.1)).isEqualTo(BLUE);
    }

    /** From 0.8 over the seam to 0.3 is a gap of a half: the seam at 1 lies two fifths along it, 0.2 four fifths. */
    @Test
    void placedLoopMixesAcrossTheSeam() {
        Palette palette = Palette.of(List.of(new PaletteStop(0.3, RED), new PaletteStop(0.8, BLUE)), LOOP);

        assertClose(palette.at(0), ColorMix.OKLAB.mix(BLUE, RED, 0.4));
        assertClose(palette.at(0.2), ColorMix.OKLAB.mix(BLUE, RED, 0.8));
        assertClose(palette.at(0.9), ColorMix.OKLAB.mix(BLUE, RED, 0.2));
        assertThat(palette.at(0.3)).isEqualTo(RED);
        assertThat(palette.at(0.8)).isEqualTo(BLUE);
    }

    @Test
    void placedStopsHoldBeyondTheirEndsAndJumpWhereTheyMeet() {
        Palette palette = Palette.of(
                List.of(
                        new PaletteStop(0.2, RED),
                        new PaletteStop(0.5, LIME),
                        new PaletteStop(0.5, BLUE),
                        new PaletteStop(0.8, RED)),
                PaletteStyle.SMOOTH);

        assertThat(palette.at(0.1)).isEqualTo(RED);
        assertThat(palette.at(Math.nextDown(0.5)).green()).isGreaterThan(0.99f);
        assertThat(palette.at(0.5)).isEqualTo(BLUE);
        assertThat(palette.at(0.9)).isEqualTo(RED);
        assertThat(palette.style()).isEqualTo(PaletteStyle.SMOOTH);
    }

    @Test
    void fullLoopHasNoSeam() {
        Palette palette = Palette.of(List.of(new PaletteStop(0, RED), new PaletteStop(1, BLUE)), LOOP);

        assertThat(palette.at(1)).isEqualTo(RED);
        assertThat(palette.at(Math.nextDown(1.0)).blue()).isGreaterThan(0.99f);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.3, 1, -5, 5, Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 1e300})
    void oneColorIsThatColorEverywhere(double s) {
        for (PaletteStyle style : new PaletteStyle[] {PaletteStyle.SMOOTH, LOOP, BANDS, BAND_LOOP}) {
            assertThat(Palette.evenly(List.of(LIME), style).at(s)).isEqualTo(LIME);
            assertThat(Palette.of(List.of(new PaletteStop(1, LIME)), style).at(s))
                    .isEqualTo(LIME);
        }
    }

    @Test
    void anyNumberGivesAColor() {
        for (PaletteStyle style : new PaletteStyle[] {PaletteStyle.SMOOTH, LOOP, BANDS, BAND_LOOP}) {
            Palette palette = Palette.evenly(THREE, style);

            assertThat(palette.at(Double.NaN)).isEqualTo(RED);
            assertThat(palette.at(Double.NEGATIVE_INFINITY)).isEqualTo(RED);
        }
    }

    @Test
    void refusesWhatIsNoPalette() {
        assertThatThrownBy(() -> Palette.evenly(List.of(), ColorMix.OKLAB))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() ->
                        Palette.of(List.of(new PaletteStop(0.5, RED), new PaletteStop(0.4, BLUE)), PaletteStyle.SMOOTH))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new PaletteStop(-0.1, RED)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new PaletteStop(1.1, RED)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new PaletteStop(Double.NaN, RED)).isInstanceOf(IllegalArgumentException.class);
    }

    private static void assertClose(LinearColor actual, LinearColor expected) {
        assertThat(actual.red()).isEqualTo(expected.red(), within(1e-6f));
        assertThat(actual.green()).isEqualTo(expected.green(), within(1e-6f));
        assertThat(actual.blue()).isEqualTo(expected.blue(), within(1e-6f));
    }
}

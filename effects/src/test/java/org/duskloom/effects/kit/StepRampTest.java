package org.duskloom.effects.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.duskloom.effects.Look;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.color.PaletteStyle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StepRampTest {
    private static final PaletteStyle STEPPED = new PaletteStyle(ColorMix.OKLAB, true, false);

    @ParameterizedTest
    @ValueSource(floats = {1e-20f, 0.001f, 1 / 3f, 0.5f, 0.99f, 1})
    void reachesAnEdgeAtTheVeryFloat(float edge) {
        float[] reached = new float[4];
        StepRamp.reached(new float[] {0, Math.nextDown(edge), edge, 1}, edge, 0, 4, reached);
        assertThat(reached).containsExactly(0, 0, 1, 1);
    }

    /** Four quarters of four pure colours, each value exactly 0 or 1. */
    @Test
    void hasPureColours() {
        float[] places = {0, 0.2f, 0.25f, 0.4f, 0.5f, 0.6f, 0.75f, 1};
        float[][] planes = painted(evenly("red", "lime", "blue", "white"), places);
        assertThat(planes[0]).containsExactly(1, 1, 0, 0, 0, 0, 1, 1);
        assertThat(planes[1]).containsExactly(0, 0, 1, 1, 0, 0, 1, 1);
        assertThat(planes[2]).containsExactly(0, 0, 0, 0, 1, 1, 1, 1);
        assertThat(planes[3]).containsOnly(1);
    }

    /** The order of pixels does not matter: the same places the other way round. */
    @Test
    void doesNotCareInWhichOrderPlacesCome() {
        float[][] planes = painted(evenly("red", "lime", "blue", "white"), 1, 0.5f, 0.25f, 0);
        assertThat(planes[0]).containsExactly(1, 0, 0, 1);
        assertThat(planes[2]).containsExactly(1, 1, 0, 0);
    }

    /** Eleven colours have ten edges, twelve have eleven; neighbours of one colour have none between them. */
    @Test
    void isForTenEdgesAtTheMost() {
        assertThat(shows(alternating(11, 1))).isTrue();
        assertThat(shows(alternating(12, 1))).isFalse();
        assertThat(shows(alternating(11, 2))).isTrue();
    }

    @Test
    void isForOpaqueStepsOnly() {
        assertThat(shows(evenly("red", "#0000ff80"))).isFalse();
        assertThat(shows(Look.evenly(ColorMix.OKLAB, "red", "blue"))).isFalse();
    }

    /** Red for the first two thirds, though it is said twice. */
    @Test
    void goesOnOverTwoOfOneColour() {
        assertThat(painted(evenly("red", "red", "black"), 0, 0.32f, 0.34f, 0.66f, 0.67f, 1)[0])
                .containsExactly(1, 1, 1, 1, 0, 0);
    }

    private static Palette alternating(int runs, int length) {
        return evenly(IntStream.range(0, runs * length)
                .mapToObj(i -> i / length % 2 == 0 ? "red" : "blue")
                .toArray(String[]::new));
    }

    private static Palette evenly(String... colors) {
        return Palette.evenly(Arrays.stream(colors).map(Look::color).toList(), STEPPED);
    }

    private static boolean shows(Palette palette) {
        return StepRamp.shows(palette, PalettePiece.of(palette));
    }

    private static float[][] painted(Palette palette, float... places) {
        float[][] planes = new float[4][places.length];
        new StepRamp(PalettePiece.of(palette))
                .fill(places, 0, places.length, planes[0], planes[1], planes[2], planes[3]);
        return planes;
    }
}

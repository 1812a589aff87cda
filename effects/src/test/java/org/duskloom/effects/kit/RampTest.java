package org.duskloom.effects.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.api.Assertions;
import org.assertj.core.data.Offset;
import org.duskloom.effects.Look;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.color.LinearColor;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.color.PaletteStop;
import org.duskloom.engine.color.PaletteStyle;
import org.duskloom.engine.effect.Patch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Checked against {@link Palette#at}, which is itself checked against the values that W3C publishes. */
class RampTest {
    private static final int STEPS = 1900;
    private static final double TOLERANCE = 1e-4;

    static Stream<Arguments> palettes() {
        PaletteStyle smooth = PaletteStyle.SMOOTH;
        PaletteStyle cyclic = new PaletteStyle(ColorMix.OKLAB, false, true);
        PaletteStyle stepped = new PaletteStyle(ColorMix.OKLAB, true, false);
        PaletteStyle hues = new PaletteStyle(ColorMix.OKLCH, false, false);
        PaletteStyle linear = new PaletteStyle(ColorMix.LINEAR, false, false);
        String[] dusk = {"#1b2a6b", "#7b3fa0", "#ff9e5e"};
        String[] many = {"red", "lime", "blue", "white", "black", "gold", "teal", "pink"};
        return Stream.of(
                Arguments.of("one colour", evenly(smooth, "gold"), SingleRamp.class),
                Arguments.of("one colour twice", evenly(smooth, "gold", "gold"), SingleRamp.class),
                Arguments.of("one translucent", evenly(smooth, "#ff880080"), SingleRamp.class),
                Arguments.of("two", evenly(smooth, "navy", "orange"), CubicRamp.class),
                Arguments.of("black to white", evenly(smooth, "black", "white"), CubicRamp.class),
                Arguments.of("beyond sRGB between", evenly(smooth, "blue", "yellow"), CubicRamp.class),
                Arguments.of("three", evenly(smooth, dusk), CubicRamp.class),
                Arguments.of("three cyclic", evenly(cyclic, dusk), CubicRamp.class),
                Arguments.of("linear", evenly(linear, dusk), CubicRamp.class),
                Arguments.of("placed", placed(smooth, 0.2, "red", 0.7, "blue"), CubicRamp.class),
                Arguments.of("placed cyclic", placed(cyclic, 0.2, "red", 0.7, "blue"), CubicRamp.class),
                Arguments.of(
                        "edge within", placed(smooth, 0, "red", 0.3, "lime", 0.3, "blue", 1, "red"), CubicRamp.class),
                Arguments.of("edge at the end", placed(smooth, 0, "red", 1, "lime", 1, "blue"), CubicRamp.class),
                Arguments.of("seam jumps", placed(cyclic, 0, "red", 1, "lime"), CubicRamp.class),
                Arguments.of("steps", evenly(stepped, dusk), StepRamp.class),
                Arguments.of("eight steps", evenly(stepped, many), StepRamp.class),
                Arguments.of("sixteen steps", evenly(stepped, twice(many)), TableRamp.class),
                Arguments.of("translucent steps", evenly(stepped, "red", "#0000ff40"), TableRamp.class),
                Arguments.of("eight", evenly(smooth, many), CubicRamp.class),
                Arguments.of("sixteen", evenly(smooth, twice(many)), TableRamp.class),
                Arguments.of("hues", evenly(hues, "red", "lime", "blue"), TableRamp.class),
                Arguments.of("fading out", evenly(smooth, "red", "transparent"), TableRamp.class));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("palettes")
    void showsThePalette(String name, Palette palette, Class<? extends Ramp> kind) {
        Ramp ramp = Ramp.of(palette);

        assertThat(ramp).isExactlyInstanceOf(kind);
        Patch patch = patch();
        ramp.paint(patch.first, patch);
        patch.fill();
        for (int i = 0; i <= STEPS; i++) {
            LinearColor expected = palette.at(patch.first[i]);
            String at = name + " at " + patch.first[i];
            assertThat((double) patch.red[i])
                    .as(at)
                    .isBetween(0.0, 1.0)
                    .isCloseTo(expected.red() * expected.alpha(), within());
            assertThat((double) patch.green[i])
                    .as(at)
                    .isBetween(0.0, 1.0)
                    .isCloseTo(expected.green() * expected.alpha(), within());
            assertThat((double) patch.blue[i])
                    .as(at)
                    .isBetween(0.0, 1.0)
                    .isCloseTo(expected.blue() * expected.alpha(), within());
            assertThat((double) patch.alpha[i]).as(at).isBetween(0.0, 1.0).isCloseTo(expected.alpha(), within());
        }
        assertThat(patch.isOpaque()).isEqualTo(ramp.isOpaque());
    }

    /** The neighbouring floats on both sides of an edge have the colours on both sides of it. */
    @ParameterizedTest
    @MethodSource("edges")
    void changesAtTheVeryFloat(Palette palette, double edge) {
        float at = (float) edge >= edge ? (float) edge : Math.nextUp((float) edge);
        Patch patch = new Patch();
        patch.reset(0, 2);
        patch.first[0] = Math.nextDown(at);
        patch.first[1] = at;

        Ramp.of(palette).paint(patch.first, patch);

        for (int i = 0; i < 2; i++) {
            LinearColor expected = palette.at(patch.first[i]);
            assertThat(patch.red[i]).isCloseTo(expected.red() * expected.alpha(), Assertions.within(2e-6f));
            assertThat(patch.blue[i]).isCloseTo(expected.blue() * expected.alpha(), Assertions.within(2e-6f));
        }
    }

    static Stream<Arguments> edges() {
        PaletteStyle stepped = new PaletteStyle(ColorMix.OKLAB, true, false);
        Palette seven = evenly(stepped, "red", "blue", "black", "red", "blue", "white", "black");
        return Stream.of(
                Arguments.of(evenly(stepped, "red", "blue", "white"), 1 / 3.0),
                Arguments.of(evenly(stepped, "red", "blue", "white"), 2 / 3.0),
                Arguments.of(seven, 1 / 7.0),
                Arguments.of(seven, 6 / 7.0),
                Arguments.of(placed(PaletteStyle.SMOOTH, 0.1, "red", 0.1, "blue"), 0.1),
                Arguments.of(placed(PaletteStyle.SMOOTH, 0.7, "#ff000080", 0.7, "blue"), 0.7));
    }

    /** The primaries at the ends are full and dark exactly, in spite of rounding. */
    @Test
    void keepsBlackAndWhitePure() {
        Patch patch = new Patch();
        patch.reset(0, 2);
        patch.first[0] = 0;
        patch.first[1] = 1;

        Ramp.of(evenly(PaletteStyle.SMOOTH, "black", "white")).paint(patch.first, patch);

        assertThat(new float[] {patch.red[0], patch.green[0], patch.blue[0]}).containsOnly(0f);
        assertThat(new float[] {patch.red[1], patch.green[1], patch.blue[1]}).containsOnly(1f);
    }

    @Test
    void paintsTheGivenCellsOnly() {
        Patch patch = patch();
        patch.reset(3, 5);

        Ramp.of(evenly(PaletteStyle.SMOOTH, "white", "red", "blue")).paint(patch.first, patch);

        assertThat(patch.blue[2]).isZero();
        assertThat(patch.blue[3]).isNotZero();
        assertThat(patch.blue[4]).isNotZero();
        assertThat(patch.blue[5]).isZero();
    }

    private static Offset<Double> within() {
        return Assertions.within(TOLERANCE);
    }

    private static Patch patch() {
        Patch patch = new Patch();
        patch.reset(0, STEPS + 1);
        for (int i = 0; i <= STEPS; i++) {
            patch.first[i] = (float) i / STEPS;
        }
        return patch;
    }

    private static String[] twice(String... colors) {
        return Stream.concat(Stream.of(colors), Stream.of(colors)).toArray(String[]::new);
    }

    private static Palette evenly(PaletteStyle style, String... colors) {
        return Palette.evenly(Stream.of(colors).map(Look::color).toList(), style);
    }

    private static Palette placed(PaletteStyle style, Object... placesAndColors) {
        List<PaletteStop> stops = Stream.iterate(0, i -> i < placesAndColors.length, i -> i + 2)
                .map(i -> new PaletteStop(
                        ((Number) placesAndColors[i]).doubleValue(), Look.color((String) placesAndColors[i + 1])))
                .toList();
        return Palette.of(stops, style);
    }
}

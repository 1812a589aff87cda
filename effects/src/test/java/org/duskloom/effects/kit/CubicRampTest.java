package org.duskloom.effects.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.duskloom.effects.Look;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.color.LinearColor;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.color.PaletteStop;
import org.duskloom.engine.color.PaletteStyle;
import org.junit.jupiter.api.Test;

class CubicRampTest {
    private static final int STEPS = 64;

    /**
     * Black to white in OKLab: the lightness of a grey is the cube root of its light (B. Ottosson), so the light is s³.
     */
    @Test
    void isTheCubeOfThePlaceForGreys() {
        float[][] planes = painted(Look.evenly(ColorMix.OKLAB, "black", "white"));
        for (int i = 0; i <= STEPS; i++) {
            double s = (double) i / STEPS;
            for (int channel = 0; channel < 3; channel++) {
                assertThat((double) planes[channel][i]).isCloseTo(s * s * s, within(2e-5));
            }
        }
    }

    /** In linear light from 1/4 to 3/4 of the way: red is 2 (s - 1/4), held at both ends. */
    @Test
    void isAStraightLineBetweenItsStops() {
        Palette palette = Palette.of(
                List.of(new PaletteStop(0.25, Look.color("black")), new PaletteStop(0.75, Look.color("red"))),
                new PaletteStyle(ColorMix.LINEAR, false, false));
        float[][] planes = painted(palette);
        for (int i = 0; i <= STEPS; i++) {
            double expected = Math.min(1, Math.max(0, 2.0 * i / STEPS - 0.5));
            assertThat((double) planes[0][i]).isCloseTo(expected, within(2e-5));
            assertThat(planes[1][i]).isZero();
        }
    }

    /** What is turned round shows at s what the other shows at 1 - s. */
    @Test
    void isMirroredWithItsColours() {
        String[] colors = {"navy", "plum", "gold", "white"};
        List<String> turned = new ArrayList<>(List.of(colors));
        Collections.reverse(turned);
        float[][] along = painted(Look.evenly(ColorMix.OKLAB, colors));
        float[][] against = painted(Look.evenly(ColorMix.OKLAB, turned.toArray(String[]::new)));
        for (int channel = 0; channel < 3; channel++) {
            for (int i = 0; i <= STEPS; i++) {
                assertThat(against[channel][STEPS - i]).isCloseTo(along[channel][i], within(3e-5f));
            }
        }
    }

    /** Eleven greys have ten pieces that move; twelve have one more than pays. */
    @Test
    void hasTenPartsAtTheMost() {
        assertThat(CubicRamp.of(PalettePiece.of(greys(11)))).isPresent();
        assertThat(CubicRamp.of(PalettePiece.of(greys(12)))).isEmpty();
    }

    /**
     * Twenty-one hard edges between two colours are jumps, which count as well; twenty stops of one colour are nothing.
     */
    @Test
    void countsJumpsButNotWhatStays() {
        List<PaletteStop> edges = new ArrayList<>();
        List<PaletteStop> same = new ArrayList<>();
        for (int i = 1; i <= 21; i++) {
            edges.add(new PaletteStop(i / 22.0, Look.color(i % 2 == 0 ? "red" : "blue")));
            edges.add(new PaletteStop(i / 22.0, Look.color(i % 2 == 0 ? "blue" : "red")));
            same.add(new PaletteStop(i / 22.0, Look.color("gold")));
        }
        same.add(new PaletteStop(1, Look.color("teal")));
        assertThat(CubicRamp.of(PalettePiece.of(Palette.of(edges, PaletteStyle.SMOOTH))))
                .isEmpty();
        assertThat(CubicRamp.of(PalettePiece.of(Palette.of(same, PaletteStyle.SMOOTH))))
                .isPresent();
    }

    @Test
    void isNotForHuesNorForWhatLightShinesThrough() {
        assertThat(CubicRamp.of(PalettePiece.of(Look.evenly(ColorMix.OKLCH, "red", "lime"))))
                .isEmpty();
        assertThat(CubicRamp.of(PalettePiece.of(Look.evenly(ColorMix.LINEAR, "red", "transparent"))))
                .isEmpty();
    }

    private static Palette greys(int count) {
        List<LinearColor> greys = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            float light = (1f + i) / (count + 1);
            greys.add(new LinearColor(light, light, light, 1));
        }
        return Palette.evenly(greys, ColorMix.LINEAR);
    }

    private static float[][] painted(Palette palette) {
        Ramp ramp = CubicRamp.of(PalettePiece.of(palette)).orElseThrow();
        float[] places = new float[STEPS + 1];
        for (int i = 0; i <= STEPS; i++) {
            places[i] = (float) i / STEPS;
        }
        float[][] planes = new float[4][STEPS + 1];
        ramp.fill(places, 0, STEPS + 1, planes[0], planes[1], planes[2], planes[3]);
        assertThat(planes[3]).containsOnly(1f);
        return planes;
    }

    /** Where a clamp is left out it would have changed no float: pieces of every width, at either end and between. */
    @Test
    void clampsWaysWhereverItShows() {
        float[] places = new float[2001];
        for (int i = 0; i < places.length; i++) {
            places[i] = i < 2000 ? i / 1999f : Math.nextDown(1f);
        }
        float[] ways = new float[places.length];
        for (int i = 0; i <= 60; i++) {
            for (int j = i + 1; j <= 61; j++) {
                float start = i / 61f;
                float width = (float) (j / 61.0 - i / 61.0);
                CubicRamp.waysInto(places, start, width, 0, places.length, ways);
                for (int k = 0; k < places.length; k++) {
                    float clamped = Math.min(width, Math.max(0f, places[k] - start));
                    if (ways[k] != clamped) {
                        assertThat(ways[k])
                                .as("%s into %s, %s wide", places[k], start, width)
                                .isEqualTo(clamped);
                    }
                }
            }
        }
    }
}

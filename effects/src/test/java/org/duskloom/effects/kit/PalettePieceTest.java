package org.duskloom.effects.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.duskloom.effects.Look;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.color.LinearColor;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.color.PaletteStop;
import org.duskloom.engine.color.PaletteStyle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class PalettePieceTest {
    private static final PaletteStyle LINEAR = new PaletteStyle(ColorMix.LINEAR, false, false);
    private static final PaletteStyle ROUND = new PaletteStyle(ColorMix.LINEAR, false, true);

    @Test
    void piecesCoverTheWholePalette() {
        List<PalettePiece> pieces = PalettePiece.of(reds(LINEAR, 0.25, 0, 0.5, 1));
        assertThat(pieces.stream().map(PalettePiece::start)).containsExactly(0.0, 0.25, 0.5, 1.0);
        assertThat(pieces.stream().map(PalettePiece::width)).containsExactly(0.25, 0.25, 0.5, 0.0);
    }

    /** Stops at one place cut once, and so does a zero with a sign. */
    @Test
    void cutsOnceAtAPlace() {
        assertThat(PalettePiece.of(reds(LINEAR, -0.0, 0, 0.5, 1, 0.5, 0, 1, 1))).hasSize(3);
    }

    @Test
    void cutsWhereAnyOfThePalettesHasAStop() {
        Palette first = reds(LINEAR, 0, 0, 1, 1);
        Palette second = reds(LINEAR, 0.25, 1, 0.75, 0);
        List<PalettePiece> pieces = PalettePiece.of(List.of(first, second));
        assertThat(pieces.stream().map(PalettePiece::start)).containsExactly(0.0, 0.25, 0.75, 1.0);
        assertThat(pieces.get(1).at(0.5).red()).isEqualTo(0.5f);
        assertThat(pieces.get(1).ofPalette(second).at(0.5).red()).isEqualTo(0.5f);
        assertThat(pieces.get(0).ofPalette(second).at(0.5).red()).isEqualTo(1f);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.1, 1 / 3.0, 0.5, 0.7, 1e-9, 1})
    void knowsItsFirstFloat(double start) {
        float first = new PalettePiece(reds(LINEAR, 0, 0, 1, 1), start, 1).firstFloat();
        assertThat((double) first).isGreaterThanOrEqualTo(start);
        assertThat((double) Math.nextDown(first)).isLessThan(start);
    }

    /** Red jumps from 1/2 to 0 at 1/2: the piece before ends with what is just before the edge. */
    @Test
    void endsJustBeforeTheNext() {
        List<PalettePiece> pieces = PalettePiece.of(reds(LINEAR, 0, 0, 0.5, 0.5, 0.5, 0, 1, 1));
        assertThat(pieces.get(0).at(1).red()).isCloseTo(0.5f, within(1e-6f));
        assertThat(pieces.get(1).at(0).red()).isZero();
        assertThat(pieces.get(2).at(0.7).red()).isEqualTo(1f);
    }

    /** From 1/5 at 0.25 to 3/5 at 0.75, red is (s - 0.25)·4/5 + 1/5: 0.8 a place. Beyond the stops it stays. */
    @Test
    void isAStraightLineInLinearLight() {
        List<PalettePiece> pieces = PalettePiece.of(reds(LINEAR, 0.25, 0.2, 0.75, 0.6));
        assertRed(pieces.get(0), 0.2, 0);
        assertRed(pieces.get(1), 0.2, 0.8);
        assertRed(pieces.get(2), 0.6, 0);
        assertRed(pieces.get(3), 0.6, 0);
    }

    /**
     * Going round, from 3/5 at 0.75 over the seam to 1/5 at 0.25 is a way of 1/2: -0.8 a place, and 0.4 half-way, where
     * the palette begins.
     */
    @Test
    void goesOnAcrossTheSeam() {
        List<PalettePiece> pieces = PalettePiece.of(reds(ROUND, 0.25, 0.2, 0.75, 0.6));
        assertRed(pieces.get(0), 0.4, -0.8);
        assertRed(pieces.get(1), 0.2, 0.8);
        assertRed(pieces.get(2), 0.6, -0.8);
    }

    /**
     * Cut at 1/2, black to white in OKLab is s³ (the lightness of a grey is the cube root of its light: B. Ottosson).
     */
    @Test
    void isACubeInOkLabWhereverItIsCut() {
        Palette grey = Look.evenly(ColorMix.OKLAB, "black", "white");
        PalettePiece later = new PalettePiece(grey, 0.5, 1);
        // (1/2 + x)³ = 1/8 + 3/4 x + 3/2 x² + x³
        double[] green = later.cubics().orElseThrow()[1];
        assertThat(green).containsExactly(new double[] {0.125, 0.75, 1.5, 1}, within(1e-6));
    }

    static Stream<Palette> cubicPalettes() {
        return Stream.of(
                Look.evenly(ColorMix.OKLAB, "navy", "gold", "teal"),
                Palette.evenly(
                        List.of(Look.color("navy"), Look.color("gold"), Look.color("plum")),
                        new PaletteStyle(ColorMix.OKLAB, false, true)),
                Palette.of(
                        List.of(new PaletteStop(0.3, Look.color("olive")), new PaletteStop(0.9, Look.color("pink"))),
                        new PaletteStyle(ColorMix.OKLAB, false, true)),
                Palette.evenly(
                        List.of(Look.color("navy"), Look.color("gold")),
                        new PaletteStyle(ColorMix.LINEAR, true, false)));
    }

    /** The polynomials say what the palette says; it shows nothing below 0 or above 1, so they are cut there. */
    @ParameterizedTest
    @MethodSource("cubicPalettes")
    void hasThePolynomialsOfThePalette(Palette palette) {
        for (PalettePiece piece : PalettePiece.of(palette)) {
            double[][] channels = piece.cubics().orElseThrow();
            for (double share = 0; share < 1; share += 0.125) {
                LinearColor wanted = piece.at(share);
                double way = share * piece.width();
                assertThat(cut(channels[0], way)).isCloseTo(wanted.red(), within(1e-6));
                assertThat(cut(channels[1], way)).isCloseTo(wanted.green(), within(1e-6));
                assertThat(cut(channels[2], way)).isCloseTo(wanted.blue(), within(1e-6));
            }
        }
    }

    @Test
    void hasNoPolynomialsOfHuesNorOfWhatLightShinesThrough() {
        assertThat(PalettePiece.of(Look.evenly(ColorMix.OKLCH, "red", "lime"))
                        .get(0)
                        .cubics())
                .isEmpty();
        assertThat(PalettePiece.of(Look.evenly(ColorMix.OKLAB, "red", "#00ff0080"))
                        .get(0)
                        .cubics())
                .isEmpty();
    }

    private static double cut(double[] polynomial, double x) {
        return Math.min(1, Math.max(0, Cubic.of(polynomial).at(x)));
    }

    private static void assertRed(PalettePiece piece, double first, double slope) {
        assertThat(piece.cubics().orElseThrow()[0]).containsExactly(new double[] {first, slope, 0, 0}, within(1e-7));
    }

    /** A palette of reds: a place and a light, and so on. */
    private static Palette reds(PaletteStyle style, double... placesAndReds) {
        return Palette.of(
                Stream.iterate(0, i -> i < placesAndReds.length, i -> i + 2)
                        .map(i -> new PaletteStop(
                                placesAndReds[i], new LinearColor((float) placesAndReds[i + 1], 0, 0, 1)))
                        .toList(),
                style);
    }
}

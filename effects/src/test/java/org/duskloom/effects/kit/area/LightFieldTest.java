package org.duskloom.effects.kit.area;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.duskloom.effects.Canvases;
import org.junit.jupiter.api.Test;

/** Cells are half way to the neighbours, so a field reaches half a cell beyond its outermost lights. */
class LightFieldTest {
    private static final Offset<Double> ROUNDING = within(1e-9);

    @Test
    void isAsManyCellsAsAGridHasLights() {
        // Spacing 2/4 along the longer side of 5 lights.
        assertField(field(Canvases.grid(5, 3)), 2.5, 1.5, 0.5, 0.5);
    }

    @Test
    void measuresEachAxisByItself() {
        // Columns 3 apart, rows 1 apart.
        assertField(field(Canvases.moved(Canvases.grid(5, 5), 6, 0, 0, 2)), 15, 5, 3, 1);
    }

    @Test
    void hasSquareCellsAlongALine() {
        assertField(field(Canvases.row(11)), 2.2, 0.2, 0.2, 0.2);
        assertField(field(Canvases.moved(Canvases.row(11), 0, 0, 1, 0)), 0.2, 2.2, 0.2, 0.2);
    }

    /** Two rows 4 apart, of lights 0.2 apart: what is 20 times as far is another row, no neighbour. */
    @Test
    void takesNoFarRowForANeighbour() {
        double[][] rows = new double[22][];
        for (int i = 0; i < rows.length; i++) {
            rows[i] = new double[] {-1 + 0.2 * (i % 11), i < 11 ? 0 : 4};
        }
        assertField(field(rows), 2.2, 4.2, 0.2, 0.2);
    }

    /** On a ring of 24 lights neighbours are a chord of 2 sin(7.5°) apart, but only half of them lie side by side. */
    @Test
    void findsTheNeighboursOnARing() {
        double[][] ring = new double[24][];
        for (int i = 0; i < ring.length; i++) {
            double angle = 2 * Math.PI * i / ring.length;
            ring[i] = new double[] {StrictMath.cos(angle), StrictMath.sin(angle)};
        }
        double chord = 2 * StrictMath.sin(Math.PI / 24);
        assertField(field(ring), 2 + chord, 2 + chord, chord, chord);
    }

    @Test
    void givesALonelyLightTheWholeCanvas() {
        assertField(field(new double[][] {{0, 0}}), 2, 2, 2, 2);
        assertField(field(new double[][] {{0.3, 0.3}, {0.3, 0.3}}), 2, 2, 2, 2);
        assertField(field(new double[0][]), 2, 2, 2, 2);
    }

    @Test
    void liesAboutTheMiddleOfItsLights() {
        LightField field = field(new double[][] {{1, 5}, {3, 5}, {1, 6}, {3, 6}});

        assertThat(field.centreX()).isEqualTo(2);
        assertThat(field.centreY()).isEqualTo(5.5);
    }

    /** Of a hundred thousand lights only a sample is asked for its neighbours. */
    @Test
    void findsTheSpacingOfManyLights() {
        assertField(field(Canvases.grid(401, 250)), 401 / 200.0, 250 / 200.0, 1 / 200.0, 1 / 200.0);
    }

    /** Which lights are the sample does not depend on the order in which they come. */
    @Test
    void isTheSameInWhateverOrderTheLightsCome() {
        double[][] places = Canvases.scattered(377);
        LightField expected = field(places);
        for (int seed = 1; seed <= 5; seed++) {
            List<double[]> shuffled = new ArrayList<>(List.of(places));
            Collections.shuffle(shuffled, new Random(seed));
            assertThat(field(shuffled.toArray(double[][]::new))).isEqualTo(expected);
        }
    }

    private static LightField field(double[][] places) {
        return LightField.of(
                Arrays.stream(places).mapToDouble(place -> place[0]).toArray(),
                Arrays.stream(places).mapToDouble(place -> place[1]).toArray());
    }

    private static void assertField(
            LightField field, double width, double height, double cellWidth, double cellHeight) {
        assertThat(field.width()).isCloseTo(width, ROUNDING);
        assertThat(field.height()).isCloseTo(height, ROUNDING);
        assertThat(field.cellWidth()).isCloseTo(cellWidth, ROUNDING);
        assertThat(field.cellHeight()).isCloseTo(cellHeight, ROUNDING);
    }
}

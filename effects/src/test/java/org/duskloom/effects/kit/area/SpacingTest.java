package org.duskloom.effects.kit.area;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.duskloom.effects.Canvases;
import org.junit.jupiter.api.Test;

class SpacingTest {
    private static final double NONE = Double.POSITIVE_INFINITY;

    @Test
    void hasNoneWithoutNeighbours() {
        assertThat(spacing()).isEqualTo(new Spacing(NONE, NONE));
        assertThat(spacing(3, 4)).isEqualTo(new Spacing(NONE, NONE));
        assertThat(spacing(3, 4, 3, 4, 3, 4)).isEqualTo(new Spacing(NONE, NONE));
    }

    /** Side by side there is nobody above, and the other way round. */
    @Test
    void countsEachWayByItself() {
        assertThat(spacing(0, 0, 3, 1)).isEqualTo(new Spacing(Math.sqrt(10), NONE));
        assertThat(spacing(0, 0, -1, 3)).isEqualTo(new Spacing(NONE, Math.sqrt(10)));
    }

    /** Askew by exactly 45°, two lights are neighbours both ways: √2 apart. */
    @Test
    void countsADiagonalBothWays() {
        assertThat(spacing(0, 0, 1, 1)).isEqualTo(new Spacing(Math.sqrt(2), Math.sqrt(2)));
    }

    /** Lights at one place, but for rounding, are no neighbours: the next one 5 away is. */
    @Test
    void passesOverLightsAtOnePlace() {
        assertThat(spacing(0, 0, 0, 0, 1e-10, 0, 5, 0).across()).isCloseTo(5, within(1e-9));
    }

    /**
     * Lights at 0, 1, 3, 6, 10 have their nearest neighbours 1, 1, 2, 3 and 4 away; of these five the second of the
     * sorted ones is the lower quartile: (5 - 1)/4 = 1 from 0, so 1. At 0, 4, 7, 9 they are 4, 3, 2, 2 away, and the
     * least counts.
     */
    @Test
    void isTheLowerQuartile() {
        assertThat(spacing(0, 0, 1, 0, 3, 0, 6, 0, 10, 0).across()).isEqualTo(1);
        assertThat(spacing(0, 0, 4, 0, 7, 0, 9, 0).across()).isEqualTo(2);
        // 1, 3, 5, 7 and 11 apart: nearest 1, 1, 3, 5, 7, 11; (6 - 1)/4 = 1.
        assertThat(spacing(0, 0, 1, 0, 4, 0, 9, 0, 16, 0, 27, 0).across()).isEqualTo(1);
    }

    /** One close pair among eleven does not make the spacing of a row. */
    @Test
    void isNotLedAstrayByOnePair() {
        double[] row = new double[22];
        for (int i = 0; i < 11; i++) {
            row[2 * i] = i;
        }
        row[2] = 0.25;
        assertThat(spacing(row).across()).isEqualTo(1);
    }

    /** Grown by a power of two, moved by whole numbers, and mirrored, it is as much larger, to the bit. */
    @Test
    void growsWithTheLights() {
        double[] grid = flat(Canvases.grid(9, 5));
        Spacing before = spacing(grid);
        double[] after = new double[grid.length];
        for (int i = 0; i < grid.length; i++) {
            after[i] = 8 * (i % 2 == 0 ? -grid[i] : grid[i]) + 16;
        }
        assertThat(spacing(after)).isEqualTo(new Spacing(8 * before.across(), 8 * before.up()));
    }

    /** What is turned by a quarter has its two spacings swapped. */
    @Test
    void isSwappedByAQuarterTurn() {
        double[][] places = Canvases.moved(Canvases.grid(7, 7), 3, 0, 0, 1);
        Spacing upright = spacing(flat(places));
        Spacing turned = spacing(flat(Canvases.moved(places, 0, -1, 1, 0)));
        assertThat(upright.across()).isCloseTo(1, within(1e-12));
        assertThat(upright.up()).isCloseTo(1 / 3.0, within(1e-12));
        assertThat(turned).isEqualTo(new Spacing(upright.up(), upright.across()));
    }

    private static double[] flat(double[][] places) {
        return Arrays.stream(places).flatMapToDouble(Arrays::stream).toArray();
    }

    /** The spacing of lights at x and y, x and y, and so on. */
    private static Spacing spacing(double... places) {
        double[] x = new double[places.length / 2];
        double[] y = new double[places.length / 2];
        double size = 0;
        for (int i = 0; i < x.length; i++) {
            x[i] = places[2 * i];
            y[i] = places[2 * i + 1];
            size = Math.max(size, Math.max(Math.abs(x[i] - x[0]), Math.abs(y[i] - y[0])));
        }
        return Spacing.of(x, y, size);
    }
}

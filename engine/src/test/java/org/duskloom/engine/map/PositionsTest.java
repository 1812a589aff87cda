package org.duskloom.engine.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PositionsTest {
    private static final double[] X = {0, 3, 1};
    private static final double[] Y = {0, 4, 2};
    private static final double[] Z = {0, 12, 2};

    /** 3, 4 and 12 have the diagonal 13; 1, 2 and 2 have 3. */
    @Test
    void knowsHowFarItIs() {
        Positions positions = new Positions(X, Y, Z);
        assertThat(positions.distance(0, 1)).isEqualTo(13);
        assertThat(positions.distance(1, 0)).isEqualTo(13);
        assertThat(positions.distance(0, 2)).isEqualTo(3);
        assertThat(positions.distance(2, 2)).isZero();
    }

    /** No way is shorter than the straight one. */
    @Test
    void aDetourIsNoShorter() {
        Random random = new Random(7);
        double[][] at = {
            random.doubles(20, -9, 9).toArray(), random.doubles(20, -9, 9).toArray(), new double[20]
        };
        Positions positions = new Positions(at[0], at[1], at[2]);
        for (int a = 0; a < 20; a++) {
            for (int b = 0; b < 20; b++) {
                assertThat(positions.distance(a, b))
                        .isCloseTo(Math.hypot(at[0][a] - at[0][b], at[1][a] - at[1][b]), within(1e-12));
                for (int via = 0; via < 20; via++) {
                    assertThat(positions.distance(a, b))
                            .isLessThanOrEqualTo(positions.distance(a, via) + positions.distance(via, b) + 1e-12);
                }
            }
        }
    }

    @Test
    void keepsItsOwnArrays() {
        double[] x = {1, 2};
        Positions positions = new Positions(x, new double[2], new double[2]);
        x[0] = 99;
        assertThat(positions.x(0)).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void refusesPlacesThatAreNowhere(double nowhere) {
        double[] bad = {0, nowhere};
        double[] good = {0, 0};
        assertThatThrownBy(() -> new Positions(bad, good, good)).hasMessage("a coordinate is " + nowhere);
        assertThatThrownBy(() -> new Positions(good, bad, good)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Positions(good, good, bad)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void refusesCoordinatesThatDoNotGoTogether() {
        assertThatThrownBy(() -> new Positions(new double[2], new double[3], new double[2]))
                .hasMessage("x, y and z have 2, 3 and 2 values");
        assertThatThrownBy(() -> new Positions(new double[2], new double[2], new double[1]))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void isEqualByContent() {
        Positions one = new Positions(X, Y, Z);
        assertThat(one).isEqualTo(new Positions(X, Y, Z)).hasSameHashCodeAs(new Positions(X, Y, Z));
        assertThat(one).isNotEqualTo(new Positions(Y, Y, Z));
        assertThat(one).isNotEqualTo(new Positions(X, X, Z));
        assertThat(one).isNotEqualTo(new Positions(X, Y, Y));
        assertThat(one).isNotEqualTo(null);
    }

    /** As many rows as anybody has, picked in an order of their own. */
    @Test
    void growsAndPicksRows() {
        GrowingPositions growing = new GrowingPositions();
        for (int row = 0; row < 3000; row++) {
            growing.add(row, 2 * row, -row);
        }
        assertThat(growing.size()).isEqualTo(3000);
        Positions picked = growing.inOrder(new int[] {2999, 0, 256, 255});
        assertThat(picked.size()).isEqualTo(4);
        assertThat(picked.x(0)).isEqualTo(2999);
        assertThat(picked.y(2)).isEqualTo(512);
        assertThat(picked.z(3)).isEqualTo(-255);
    }
}

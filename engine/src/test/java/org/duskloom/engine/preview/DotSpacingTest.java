package org.duskloom.engine.preview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DotSpacingTest {
    @ParameterizedTest
    @ValueSource(doubles = {1e-6, 0.5, 30, 1e9, 1e30})
    void aGridHasItsStep(double step) {
        double[] x = new double[600];
        double[] y = new double[600];
        for (int i = 0; i < 600; i++) {
            x[i] = i % 30 * step;
            y[i] = i / 30 * step * 2;
        }
        assertThat(DotSpacing.median(x, y)).isCloseTo(step, within(step * 1e-9));
    }

    @Test
    void aLineHasItsStepWhicheverWayItRuns() {
        double[] along = new double[100_000];
        Arrays.setAll(along, i -> 7.5 * i);
        double[] still = new double[100_000];
        assertThat(DotSpacing.median(along, still)).isEqualTo(7.5);
        assertThat(DotSpacing.median(still, along)).isEqualTo(7.5);
        // Along (3, 4) the step is 5 of these.
        double[] three = Arrays.stream(along).map(a -> a * 0.4).toArray();
        double[] four = Arrays.stream(along).map(a -> a * 0.3).toArray();
        assertThat(DotSpacing.median(three, four)).isCloseTo(3.75, within(1e-6));
    }

    @Test
    void pointsInOnePlaceHaveNone() {
        assertThat(DotSpacing.median(new double[] {4}, new double[] {5})).isZero();
        assertThat(DotSpacing.median(new double[] {4, 4, 4}, new double[] {5, 5, 5}))
                .isZero();
    }

    /** A helix seen from the front: every place is taken twice, which does not make the distance 0. */
    @Test
    void coveredPointsDoNotCount() {
        assertThat(DotSpacing.median(new double[] {0, 0, 3, 3, 6, 6}, new double[6]))
                .isEqualTo(3);
    }

    /** Below the sample's size the median is exact: every point against every other. */
    @ParameterizedTest
    @ValueSource(ints = {2, 3, 10, 101, 1000})
    void agreesWithTryingAllPairs(int count) {
        Random random = new Random(count);
        double[] x = random.doubles(count, -3, 9).toArray();
        double[] y = random.doubles(count).map(v -> v * v * v).toArray();
        double[] nearest = new double[count];
        for (int i = 0; i < count; i++) {
            double best = Double.POSITIVE_INFINITY;
            for (int k = 0; k < count; k++) {
                if (k != i) {
                    best = Math.min(best, Math.hypot(x[i] - x[k], y[i] - y[k]));
                }
            }
            nearest[i] = best;
        }
        Arrays.sort(nearest);
        assertThat(DotSpacing.median(x, y)).isCloseTo(nearest[count / 2], within(1e-12));
    }

    /** One pixel far away puts all the others into a single cell. */
    @Test
    void standsAFarOutlier() {
        double[] x = new double[50_000];
        double[] y = new double[50_000];
        for (int i = 0; i < 49_999; i++) {
            x[i] = i % 250;
            y[i] = i / 250;
        }
        x[49_999] = 1e9;
        y[49_999] = 1e9;
        assertThat(DotSpacing.median(x, y)).isEqualTo(1);
    }
}

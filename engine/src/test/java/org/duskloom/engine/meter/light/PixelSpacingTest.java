package org.duskloom.engine.meter.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** How near the nearest neighbour is: by Pythagoras, and against looking at every pair. */
class PixelSpacingTest {
    /** Sides of 3 and 4 make 5; the third place is 1 above the second. */
    @Test
    void isTheDistanceOfTheNearest() {
        double[] x = {0, 3, 3};
        double[] y = {0, 4, 5};
        assertThat(PixelSpacing.nearest(x, y, 10)).containsExactly(5, 1, 1);
    }

    /** Who has no neighbour as near as that gets just that, also when all by himself. */
    @Test
    void isNoMoreThanIsGiven() {
        assertThat(PixelSpacing.nearest(new double[] {0, 3, 3}, new double[] {0, 4, 5}, 2))
                .containsExactly(2, 1, 1);
        assertThat(PixelSpacing.nearest(new double[] {7}, new double[] {7}, 0.1))
                .containsExactly(0.1);
        assertThat(PixelSpacing.nearest(new double[0], new double[0], 0.1)).isEmpty();
    }

    /** Two pixels at one place have no distance, whichever of them comes first. */
    @Test
    void isNothingAtOnePlace() {
        assertThat(PixelSpacing.nearest(new double[] {2, 0, 2}, new double[] {1, 0, 1}, 9)[0])
                .isZero();
        assertThat(PixelSpacing.nearest(new double[] {2, 0, 2}, new double[] {1, 0, 1}, 9)[2])
                .isZero();
    }

    @Test
    void isThatOfLookingAtEveryPair() {
        SplittableRandom random = new SplittableRandom(5);
        double[] x = random.doubles(300, -1, 1).toArray();
        double[] y = random.doubles(300, -1, 1).toArray();
        double[] found = PixelSpacing.nearest(x, y, 0.06);
        for (int one = 0; one < x.length; one++) {
            double least = 0.06;
            for (int other = 0; other < x.length; other++) {
                least = other == one ? least : Math.min(least, Math.hypot(x[one] - x[other], y[one] - y[other]));
            }
            assertThat(found[one]).isCloseTo(least, within(1e-12));
        }
    }
}

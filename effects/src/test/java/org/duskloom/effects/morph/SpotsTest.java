package org.duskloom.effects.morph;

import static org.assertj.core.api.Assertions.assertThat;

import org.duskloom.effects.assign.Points;
import org.junit.jupiter.api.Test;

class SpotsTest {
    private static final Points POINTS =
            new Points(new double[] {1, 2, 3}, new double[] {4, 5, 6}, new double[] {7, 8, 9});

    @Test
    void standSideBySide() {
        assertThat(Spots.of(POINTS, new int[] {2, 0})).containsExactly(3, 6, 9, 1, 4, 7);
    }

    /** 3, 4 and 12: 9 + 16 + 144 = 169. */
    @Test
    void tellTheirDistance() {
        double[] others = {0, 0, 0, 4, 8, -5};
        assertThat(Spots.squaredDistance(Spots.of(POINTS, new int[] {0, 0}), 1, others, 1))
                .isEqualTo(169);
    }

    @Test
    void goStraight() {
        double[] between = new double[6];
        Spots.between(new double[] {0, 4, -2}, new double[] {8, 0, -2}, 0.25, between);
        assertThat(between).containsExactly(2, 3, -2, 0, 0, 0);
    }
}

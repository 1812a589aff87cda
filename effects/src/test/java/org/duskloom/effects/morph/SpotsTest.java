package org.duskloom.effects.morph;

import static org.assertj.core.api.Assertions.assertThat;

import org.duskloom.effects.assign.Points;
import org.junit.jupiter.api.Test;

class SpotsTest {
    private static final Points POINTS =
            new Points(new double[] {1, 2, 3}, new double[] {4, 5, 6}, new double[] {7, 8, 9});

    @Test
    void standSideBySide() {
        Spots spots = Spots.of(POINTS, new int[] {2, 0}, false);
        assertThat(spots.plane()).containsExactly(3, 6, 1, 4);
        assertThat(spots.depths()).containsExactly(9, 7);
        assertThat(spots.isFlat()).isFalse();
        assertThat(new double[] {spots.x(1), spots.y(1), spots.z(1)}).containsExactly(1, 4, 7);
    }

    @Test
    void mayBeFlat() {
        Spots spots = Spots.of(POINTS, new int[] {2, 0}, true);
        assertThat(spots.isFlat()).isTrue();
        assertThat(new double[] {spots.x(1), spots.y(1), spots.z(1)}).containsExactly(1, 4, 0);
    }

    /** 3, 4 and 12: 9 + 16 + 144 = 169; without the last 25. */
    @Test
    void tellTheirDistance() {
        Spots others = Spots.of(
                new Points(new double[] {0, 4}, new double[] {0, 8}, new double[] {0, -5}), new int[] {0, 1}, false);
        Spots spots = Spots.of(POINTS, new int[] {0, 0}, false);
        assertThat(spots.squaredDistance(1, others, 1)).isEqualTo(169);
        assertThat(Spots.flatSquare(spots.plane(), 1, others.plane(), 1)).isEqualTo(25);
    }

    @Test
    void goStraight() {
        Points from = new Points(new double[] {0, -1}, new double[] {4, 5}, new double[] {-2, 6});
        Points to = new Points(new double[] {8, -1}, new double[] {0, 9}, new double[] {-2, 8});
        Spots between = Spots.room(2, false);
        int[] both = {0, 1};
        between.setBetween(Spots.of(from, both, false), Spots.of(to, both, false), 0.25);
        assertThat(between.plane()).containsExactly(2, 3, -1, 6);
        assertThat(between.depths()).containsExactly(-2, 6.5);
    }
}

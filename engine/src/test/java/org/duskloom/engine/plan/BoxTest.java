package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.duskloom.engine.map.Positions;
import org.junit.jupiter.api.Test;

/** Boxes round two or three pixels, worked out on paper. */
class BoxTest {
    @Test
    void liesRoundItsPixelsOnly() {
        Box box = box(new double[] {1, 3, 99}, new double[] {2, -2, 99}, new double[] {5, 5, 99}, 0, 1);
        assertThat(box).isEqualTo(new Box(2, 0, 5, 1, 2, 0, 2e-6));
        assertThat(box.longestHalf()).isEqualTo(2);
    }

    /** A millionth of the longest half-side cannot be seen, whichever side it is; a little more can. */
    @Test
    void aSideThatCannotBeSeenIsNone() {
        double[] longSide = {-1, 1};
        double[] unseen = {-1e-6, 1e-6};
        double[] seen = {-1.1e-6, 1.1e-6};
        Box alongX = box(longSide, unseen, unseen, 0, 1);
        assertThat(alongX.samePlace()).isEqualTo(1e-6);
        assertThat(halves(alongX)).containsExactly(1, 0, 0);
        assertThat(halves(box(unseen, longSide, unseen, 0, 1))).containsExactly(0, 1, 0);
        assertThat(halves(box(seen, longSide, seen, 0, 1))).containsExactly(1.1e-6, 1, 1.1e-6);
        assertThat(halves(box(longSide, seen, longSide, 0, 1))).containsExactly(1, 1.1e-6, 1);
    }

    /**
     * Far from the origin coordinates are rounded more coarsely: doubles near a million are 1.2e-10 apart (IEEE 754),
     * so two pixels that differ by that much stand in one place.
     */
    @Test
    void roundingIsNoSide() {
        double far = 1_000_000;
        Box box = box(new double[] {far, Math.nextUp(far)}, new double[2], new double[2], 0, 1);
        assertThat(box.samePlace()).isEqualTo(1e-6, within(1e-12));
        assertThat(halves(box)).containsExactly(0, 0, 0);
        assertThat(halves(box(new double[] {far, far + 1}, new double[2], new double[2], 0, 1)))
                .containsExactly(0.5, 0, 0);
    }

    private static Box box(double[] x, double[] y, double[] z, int... pixels) {
        return Box.round(pixels, new Positions(x, y, z));
    }

    private static double[] halves(Box box) {
        return new double[] {box.halfX(), box.halfY(), box.halfZ()};
    }
}

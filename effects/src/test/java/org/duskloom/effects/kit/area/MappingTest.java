package org.duskloom.effects.kit.area;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A picture 4 canvas units wide and 2 high on a field of 4 by 2. */
class MappingTest {
    private static final LightField FIELD = new LightField(0, 0, 4, 2, 0.5, 0.5);
    private static final Laid UPRIGHT = Laid.of(4, 2);

    /** The left edge is 2 left of the middle, the top 1 above it. */
    @ParameterizedTest
    @CsvSource({"0, 0, 0.5, 0.5", "-2, 1, 0, 0", "2, -1, 1, 1", "1, 0.5, 0.75, 0.25", "4, 0, 1.5, 0.5"})
    void liesOnTheField(double right, double up, double shareX, double shareY) {
        assertShares(mapping(UPRIGHT), right, up, shareX, shareY);
    }

    /** A quarter turn counter-clockwise: the picture's right side is up, its top on the left. To the bit. */
    @Test
    void turnsCounterClockwise() {
        Mapping mapping = mapping(UPRIGHT.turned(90));
        assertThat(mapping.shareX(0, 2)).isEqualTo(1);
        assertThat(mapping.shareX(1, 0)).isEqualTo(0.5);
        assertThat(mapping.shareY(-1, 0)).isZero();
        assertThat(mapping.shareY(1, 0)).isEqualTo(1);
    }

    /** Half a turn swaps left with right and up with down; 45° puts the middle of the right edge at (√2, √2). */
    @Test
    void turnsFurther() {
        assertShares(mapping(UPRIGHT.turned(180)), 2, -1, 0, 0);
        double root = Math.sqrt(2);
        assertShares(mapping(UPRIGHT.turned(45)), root, root, 1, 0.5);
        assertShares(mapping(UPRIGHT.turned(-45)), root, -root, 1, 0.5);
    }

    /** Twice as large, half as far from the middle in the picture; and back. */
    @Test
    void zoomsAboutItsAnchor() {
        assertShares(mapping(UPRIGHT.zoomed(2)), 2, 1, 0.75, 0.25);
        assertShares(mapping(UPRIGHT.zoomed(0.25)), 0.5, 0, 1, 0.5);
    }

    /** Moved right by 1 and up by 1/2, the middle lies there, and it turns about that place. */
    @Test
    void moves() {
        assertShares(mapping(UPRIGHT.moved(1, 0.5)), 1, 0.5, 0.5, 0.5);
        assertShares(mapping(UPRIGHT.moved(1, 0.5).turned(90)), 1, 2.5, 1, 0.5);
    }

    /** What it says as factors is what it says of a place. */
    @Test
    void isALinearMap() {
        Mapping mapping = mapping(UPRIGHT.moved(0.3, -0.2).turned(33).zoomed(1.7));
        assertThat(mapping.shareX(0.7, -0.9))
                .isEqualTo(mapping.xOfMiddle() + 0.7 * mapping.xOfRight() - 0.9 * mapping.xOfUp(), within(1e-15));
        assertThat(mapping.shareY(0.7, -0.9))
                .isEqualTo(mapping.yOfMiddle() + 0.7 * mapping.yOfRight() - 0.9 * mapping.yOfUp(), within(1e-15));
    }

    private static Mapping mapping(Laid laid) {
        Mapping mapping = new Mapping();
        mapping.set(laid, FIELD, laid.pose(FIELD));
        return mapping;
    }

    private static void assertShares(Mapping mapping, double right, double up, double shareX, double shareY) {
        assertThat(mapping.shareX(right, up)).isCloseTo(shareX, within(1e-15));
        assertThat(mapping.shareY(right, up)).isCloseTo(shareY, within(1e-15));
    }
}

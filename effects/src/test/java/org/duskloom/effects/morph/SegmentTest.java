package org.duskloom.effects.morph;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SegmentTest {
    /** From (1, 1, 0) to (4, 5, 0), 5 long: beside it, before its start, beyond its end, above it, on it. */
    @ParameterizedTest
    @CsvSource({"5,-2,0, 25", "-2,-3,0, 25", "4,7,0, 4", "2.5,3,6, 36", "1,1,0, 0", "2.5,3,0, 0"})
    void measuresFromTheNearestPoint(double x, double y, double z, double square) {
        Spots from = spots(9, 9, 9, 1, 1, 0);
        Spots to = spots(9, 9, 9, 4, 5, 0);
        assertThat(Segment.of(from, to, 1).squaredDistance(spots(x, y, z), 0)).isCloseTo(square, within(1e-12));
    }

    /** A dot that stays where it is. */
    @ParameterizedTest
    @CsvSource({"0,0,0, 3", "1,1,1, 0", "1,1,-1, 4"})
    void mayBeAPoint(double x, double y, double z, double square) {
        Spots spot = spots(1, 1, 1);
        assertThat(Segment.of(spot, spot, 0).squaredDistance(spots(x, y, z), 0)).isEqualTo(square);
    }

    private static Spots spots(double... coordinates) {
        Spots spots = Spots.room(coordinates.length / 3, false);
        for (int spot = 0; spot < coordinates.length / 3; spot++) {
            System.arraycopy(coordinates, 3 * spot, spots.plane(), 2 * spot, 2);
            spots.depths()[spot] = coordinates[3 * spot + 2];
        }
        return spots;
    }
}

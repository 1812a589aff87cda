package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.timeline.PixelOrder;
import org.junit.jupiter.api.Test;

/** Places along an order where pixels nearly stand side by side. */
class OrderPlacesTest {
    /** The middle of the ranks that they share, which is what ties have in statistics (fractional ranking). */
    @Test
    void keysThatHardlyDifferShareTheirRank() {
        assertThat(OrderPlaces.middleRanks(new double[] {5, 0, 1, 9, 2.5}, 1)).containsExactly(3, 0.5, 0.5, 4, 2);
        assertThat(OrderPlaces.middleRanks(new double[] {0, 1, 2}, 1)).containsExactly(1, 1, 1);
    }

    /** As the hands of a clock go: 0 at the top, a quarter at the right. */
    @Test
    void turnsCountFromTheTop() {
        assertThat(OrderPlaces.clockwiseTurns(0, 1, 1e-6)).isZero();
        assertThat(OrderPlaces.clockwiseTurns(1, 0, 1e-6)).isEqualTo(0.25);
        assertThat(OrderPlaces.clockwiseTurns(0, -1, 1e-6)).isEqualTo(0.5);
        assertThat(OrderPlaces.clockwiseTurns(-1, 0, 1e-6)).isEqualTo(0.75);
        assertThat(OrderPlaces.clockwiseTurns(-1e-9, 1, 1e-6)).as("rounding").isZero();
    }

    /** What lies at the centre has no angle: as far from it as pixels may be that count as side by side. */
    @Test
    void theCentreIsOnTheTop() {
        assertThat(OrderPlaces.clockwiseTurns(0.5, 0, 0.5)).isZero();
        assertThat(OrderPlaces.clockwiseTurns(0, -0.5, 0.5)).isZero();
        assertThat(OrderPlaces.clockwiseTurns(-0.5, -0.5, 0.5)).isZero();
        assertThat(OrderPlaces.clockwiseTurns(0.6, 0, 0.5)).isEqualTo(0.25);
        assertThat(OrderPlaces.clockwiseTurns(0, -0.6, 0.5)).isEqualTo(0.5);
    }

    /**
     * On a prop of 2000 units pixels that are 0.0001 apart, of a million parts one, are side by side. Angles are
     * measured in turns on a prop of any size: a ten thousandth of a turn is not nothing.
     */
    @Test
    void nearnessIsOfLengthsOrOfAngles() {
        double far = 1000;
        Positions line = positions(-far, 0, 0, 0, 0.0001, 0, far, 0);
        assertThat(along(PixelOrder.RIGHT, line)).containsExactly(0, 1.5, 1.5, 3);
        double angle = 2 * Math.PI * 1e-4;
        Positions circle =
                positions(0, far, far * StrictMath.sin(angle), far * StrictMath.cos(angle), 0, -far, far, 0, -far, 0);
        assertThat(along(PixelOrder.CLOCKWISE, circle)).containsExactly(0, 1, 3, 2, 4);
    }

    private static double[] along(PixelOrder order, Positions positions) {
        int[] pixels = IntStream.range(0, positions.size()).toArray();
        return OrderPlaces.along(order, pixels, GroundAxes.of(positions), Box.round(pixels, positions))
                .position();
    }

    /** Points of a plane, x and y in turn. */
    private static Positions positions(double... xy) {
        double[] x =
                IntStream.range(0, xy.length / 2).mapToDouble(i -> xy[2 * i]).toArray();
        double[] y = IntStream.range(0, xy.length / 2)
                .mapToDouble(i -> xy[2 * i + 1])
                .toArray();
        return new Positions(x, y, new double[x.length]);
    }
}

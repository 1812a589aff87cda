package org.duskloom.effects.morph;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.duskloom.effects.assign.Clouds;
import org.duskloom.effects.assign.Points;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PixelTreeTest {
    static Stream<Points> places() {
        return Stream.of(
                Clouds.of(new double[] {1, 2}),
                Clouds.line(9, 0.5),
                Clouds.ring(100, 1),
                Clouds.grid(400, -1, 2),
                Clouds.disc(700, 1, 3),
                Clouds.box(900, 4),
                Clouds.heaps(500, 2),
                twice(Clouds.disc(60, 1, 9)),
                new Points(new double[300], new double[300], new double[300]));
    }

    private static Points twice(Points points) {
        int[] numbers = IntStream.range(0, 2 * points.count())
                .map(i -> i % points.count())
                .toArray();
        return points.picked(numbers);
    }

    /** Against the distances to all others, for a part of every third pixel. */
    @ParameterizedTest
    @MethodSource("places")
    void measuresTheSpacing(Points places) {
        int[] numbers = IntStream.range(0, places.count()).toArray();
        Points part = places.picked(
                IntStream.range(0, places.count()).filter(i -> i % 3 == 0).toArray());
        double[] nearest = IntStream.range(0, part.count())
                .mapToDouble(i -> Arrays.stream(numbers)
                        .mapToDouble(other -> part.squaredDistance(i, places, other))
                        .filter(square -> square > 0)
                        .min()
                        .orElse(0))
                .sorted()
                .toArray();

        assertThat(new PixelTree(places, numbers).spacing(part))
                .isCloseTo(Math.sqrt(nearest[(nearest.length - 1) / 2]), within(1e-12));
    }

    /**
     * Of 3, 1, 1 and 10 between neighbours on a line: the nearest of the five are 3, 1, 1, 1 and 10, and the median is
     * 1.
     */
    @Test
    void takesTheMedianForTheSpacing() {
        Points line = new Points(new double[] {0, 3, 4, 5, 15}, new double[5], new double[5]);
        PixelTree tree = new PixelTree(line, new int[] {0, 1, 2, 3, 4});
        assertThat(tree.spacing(line)).isEqualTo(1);
        assertThat(tree.spacing(line.picked(new int[] {0, 4}))).isEqualTo(3);
        assertThat(new PixelTree(line, new int[] {2}).spacing(line.picked(new int[] {2})))
                .isZero();
    }

    @Test
    void holdsOnlyThePixelsGiven() {
        Points places = Clouds.grid(100, 0, 1);
        PixelTree tree = new PixelTree(places, new int[] {3, 99, 50});
        assertThat(tree.size()).isEqualTo(3);
    }
}

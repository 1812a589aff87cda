package org.duskloom.effects.morph;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.duskloom.effects.assign.Clouds;
import org.duskloom.effects.assign.Points;
import org.duskloom.engine.effect.Patch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PixelGridTest {
    private static final double[] REACHES = {0, 1e-9, 0.05, 0.5, 1, 3, 100};
    private static final double[] SIDES = {1e-6, 0.3, 2, 50};

    static Stream<Points> places() {
        return Stream.of(
                Clouds.of(new double[] {1, 2}),
                Clouds.line(9, 0.5),
                Clouds.ring(100, 1),
                Clouds.grid(400, -1, 2),
                Clouds.disc(300, 1, 3),
                Clouds.box(300, 4),
                Clouds.heaps(300, 2),
                new Points(new double[90], new double[90], new double[90]));
    }

    static boolean isFlat(Points places) {
        return Arrays.stream(places.z()).allMatch(z -> z == 0);
    }

    /** Against every pixel by itself, by the formula: none within reach is missed, and none is lit too often. */
    @ParameterizedTest
    @MethodSource("places")
    void lightsWhatTheFormulaLights(Points places) {
        int[] numbers = IntStream.range(0, places.count()).toArray();
        for (double side : SIDES) {
            PixelGrid grid = new PixelGrid(places, numbers, side, isFlat(places));
            for (double reach : REACHES) {
                for (int at = 0; at < places.count(); at += 1 + places.count() / 5) {
                    assertLit(grid, places, places.x()[at], places.y()[at], places.z()[at], reach);
                    assertLit(grid, places, places.x()[at] + 0.3 * reach, places.y()[at] - reach, 0, reach);
                    assertLit(grid, places, places.x()[at] - reach, places.y()[at], places.z()[at], reach);
                }
                assertLit(grid, places, -1e7, 2, 0, reach);
                assertLit(grid, places, 1e300, -1e300, 1e300, reach);
            }
        }
    }

    private static void assertLit(PixelGrid grid, Points places, double x, double y, double z, double reach) {
        Light light = new ColorLight(places.count(), List.of(grid));
        grid.shine(1, frame(grid.spots().isFlat(), x, y, z), reach, light);
        Patch patch = new Patch();
        patch.reset(0, places.count());
        light.paint(0, patch);
        Points dot = new Points(new double[] {x}, new double[] {y}, new double[] {z});
        for (int pixel = 0; pixel < places.count(); pixel++) {
            float level = level(places.squaredDistance(pixel, dot, 0), reach);
            assertThat(patch.alpha[pixel])
                    .as("pixel %d, reach %s", pixel, reach)
                    .isEqualTo(level);
            assertThat(patch.green[pixel]).isEqualTo(level * 0.5f);
        }
    }

    /** A dot at a place. */
    private static DotFrame frame(boolean flat, double x, double y, double z) {
        DotFrame frame = new DotFrame(1, flat);
        Points spot = new Points(new double[] {x}, new double[] {y}, new double[] {z});
        Spots spots = Spots.of(spot, new int[1], flat);
        frame.spots.setBetween(spots, spots, 0);
        System.arraycopy(new float[] {1, 0.5f, 0.25f, 1}, 0, frame.colors, 0, frame.colors.length);
        return frame;
    }

    private static float level(double square, double reach) {
        double reachSquare = Math.max(reach * reach, Double.MIN_NORMAL);
        float away = (float) (1 - square / reachSquare);
        return square < reachSquare ? away * away : 0;
    }

    /** Many pixels in one corner and one far away: cells grow rather than fill the memory. */
    @Test
    void takesCellsThatAreNotMuchMoreThanPixels() {
        Points places = new Points(
                IntStream.range(0, 50)
                        .mapToDouble(i -> i == 49 ? 1e9 : i * 1e-6)
                        .toArray(),
                IntStream.range(0, 50)
                        .mapToDouble(i -> i == 49 ? -1e9 : i * 1e-6)
                        .toArray(),
                IntStream.range(0, 50).mapToDouble(i -> i == 49 ? 1e9 : 0).toArray());
        PixelGrid grid = new PixelGrid(places, IntStream.range(0, 50).toArray(), 1e-6, false);

        assertThat(grid.cellCount()).isLessThanOrEqualTo(8 * 50);
        assertLit(grid, places, 0, 0, 0, 5e-6);
    }

    @Test
    void holdsOnlyThePixelsGiven() {
        Points places = Clouds.grid(100, 0, 1);
        PixelGrid grid = new PixelGrid(places, new int[] {3, 99, 50}, 1, true);
        assertThat(grid.ranks(new int[] {50, 3, 99})).containsExactlyInAnyOrder(0, 1, 2);
        Light light = new ColorLight(100, List.of(grid));
        grid.shine(1, frame(true, 0, 0, 0), 1e4, light);
        Patch patch = new Patch();
        patch.reset(0, 100);
        light.paint(0, patch);

        assertThat(IntStream.range(0, 100).filter(i -> patch.red[i] > 0)).containsExactly(3, 50, 99);
    }
}

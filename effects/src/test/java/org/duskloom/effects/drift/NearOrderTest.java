package org.duskloom.effects.drift;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.duskloom.effects.Canvases;
import org.duskloom.engine.effect.Canvas;
import org.junit.jupiter.api.Test;

class NearOrderTest {
    /** The curve of Morton, 1966, goes through the lower left quarter, the lower right one, then the upper two. */
    @Test
    void goesThroughAQuarterBeforeTheNext() {
        Canvas canvas = Canvases.of(
                new double[] {1, 1},
                new double[] {0.9, 0.9},
                new double[] {-1, 1},
                new double[] {1, -1},
                new double[] {-1, -1},
                new double[] {-0.9, -0.9});
        assertThat(NearOrder.of(canvas)).containsExactly(4, 5, 3, 2, 1, 0);
    }

    @Test
    void hasEveryPixelOnceMemberByMember() {
        Canvas canvas = new Canvases()
                .member("gate", Canvases.scattered(5000))
                .member("arbour", Canvases.row(3))
                .member("stone", new double[] {0, 0})
                .build();
        int[] order = NearOrder.of(canvas);
        assertThat(Arrays.copyOf(order, 5000))
                .containsExactlyInAnyOrder(IntStream.range(0, 5000).toArray());
        assertThat(Arrays.copyOfRange(order, 5000, 5004)).containsExactly(5000, 5001, 5002, 5003);
    }

    /** Over a square of 2 by 2, the mean distance of two points is 1.04 (of a unit square 0.5214, B. Ghosh, 1951). */
    @Test
    void keepsNearOnesTogether() {
        double[][] places = Canvases.scattered(4000);
        int[] order = NearOrder.of(Canvases.of(places));
        double way = 0;
        for (int i = 1; i < order.length; i++) {
            double[] a = places[order[i - 1]];
            double[] b = places[order[i]];
            way += Math.hypot(a[0] - b[0], a[1] - b[1]);
        }
        assertThat(way / order.length).isLessThan(1.04 / 20);
    }
}

package org.duskloom.engine.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the grid finds is what asking every pixel finds. */
class PixelFieldTest {
    @ParameterizedTest
    @CsvSource({"1, 0, 0", "2, 50, 0", "300, 100, 100", "300, 100, 0", "300, 0, 100", "300, 0, 0", "500, 1000, 0.001"})
    void agreesWithAskingEveryPixel(int count, double width, double height) {
        double[] x = IntStream.range(0, count)
                .mapToDouble(i -> i * 7919 % 997 / 997.0 * width)
                .toArray();
        double[] y = IntStream.range(0, count)
                .mapToDouble(i -> i * 104_729 % 991 / 991.0 * height)
                .toArray();
        PixelField field = new PixelField(x, y);
        Span own = new Span(0, Math.max(1, count / 2));
        for (int k = 0; k < 200; k++) {
            Area area = Area.around(width * (k % 14 - 2) / 10.0, height * (k / 14 - 2) / 10.0, k % 5, k % 3);
            double within = k % 7 * 3;
            assertThat(field.isNear(area, within))
                    .isEqualTo(IntStream.range(0, count).anyMatch(i -> area.distanceTo(x[i], y[i]) < within));
            assertThat(field.isOtherNear(own, area, within))
                    .isEqualTo(IntStream.range(own.toExclusive(), count)
                            .anyMatch(i -> area.distanceTo(x[i], y[i]) < within));
            double nearest = IntStream.range(0, own.toExclusive())
                    .mapToDouble(i -> area.distanceTo(x[i], y[i]))
                    .min()
                    .orElseThrow();
            assertThat(field.distance(own, area, within)).isCloseTo(Math.min(within, nearest), within(1e-12));
            int index = field.nearest(own, area);
            assertThat(area.distanceTo(x[index], y[index])).isCloseTo(nearest, within(1e-12));
        }
        for (int i = 0; i < count; i += 7) {
            assertNearestOther(field, x, y, i, 5 + i % 40);
        }
    }

    private static void assertNearestOther(PixelField field, double[] x, double[] y, int pixel, double within) {
        double least = IntStream.range(0, x.length)
                .filter(i -> i != pixel)
                .mapToDouble(i -> Math.hypot(x[i] - x[pixel], y[i] - y[pixel]))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        int other = field.nearestOther(pixel, within);
        if (least >= within) {
            assertThat(other).isEqualTo(-1);
        } else {
            assertThat(other).isNotEqualTo(pixel);
            assertThat(Math.hypot(x[other] - x[pixel], y[other] - y[pixel])).isCloseTo(least, within(1e-12));
        }
    }

    /** Of a wire of twenty thousand, every fifth is asked. */
    @Test
    void ofAVeryLongSpanOneThatIsAboutAsNear() {
        double[] x = IntStream.range(0, 20_000).mapToDouble(i -> i).toArray();
        PixelField field = new PixelField(x, new double[20_000]);
        Span own = new Span(100, 20_000);
        assertThat(field.nearest(own, Area.round(1234, 50, 1))).isBetween(1230, 1238);
        assertThat(field.nearest(own, Area.round(19_998, 50, 1))).isBetween(19_994, 19_999);
        assertThat(field.nearest(own, Area.round(0, 50, 1))).isEqualTo(100);
    }
}

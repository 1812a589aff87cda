package org.duskloom.effects.kit.area;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.duskloom.effects.kit.area.BoxFilter.Side;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Means of the row 0, 1/8, 2/8 ... 7/8 and of its like, worked by hand. */
class BoxFilterTest {
    private static final LightImage RISING = row(0, 0.125f, 0.25f, 0.375f, 0.5f, 0.625f, 0.75f, 0.875f);

    @ParameterizedTest
    @CsvSource({
        // Two boxes of four pixels: (0 + 1 + 2 + 3) / 4 / 8 and (4 + 5 + 6 + 7) / 4 / 8.
        "2, 4, false, 0.1875 0.6875",
        // One box of six pixels in the middle: (1 + 2 + 3 + 4 + 5 + 6) / 6 / 8.
        "1, 6, false, 0.4375",
        // Four boxes of two pixels: (0 + 1) / 2 / 8 and so on.
        "4, 2, false, 0.0625 0.3125 0.5625 0.8125",
        // Boxes of four pixels round 1, 3, 5 and 7: the outer ones are cut at the edge, to pixels 0 to 2 and 5 to 7.
        "4, 4, false, 0.125 0.3125 0.5625 0.75",
        // Repeating, the outer ones go on with the pixel 7 and the pixel 0.
        "4, 4, true, 0.3125 0.3125 0.5625 0.5625",
        // A box as long as everything, or longer, holds everything once.
        "2, 8, true, 0.4375 0.4375",
        "2, 11, true, 0.4375 0.4375"
    })
    void takesMeans(int count, double box, boolean repeats, String expected) {
        LightImage means = BoxFilter.filter(RISING, new Side(count, box), Side.unchanged(1), repeats);

        assertThat(means.width()).isEqualTo(count);
        String[] values = expected.split(" ");
        for (int i = 0; i < count; i++) {
            assertThat(means.light()[4 * i]).isCloseTo(Float.parseFloat(values[i]), within(1e-6f));
            assertThat(means.light()[4 * i + 3]).isEqualTo(1);
        }
    }

    /** Down a column it is the same as along a row. */
    @Test
    void takesMeansOfColumns() {
        LightImage column = new LightImage(1, 8, RISING.light());

        assertThat(BoxFilter.filter(column, Side.unchanged(1), new Side(3, 3.3), false)
                        .light())
                .isEqualTo(BoxFilter.filter(RISING, new Side(3, 3.3), Side.unchanged(1), false)
                        .light());
    }

    /** Pixels cut into thirds and put together again are what they were. */
    @Test
    void losesNothing() {
        LightImage thirds = BoxFilter.filter(RISING, new Side(24, 1 / 3.0), Side.unchanged(1), false);
        LightImage again = BoxFilter.filter(thirds, new Side(8, 3), Side.unchanged(1), false);

        for (int i = 0; i < RISING.light().length; i++) {
            assertThat(again.light()[i]).isCloseTo(RISING.light()[i], within(1e-6f));
        }
    }

    private static LightImage row(float... red) {
        float[] light = new float[red.length * 4];
        for (int i = 0; i < red.length; i++) {
            light[4 * i] = red[i];
            light[4 * i + 3] = 1;
        }
        return new LightImage(red.length, 1, light);
    }
}

package org.duskloom.engine.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import org.duskloom.engine.map.Positions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeasuredPropTest {
    private static Positions places(int count, double offset) {
        double[][] at = new double[3][count];
        for (int i = 0; i < count; i++) {
            at[0][i] = offset + i;
            at[1][i] = offset + 10 * i;
            at[2][i] = offset + 100 * i;
        }
        return new Positions(at[0], at[1], at[2]);
    }

    private static final MeasuredProp THREE = new MeasuredProp(4, new int[] {2, 5, 9}, places(3, 0));

    @ParameterizedTest
    @CsvSource({"'', 0", "'3 3', 2", "'4 3', 2", "'1 5 4', 3", "'-1 2', 2", "'1 2', 3", "'1 2', 1"})
    void refusesPixelsThatDoNotRiseOrHaveNoPlace(String numbers, int places) {
        int[] pixels = numbers.isEmpty()
                ? new int[0]
                : Arrays.stream(numbers.split(" ")).mapToInt(Integer::parseInt).toArray();
        assertThatThrownBy(() -> new MeasuredProp(0, pixels, places(places, 0)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(pixels.length + " pixels, " + places + " places");
    }

    /** Whoever uses the array again must not change what was measured. */
    @Test
    void keepsPixelsOfItsOwn() {
        int[] pixels = {0, 7};
        MeasuredProp prop = new MeasuredProp(0, pixels, places(2, 0));
        pixels[1] = 3;
        assertThat(prop.pixel(1)).isEqualTo(7);
    }

    @ParameterizedTest
    @CsvSource({"0, 5 9, 1 2", "1, 2 9, 0 2", "2, 2 5, 0 1"})
    void leavesOnePixelOutWithItsPlace(int index, String pixels, String xs) {
        MeasuredProp rest = THREE.without(index);
        assertThat(rest.propIndex()).isEqualTo(4);
        assertThat(rest.pixel(0) + " " + rest.pixel(1)).isEqualTo(pixels);
        for (int i = 0; i < 2; i++) {
            int x = Integer.parseInt(xs.split(" ")[i]);
            assertThat(List.of(
                            rest.places().x(i),
                            rest.places().y(i),
                            rest.places().z(i)))
                    .containsExactly((double) x, 10.0 * x, 100.0 * x);
        }
        assertThat(THREE.count()).isEqualTo(3);
    }

    @Test
    void cannotLeaveOutItsOnlyPixel() {
        MeasuredProp one = new MeasuredProp(0, new int[] {3}, places(1, 0));
        assertThatThrownBy(() -> one.without(0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void takesOtherPlacesForTheSamePixels() {
        MeasuredProp moved = THREE.at(places(3, 7));
        assertThat(moved.pixel(2)).isEqualTo(9);
        assertThat(moved.propIndex()).isEqualTo(4);
        assertThat(moved.places().z(2)).isEqualTo(207);
        assertThat(THREE.places().z(2)).isEqualTo(200);
        assertThatThrownBy(() -> THREE.at(places(2, 0))).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void measurementsCountPixelsOverAllProps() {
        MeasuredProp one = new MeasuredProp(5, new int[] {0}, places(1, 0));
        assertThat(new Measurements(List.of(THREE, one), Dimensions.FLAT).pixelCount())
                .isEqualTo(4);
        assertThatThrownBy(() -> new Measurements(List.of(), Dimensions.FLAT))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("nothing was measured");
    }
}

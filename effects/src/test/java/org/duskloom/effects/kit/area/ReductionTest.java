package org.duskloom.effects.kit.area;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReductionTest {
    /** In steps of an eighth of an octave, downward: 3 lies between 2^(12/8) = 2.8284 and 2^(13/8) = 3.0844. */
    @ParameterizedTest
    @CsvSource({"0.2, 1", "1, 1", "2, 2", "3, 2.8284271", "4.01, 4", "7.99, 7.3360323"})
    void goesNoFurtherThanItMay(double wanted, double pixel) {
        assertThat(Reduction.of(wanted, 1).across()).isCloseTo(pixel, within(1e-6));
        assertThat(Reduction.of(1, wanted).down()).isCloseTo(pixel, within(1e-6));
    }

    /** Lights that are nearly as far apart share a picture, so a hundred like members cost no more than one. */
    @Test
    void isSharedByLikeCells() {
        assertThat(Reduction.of(4.01, 8.02)).isEqualTo(Reduction.of(4.02, 8.04));
    }

    /** 120 by 60 pixels to pixels of 4 by 1 and, further, of 8 by 2: 30 by 60, 15 by 30. */
    @Test
    void leavesFewerPixels() {
        assertThat(Reduction.of(4, 1).size(120, 60).pixels()).isEqualTo(30 * 60);
        assertThat(Reduction.of(4, 1).by(2).size(120, 60).pixels()).isEqualTo(15 * 30);
        assertThat(Reduction.of(1e9, 1e9).size(120, 60).pixels()).isEqualTo(1);
    }

    /** Six pixels of alpha 0, 1, 2, 3, 4, 5 twelfths become three, of the means of two. */
    @Test
    void takesTheMeans() {
        float[] light = new float[24];
        for (int i = 0; i < 6; i++) {
            light[4 * i + 3] = i / 12f;
        }
        LightImage image = new LightImage(6, 1, light);
        LightImage reduced = Reduction.of(2, 1).size(6, 1).apply(image, false);
        assertThat(reduced.width()).isEqualTo(3);
        for (int i = 0; i < 3; i++) {
            assertThat(reduced.light()[4 * i + 3]).isCloseTo((2 * i + 0.5f) / 12, within(1e-6f));
        }
        assertThat(Reduction.of(1, 1).size(6, 1).apply(image, false)).isSameAs(image);
    }
}

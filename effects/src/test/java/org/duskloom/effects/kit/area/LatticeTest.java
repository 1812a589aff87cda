package org.duskloom.effects.kit.area;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.duskloom.engine.effect.Patch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two by two pixels, with red 0 and 1/2 above, 1/4 and 1 below; their middles are at 1/4 and 3/4. */
class LatticeTest {
    private static final Offset<Float> ROUNDING = within(1e-6f);
    private static final LightImage FOUR = image(2, 0, 0.5f, 0.25f, 1);

    @ParameterizedTest
    @CsvSource({
        "0.25, 0.25, 0",
        "0.75, 0.25, 0.5",
        "0.25, 0.75, 0.25",
        "0.75, 0.75, 1",
        // (0 + 1/2 + 1/4 + 1)/4
        "0.5, 0.5, 0.4375",
        // A quarter of the way to the right, half-way down: 3/4·(0 + 1/4)/2 + 1/4·(1/2 + 1)/2
        "0.375, 0.5, 0.28125",
        // Beyond the middles of the outer pixels their light stays.
        "0, 0, 0",
        "1, 0, 0.5",
        "0, 1, 0.25",
        "1, 1, 1",
        "1, 0.5, 0.75"
    })
    void goesStraightBetweenMiddles(float x, float y, float red) {
        assertThat(painted(Lattice.of(FOUR, false), x, y)).isCloseTo(red, ROUNDING);
    }

    /** On the seam, half of what is on either side: above (0 + 1/2)/2, in the corner the mean of all. */
    @ParameterizedTest
    @CsvSource({"0, 0.25, 0.25", "1, 0.25, 0.25", "0, 0, 0.4375", "1, 1, 0.4375", "0.25, 0.25, 0", "0.125, 0.25, 0.125"
    })
    void goesOnAcrossTheSeam(float x, float y, float red) {
        assertThat(painted(Lattice.of(FOUR, true), x, y)).isCloseTo(red, ROUNDING);
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "0.5, 0.5", "1, 1", "0.3, 0.9"})
    void isEvenIfItIsOnePixel(float x, float y) {
        assertThat(painted(Lattice.of(image(1, 0.3f), false), x, y)).isCloseTo(0.3f, ROUNDING);
        assertThat(painted(Lattice.of(image(1, 0.3f), true), x, y)).isCloseTo(0.3f, ROUNDING);
    }

    /** Three quarters of what was there, 1/2, and a quarter of the pixel, 1: 5/8. The same for each channel. */
    @Test
    void mixesInAShare() {
        Patch patch = patch(0.75f, 0.75f);
        patch.red[0] = 0.5f;
        patch.green[0] = 0.5f;
        patch.blue[0] = 0.5f;
        patch.alpha[0] = 0.5f;
        Lattice.of(FOUR, false).mixIn(patch.first, patch.second, 0.25f, 0, 1, patch);
        assertThat(patch.red[0]).isCloseTo(0.625f, ROUNDING);
        assertThat(patch.green[0]).isCloseTo(0.625f, ROUNDING);
        assertThat(patch.blue[0]).isCloseTo(0.375f, ROUNDING);
        assertThat(patch.alpha[0]).isCloseTo(0.625f, ROUNDING);
    }

    /** Mixed in whole it is what it paints; mixed in not at all it leaves what is there. */
    @Test
    void mixesInAllOrNothing() {
        Lattice lattice = Lattice.of(FOUR, false);
        for (float x = 0; x <= 1; x += 0.0625f) {
            Patch patch = patch(x, 0.6f);
            lattice.paint(patch.first, patch.second, 0, 1, patch);
            float painted = patch.red[0];
            patch.red[0] = 0.125f;
            lattice.mixIn(patch.first, patch.second, 0, 0, 1, patch);
            assertThat(patch.red[0]).isEqualTo(0.125f);
            lattice.mixIn(patch.first, patch.second, 1, 0, 1, patch);
            assertThat(patch.red[0]).isCloseTo(painted, ROUNDING);
        }
    }

    private static float painted(Lattice lattice, float x, float y) {
        Patch patch = patch(x, y);
        lattice.paint(patch.first, patch.second, 0, 1, patch);
        assertThat(patch.green[0]).isCloseTo(patch.red[0], ROUNDING);
        assertThat(patch.blue[0]).isZero();
        assertThat(patch.alpha[0]).isCloseTo(1, ROUNDING);
        return patch.red[0];
    }

    private static Patch patch(float x, float y) {
        Patch patch = new Patch();
        patch.reset(0, 1);
        patch.first[0] = x;
        patch.second[0] = y;
        return patch;
    }

    /** Opaque pixels of red and as much green. */
    private static LightImage image(int width, float... red) {
        float[] light = new float[red.length * 4];
        for (int i = 0; i < red.length; i++) {
            light[4 * i] = red[i];
            light[4 * i + 1] = red[i];
            light[4 * i + 3] = 1;
        }
        return new LightImage(width, red.length / width, light);
    }
}

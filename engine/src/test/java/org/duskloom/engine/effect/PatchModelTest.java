package org.duskloom.engine.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A patch puts off what it can; whatever a brush asks of it in whatever order, in the end its planes hold what they
 * would hold if each thing had been done at once.
 */
class PatchModelTest {
    private static final int CELLS = 6;

    private final Patch patch = new Patch();

    /** Red, green, blue and alpha of each cell, done at once. */
    private final float[][] plain = new float[4][CELLS];

    private void paint(Random random) {
        float[][] planes = {patch.red, patch.green, patch.blue, patch.alpha};
        for (int channel = 0; channel < 4; channel++) {
            for (int cell = 0; cell < CELLS; cell++) {
                planes[channel][cell] = random.nextFloat();
                plain[channel][cell] = planes[channel][cell];
            }
        }
    }

    private void set(int channel, float value) {
        for (int cell = 0; cell < CELLS; cell++) {
            plain[channel][cell] = value;
        }
    }

    private void make(Random random) {
        switch (random.nextInt(5)) {
            case 0 -> {
                patch.makeOpaque();
                set(3, 1);
            }
            case 1 -> {
                patch.makeBlack();
                for (int channel = 0; channel < 4; channel++) {
                    set(channel, channel == 3 ? 1 : 0);
                }
            }
            case 2 -> flat(random.nextFloat(), random.nextFloat(), random.nextFloat());
            case 3 -> {
                patch.clear();
                for (int channel = 0; channel < 4; channel++) {
                    set(channel, 0);
                }
            }
            default -> {}
        }
    }

    private void flat(float red, float green, float blue) {
        patch.makeFlat(red, green, blue);
        for (int cell = 0; cell < CELLS; cell++) {
            plain[0][cell] = red * plain[3][cell];
            plain[1][cell] = green * plain[3][cell];
            plain[2][cell] = blue * plain[3][cell];
        }
    }

    private void dim(Random random, float[] levels) {
        for (int cell = 0; cell < CELLS; cell++) {
            levels[cell] = random.nextFloat();
            for (float[] channel : plain) {
                channel[cell] *= levels[cell];
            }
        }
        patch.dimBy(levels);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2})
    void holdsWhatWasAsked(int dimmings) {
        Random random = new Random(dimmings);
        for (int run = 0; run < 300; run++) {
            patch.reset(0, CELLS);
            paint(random);
            make(random);
            if (dimmings > 0) {
                dim(random, patch.second);
            }
            if (dimmings > 1) {
                dim(random, patch.third);
            }
            patch.fill();
            assertThat(patch.isBlack() || patch.isFlat() || patch.isDimmed())
                    .as("everything stands in the planes")
                    .isFalse();
            assertPlanes();
            patch.fill();
            assertPlanes();
        }
    }

    private void assertPlanes() {
        for (int cell = 0; cell < CELLS; cell++) {
            for (int channel = 0; channel < 3; channel++) {
                assertThat(patch.plane(channel)[cell]).isCloseTo(plain[channel][cell], within(1e-6f));
            }
            assertThat(patch.alpha[cell]).isCloseTo(plain[3][cell], within(1e-6f));
            assertThat(patch.isOpaque() && patch.alpha[cell] != 1).isFalse();
        }
    }

    /** A black patch onto which a brush has painted after all shows what was painted. */
    @ParameterizedTest
    @ValueSource(floats = {0, 0.25f, 1})
    void showsColoursPaintedOntoBlack(float red) {
        patch.reset(0, 1);
        patch.makeBlack();
        patch.red[0] = red;
        patch.green[0] = 0;
        patch.blue[0] = 0;
        patch.showColors();
        patch.fill();
        assertThat(patch.red[0]).isEqualTo(red);
        assertThat(patch.alpha[0]).isEqualTo(1);
    }
}

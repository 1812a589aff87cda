package org.duskloom.engine.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.duskloom.engine.color.BlendMode;
import org.duskloom.engine.effect.Patch;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A patch of one colour is mixed bit by bit as if its planes had been filled, whether there is a loop for it or not. */
class FlatCompositorTest {
    private static final int CELLS = 777;

    @ParameterizedTest
    @EnumSource(BlendMode.class)
    void mixesLikeAFilledPatch(BlendMode mode) {
        Patch flat = patch(5);
        flat.makeFlat(0.9f, 0.31f, 0.07f);
        Patch filled = patch(5);
        filled.makeFlat(0.9f, 0.31f, 0.07f);
        filled.fillFlat();
        Patch overFlat = backdrop();
        Patch overFilled = backdrop();

        Compositor.paint(mode, flat, 0.83f, overFlat);
        Compositor.paint(mode, filled, 0.83f, overFilled);

        assertThat(overFlat.red).containsExactly(overFilled.red);
        assertThat(overFlat.green).containsExactly(overFilled.green);
        assertThat(overFlat.blue).containsExactly(overFilled.blue);
    }

    private static Patch backdrop() {
        Patch patch = patch(9);
        fill(patch.red, 1);
        fill(patch.green, 2);
        fill(patch.blue, 3);
        patch.makeOpaque();
        return patch;
    }

    private static Patch patch(long seed) {
        Patch patch = new Patch();
        patch.reset(0, CELLS);
        fill(patch.alpha, seed);
        return patch;
    }

    private static void fill(float[] plane, long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < CELLS; i++) {
            plane[i] = random.nextFloat();
        }
    }
}

package org.duskloom.engine.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.duskloom.engine.color.BlendMode;
import org.duskloom.engine.effect.Patch;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whatever a patch says of itself instead of filling its planes, it is mixed bit by bit as if they had been filled:
 * else the bytes of a pixel would depend on what hangs beside it.
 */
class CompositorShortcutsTest {
    private static final int CELLS = 777;
    private static final float OPACITY = 0.83f;

    private enum Source {
        FLAT(patch -> patch.makeFlat(0.9f, 0.31f, 0.07f)),
        OPAQUE(Patch::makeOpaque),
        DIMMED(patch -> patch.dimBy(patch.second)),
        DIMMED_OPAQUE(patch -> {
            patch.makeOpaque();
            patch.dimBy(patch.second);
        }),
        TRANSLUCENT(patch -> {});

        private final Consumer<Patch> paint;

        Source(Consumer<Patch> paint) {
            this.paint = paint;
        }
    }

    private enum Backdrop {
        OPAQUE(Patch::makeOpaque),
        BLACK(Patch::makeBlack),
        TRANSLUCENT(patch -> {});

        private final Consumer<Patch> paint;

        Backdrop(Consumer<Patch> paint) {
            this.paint = paint;
        }
    }

    static Stream<Arguments> all() {
        return Arrays.stream(BlendMode.values())
                .flatMap(mode -> Arrays.stream(Source.values())
                        .flatMap(source -> Arrays.stream(Backdrop.values())
                                .map(backdrop -> Arguments.of(mode, source, backdrop))));
    }

    @ParameterizedTest
    @MethodSource("all")
    void mixesLikeFilledPlanes(BlendMode mode, Source source, Backdrop backdrop) {
        for (int firstCell : new int[] {0, 100}) {
            Patch shortcut = backdrop(backdrop);
            Patch filled = backdrop(backdrop);
            filled.fill();
            Patch filledSource = source(source, firstCell);
            filledSource.fill();

            Compositor.paint(mode, source(source, firstCell), OPACITY, shortcut);
            Compositor.paint(mode, filledSource, OPACITY, filled);
            shortcut.fill();
            filled.fill();

            assertThat(shortcut.red).containsExactly(filled.red);
            assertThat(shortcut.green).containsExactly(filled.green);
            assertThat(shortcut.blue).containsExactly(filled.blue);
            assertThat(shortcut.alpha).containsExactly(filled.alpha);
        }
    }

    private static Patch source(Source source, int firstCell) {
        Patch patch = premultiplied(5, firstCell);
        random(patch.second, 6);
        if (source.name().contains("OPAQUE")) {
            random(patch.red, 7);
        }
        source.paint.accept(patch);
        return patch;
    }

    private static Patch backdrop(Backdrop backdrop) {
        Patch patch = premultiplied(9, 0);
        backdrop.paint.accept(patch);
        return patch;
    }

    private static Patch premultiplied(long seed, int firstCell) {
        Patch patch = new Patch();
        patch.reset(firstCell, CELLS);
        random(patch.alpha, seed);
        float[][] colors = {patch.red, patch.green, patch.blue};
        for (int channel = 0; channel < colors.length; channel++) {
            random(colors[channel], seed + channel + 1);
            for (int i = 0; i < CELLS; i++) {
                colors[channel][i] *= patch.alpha[i];
            }
        }
        return patch;
    }

    private static void random(float[] plane, long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < CELLS; i++) {
            plane[i] = random.nextFloat();
        }
    }
}

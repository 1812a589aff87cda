package org.duskloom.engine.render;

import org.duskloom.engine.color.BlendMode;
import org.duskloom.engine.effect.Patch;

/**
 * Mixes a patch with black that it covers, in the modes that leave nothing but the patch there. Computes, float by
 * float, what {@link Compositor} would after {@link Patch#fill}, without reading the backdrop.
 */
final class BlackCompositor {
    private BlackCompositor() {}

    /** Whether black under the patch is as good as nothing. */
    static boolean serves(BlendMode mode) {
        return switch (mode) {
            case NORMAL, SCREEN, LIGHTEN, PLUS_LIGHTER -> true;
            default -> false;
        };
    }

    /** Mixes all cells of the backdrop. */
    static void paint(Patch source, float opacity, Patch backdrop) {
        int from = source.from();
        int to = source.to();
        for (int channel = 0; channel < Patch.CHANNELS; channel++) {
            float[] light = source.plane(channel);
            float[] target = backdrop.plane(channel);
            if (source.isFlat()) {
                product(source.alpha, source.flat(channel), opacity, from, to, target);
            } else if (source.isDimmed()) {
                product(light, source.level(), opacity, from, to, target);
            } else {
                product(light, opacity, from, to, target);
            }
        }
        backdrop.showColors();
    }

    private static void product(float[] source, float opacity, int from, int to, float[] target) {
        for (int i = from; i < to; i++) {
            target[i] = source[i] * opacity;
        }
    }

    private static void product(float[] source, float factor, float opacity, int from, int to, float[] target) {
        for (int i = from; i < to; i++) {
            target[i] = source[i] * factor * opacity;
        }
    }

    private static void product(float[] source, float[] level, float opacity, int from, int to, float[] target) {
        for (int i = from; i < to; i++) {
            target[i] = source[i] * level[i] * opacity;
        }
    }
}

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
        if (source.isFlat()) {
            product(source.alpha, source.flatRed(), opacity, from, to, backdrop.red);
            product(source.alpha, source.flatGreen(), opacity, from, to, backdrop.green);
            product(source.alpha, source.flatBlue(), opacity, from, to, backdrop.blue);
        } else if (source.isDimmed()) {
            product(source.red, source.level(), opacity, from, to, backdrop.red);
            product(source.green, source.level(), opacity, from, to, backdrop.green);
            product(source.blue, source.level(), opacity, from, to, backdrop.blue);
        } else {
            product(source.red, opacity, from, to, backdrop.red);
            product(source.green, opacity, from, to, backdrop.green);
            product(source.blue, opacity, from, to, backdrop.blue);
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

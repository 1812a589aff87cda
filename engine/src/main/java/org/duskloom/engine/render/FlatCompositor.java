package org.duskloom.engine.render;

import org.duskloom.engine.color.BlendMode;
import org.duskloom.engine.effect.Patch;

/**
 * Mixes a patch of one colour with an opaque backdrop, in the modes that shows use most. Computes, float by float, what
 * {@link Compositor} would after {@link Patch#fill}, without filling the planes first.
 */
final class FlatCompositor {
    private FlatCompositor() {}

    /** Whether there is a loop for the mode. */
    static boolean serves(BlendMode mode) {
        return switch (mode) {
            case NORMAL, SCREEN, LIGHTEN, PLUS_LIGHTER -> true;
            default -> false;
        };
    }

    /** Mixes the cells that the source is reset to. */
    static void paint(BlendMode mode, Patch source, float opacity, Patch backdrop) {
        int from = source.from();
        int to = source.to();
        for (int channel = 0; channel < Patch.CHANNELS; channel++) {
            paint(mode, source.alpha, source.flat(channel), opacity, backdrop.plane(channel), from, to);
        }
    }

    private static void paint(
            BlendMode mode, float[] alpha, float color, float opacity, float[] backdrop, int from, int to) {
        switch (mode) {
            case NORMAL -> normal(alpha, color, opacity, backdrop, from, to);
            case SCREEN -> screen(alpha, color, opacity, backdrop, from, to);
            case LIGHTEN -> lighten(alpha, color, opacity, backdrop, from, to);
            case PLUS_LIGHTER -> plusLighter(alpha, color, opacity, backdrop, from, to);
            default -> throw new IllegalArgumentException(mode.word());
        }
    }

    private static void normal(float[] alpha, float color, float opacity, float[] backdrop, int from, int to) {
        for (int i = from; i < to; i++) {
            float source = alpha[i] * color;
            backdrop[i] = backdrop[i] * (1f - alpha[i] * opacity) + source * opacity;
        }
    }

    private static void screen(float[] alpha, float color, float opacity, float[] backdrop, int from, int to) {
        for (int i = from; i < to; i++) {
            float under = backdrop[i];
            backdrop[i] = under + alpha[i] * color * opacity * (1f - under);
        }
    }

    private static void lighten(float[] alpha, float color, float opacity, float[] backdrop, int from, int to) {
        for (int i = from; i < to; i++) {
            float under = backdrop[i];
            backdrop[i] = under + opacity * Compositor.aboveZero(alpha[i] * color - alpha[i] * under);
        }
    }

    private static void plusLighter(float[] alpha, float color, float opacity, float[] backdrop, int from, int to) {
        for (int i = from; i < to; i++) {
            backdrop[i] = Math.min(1f, backdrop[i] + alpha[i] * color * opacity);
        }
    }
}

package org.duskloom.engine.render;

import org.duskloom.engine.color.BlendMode;
import org.duskloom.engine.effect.Patch;

/**
 * Mixes a dimmed patch with an opaque backdrop, in the modes that shows use most. Computes, float by float, what {@link
 * Compositor} would after {@link Patch#fill}, without going through the planes twice.
 */
final class DimmedCompositor {
    private DimmedCompositor() {}

    /** Whether there is a loop for the mode. */
    static boolean serves(BlendMode mode) {
        return FlatCompositor.serves(mode);
    }

    /** Mixes the cells that the source is reset to. */
    static void paint(BlendMode mode, Patch source, float opacity, Patch backdrop) {
        int from = source.from();
        int to = source.to();
        for (int channel = 0; channel < Patch.CHANNELS; channel++) {
            float[] light = source.plane(channel);
            if (source.isOpaque()) {
                opaque(mode, light, source.level(), opacity, backdrop.plane(channel), from, to);
            } else {
                translucent(mode, light, source.alpha, source.level(), opacity, backdrop.plane(channel), from, to);
            }
        }
    }

    private static void opaque(
            BlendMode mode, float[] source, float[] level, float opacity, float[] backdrop, int from, int to) {
        switch (mode) {
            case NORMAL -> normal(source, level, opacity, backdrop, from, to);
            case SCREEN -> screen(source, level, opacity, backdrop, from, to);
            case LIGHTEN -> lighten(source, level, opacity, backdrop, from, to);
            case PLUS_LIGHTER -> plusLighter(source, level, opacity, backdrop, from, to);
            default -> throw new IllegalArgumentException(mode.word());
        }
    }

    private static void translucent(
            BlendMode mode,
            float[] source,
            float[] alpha,
            float[] level,
            float opacity,
            float[] backdrop,
            int from,
            int to) {
        switch (mode) {
            case NORMAL -> normal(source, alpha, level, opacity, backdrop, from, to);
            case SCREEN -> screen(source, level, opacity, backdrop, from, to);
            case LIGHTEN -> lighten(source, alpha, level, opacity, backdrop, from, to);
            case PLUS_LIGHTER -> plusLighter(source, level, opacity, backdrop, from, to);
            default -> throw new IllegalArgumentException(mode.word());
        }
    }

    private static void normal(float[] source, float[] level, float opacity, float[] backdrop, int from, int to) {
        for (int i = from; i < to; i++) {
            backdrop[i] = backdrop[i] * (1f - level[i] * opacity) + source[i] * level[i] * opacity;
        }
    }

    private static void normal(
            float[] source, float[] alpha, float[] level, float opacity, float[] backdrop, int from, int to) {
        for (int i = from; i < to; i++) {
            float dimmed = alpha[i] * level[i];
            backdrop[i] = backdrop[i] * (1f - dimmed * opacity) + source[i] * level[i] * opacity;
        }
    }

    private static void screen(float[] source, float[] level, float opacity, float[] backdrop, int from, int to) {
        for (int i = from; i < to; i++) {
            float under = backdrop[i];
            backdrop[i] = under + source[i] * level[i] * opacity * (1f - under);
        }
    }

    private static void lighten(float[] source, float[] level, float opacity, float[] backdrop, int from, int to) {
        for (int i = from; i < to; i++) {
            float under = backdrop[i];
            backdrop[i] = under + opacity * Compositor.aboveZero(source[i] * level[i] - level[i] * under);
        }
    }

    private static void lighten(
            float[] source, float[] alpha, float[] level, float opacity, float[] backdrop, int from, int to) {
        for (int i = from; i < to; i++) {
            float under = backdrop[i];
            float dimmed = alpha[i] * level[i];
            backdrop[i] = under + opacity * Compositor.aboveZero(source[i] * level[i] - dimmed * under);
        }
    }

    private static void plusLighter(float[] source, float[] level, float opacity, float[] backdrop, int from, int to) {
        for (int i = from; i < to; i++) {
            backdrop[i] = Math.min(1f, backdrop[i] + source[i] * level[i] * opacity);
        }
    }
}

package org.duskloom.engine.render;

import org.duskloom.engine.color.BlendMode;
import org.duskloom.engine.effect.Patch;

/**
 * Mixes a patch with what is under it, cell by cell, on premultiplied linear light: the general formula of W3C
 * Compositing and Blending with source-over, as Level 2 writes it out, {@code co = cs*(1-ab) + as*ab*B(Cb,Cs) +
 * cb*(1-as)}, in which the separable modes that need no division are written out. Loops are kept small, over arrays
 * under one index, so that the compiler turns them into vector instructions; where the backdrop is opaque, shorter
 * formulas serve.
 */
final class Compositor {
    private Compositor() {}

    /**
     * Mixes the cells that the source is reset to.
     *
     * @param mode how colours are mixed
     * @param source what is painted
     * @param opacity by which the source is multiplied first, 0 to 1
     * @param backdrop what is under it; changed in place
     */
    static void paint(BlendMode mode, Patch source, float opacity, Patch backdrop) {
        if (backdrop.isBlack() && BlackCompositor.serves(mode) && isCovered(backdrop, source)) {
            BlackCompositor.paint(source, opacity, backdrop);
            return;
        }
        if (backdrop.isBlack()) {
            backdrop.fill();
        }
        if (source.isFlat() && backdrop.isOpaque() && FlatCompositor.serves(mode)) {
            FlatCompositor.paint(mode, source, opacity, backdrop);
        } else if (source.isDimmed() && backdrop.isOpaque() && DimmedCompositor.serves(mode)) {
            DimmedCompositor.paint(mode, source, opacity, backdrop);
        } else {
            paintPlanes(mode, source, opacity, backdrop);
        }
    }

    private static boolean isCovered(Patch backdrop, Patch source) {
        return source.from() == backdrop.from() && source.to() == backdrop.to();
    }

    private static void paintPlanes(BlendMode mode, Patch source, float opacity, Patch backdrop) {
        int from = source.from();
        int to = source.to();
        if (backdrop.isOpaque() && source.isOpaque() && !source.isDimmed() && mode == BlendMode.NORMAL) {
            for (int channel = 0; channel < Patch.CHANNELS; channel++) {
                opaque(source.plane(channel), opacity, backdrop.plane(channel), from, to);
            }
            return;
        }
        source.fill();
        for (int channel = 0; channel < Patch.CHANNELS; channel++) {
            float[] light = source.plane(channel);
            float[] under = backdrop.plane(channel);
            if (backdrop.isOpaque()) {
                overOpaque(mode, light, source.alpha, opacity, under, from, to);
            } else {
                over(mode, light, source.alpha, opacity, under, backdrop.alpha, from, to);
            }
        }
        if (!backdrop.isOpaque()) {
            alpha(mode, source.alpha, opacity, backdrop.alpha, from, to);
        }
    }

    /**
     * Multiplies an opaque backdrop by the brightness of what a mask shows, as far as it reaches.
     *
     * @param reach of the mask's cues into each cell, 0 to 1
     */
    static void gate(Patch mask, float[] reach, float opacity, Patch backdrop) {
        backdrop.fill();
        int from = mask.from();
        int to = mask.to();
        luminance(mask.red, mask.green, mask.blue, mask.alpha, from, to);
        gates(mask.alpha, reach, opacity, from, to);
        for (int channel = 0; channel < Patch.CHANNELS; channel++) {
            multiply(mask.alpha, backdrop.plane(channel), from, to);
        }
    }

    /** The same where the backdrop is a group, of which less is seen then: its alpha is multiplied too. */
    static void gateGroup(Patch mask, float[] reach, float opacity, Patch backdrop) {
        gate(mask, reach, opacity, backdrop);
        multiply(mask.alpha, backdrop.alpha, mask.from(), mask.to());
    }

    /** The bits of {@code Math.max(0f, value)} for finite light, in three instructions rather than seven (JDK 17). */
    static float aboveZero(float value) {
        return (value + Math.abs(value)) * 0.5f;
    }

    private static void overOpaque(
            BlendMode mode, float[] source, float[] alpha, float opacity, float[] backdrop, int from, int to) {
        switch (mode) {
            case NORMAL -> normal(source, alpha, opacity, backdrop, from, to);
            case SCREEN -> screen(source, opacity, backdrop, from, to);
            case LIGHTEN -> lighten(source, alpha, opacity, backdrop, from, to);
            case DARKEN -> darken(source, alpha, opacity, backdrop, from, to);
            case MULTIPLY -> multiplyOpaque(source, alpha, opacity, backdrop, from, to);
            case PLUS_LIGHTER -> plusLighter(source, opacity, backdrop, from, to);
            default -> general(mode, source, alpha, opacity, backdrop, from, to);
        }
    }

    private static void opaque(float[] source, float opacity, float[] backdrop, int from, int to) {
        float kept = 1f - opacity;
        for (int i = from; i < to; i++) {
            backdrop[i] = backdrop[i] * kept + source[i] * opacity;
        }
    }

    private static void normal(float[] source, float[] alpha, float opacity, float[] backdrop, int from, int to) {
        for (int i = from; i < to; i++) {
            backdrop[i] = backdrop[i] * (1f - alpha[i] * opacity) + source[i] * opacity;
        }
    }

    private static void screen(float[] source, float opacity, float[] backdrop, int from, int to) {
        for (int i = from; i < to; i++) {
            float under = backdrop[i];
            backdrop[i] = under + source[i] * opacity * (1f - under);
        }
    }

    private static void lighten(float[] source, float[] alpha, float opacity, float[] backdrop, int from, int to) {
        for (int i = from; i < to; i++) {
            float under = backdrop[i];
            backdrop[i] = under + opacity * aboveZero(source[i] - alpha[i] * under);
        }
    }

    private static void darken(float[] source, float[] alpha, float opacity, float[] backdrop, int from, int to) {
        for (int i = from; i < to; i++) {
            float under = backdrop[i];
            backdrop[i] = under + opacity * Math.min(0f, source[i] - alpha[i] * under);
        }
    }

    private static void multiplyOpaque(
            float[] source, float[] alpha, float opacity, float[] backdrop, int from, int to) {
        for (int i = from; i < to; i++) {
            backdrop[i] = backdrop[i] * (1f - opacity * (alpha[i] - source[i]));
        }
    }

    private static void plusLighter(float[] source, float opacity, float[] backdrop, int from, int to) {
        for (int i = from; i < to; i++) {
            backdrop[i] = Math.min(1f, backdrop[i] + source[i] * opacity);
        }
    }

    private static void general(
            BlendMode mode, float[] source, float[] alpha, float opacity, float[] backdrop, int from, int to) {
        for (int i = from; i < to; i++) {
            backdrop[i] = mode.over(backdrop[i], 1f, source[i] * opacity, alpha[i] * opacity);
        }
    }

    private static void over(
            BlendMode mode,
            float[] source,
            float[] alpha,
            float opacity,
            float[] backdrop,
            float[] backdropAlpha,
            int from,
            int to) {
        if (mode == BlendMode.NORMAL) {
            normal(source, alpha, opacity, backdrop, from, to);
            return;
        }
        for (int i = from; i < to; i++) {
            backdrop[i] = mode.over(backdrop[i], backdropAlpha[i], source[i] * opacity, alpha[i] * opacity);
        }
    }

    private static void alpha(BlendMode mode, float[] alpha, float opacity, float[] backdropAlpha, int from, int to) {
        if (mode == BlendMode.NORMAL) {
            normal(alpha, alpha, opacity, backdropAlpha, from, to);
            return;
        }
        for (int i = from; i < to; i++) {
            backdropAlpha[i] = mode.alphaOver(backdropAlpha[i], alpha[i] * opacity);
        }
    }

    /** Relative luminance as in W3C WCAG 2.2. */
    private static void luminance(float[] red, float[] green, float[] blue, float[] result, int from, int to) {
        for (int i = from; i < to; i++) {
            result[i] = 0.2126f * red[i] + 0.7152f * green[i] + 0.0722f * blue[i];
        }
    }

    /** By how much the backdrop is multiplied: 1 where a mask does not reach, the luminance where it fully does. */
    private static void gates(float[] luminance, float[] reach, float opacity, int from, int to) {
        for (int i = from; i < to; i++) {
            luminance[i] = 1f - opacity * (reach[i] - luminance[i]);
        }
    }

    private static void multiply(float[] factor, float[] backdrop, int from, int to) {
        for (int i = from; i < to; i++) {
            backdrop[i] = backdrop[i] * Math.min(1f, factor[i]);
        }
    }
}

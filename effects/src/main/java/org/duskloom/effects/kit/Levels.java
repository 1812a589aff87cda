package org.duskloom.effects.kit;

import org.duskloom.engine.effect.Patch;

/** Dims what is painted, pixel by pixel. */
public final class Levels {
    private Levels() {}

    /**
     * Multiplies the four channels of a patch by a level each pixel.
     *
     * @param level in [0, 1]; not one of the patch's channels
     */
    public static void apply(float[] level, Patch patch) {
        int from = patch.from();
        int to = patch.to();
        multiply(patch.red, level, from, to);
        multiply(patch.green, level, from, to);
        multiply(patch.blue, level, from, to);
        if (patch.isOpaque()) {
            System.arraycopy(level, from, patch.alpha, from, to - from);
            patch.reset(from, to);
        } else {
            multiply(patch.alpha, level, from, to);
        }
    }

    /** Multiplies one plane by another. */
    public static void multiply(float[] plane, float[] by, int from, int to) {
        for (int i = from; i < to; i++) {
            plane[i] *= by[i];
        }
    }

    /** The product of a plane and a number: {@code target = source * factor}. */
    public static void scale(float[] source, float factor, int from, int to, float[] target) {
        for (int i = from; i < to; i++) {
            target[i] = source[i] * factor;
        }
    }
}

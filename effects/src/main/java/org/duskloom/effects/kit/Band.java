package org.duskloom.effects.kit;

/**
 * The band of a periodic pattern: 1 for <i>u</i> in [0, width), 0 from there on, with a smoothstep of <i>soft ·
 * width</i> at each edge, inside the band. Where both edges meet (soft = 0.5), the middle is still fully lit.
 */
public final class Band {
    private static final float STEEP = 3e38f;
    private static final float STEEPEST = 1e30f;

    private Band() {}

    /**
     * The level of each pixel.
     *
     * @param u in [0, 1)
     * @param width share of the period that is lit, in [0, 1]
     * @param soft share of the band that each edge takes, in [0, 0.5]
     * @param level in [0, 1] afterwards; may be {@code u}
     */
    public static void levels(float[] u, float width, float soft, int from, int to, float[] level) {
        float edge = soft * width;
        if (edge > 1 / STEEPEST) {
            softLevels(u, width, 1 / edge, from, to, level);
        } else {
            hardLevels(u, width, from, to, level);
        }
    }

    /**
     * Where each pixel lies across the band: {@code u / width}, and 1 beyond the band.
     *
     * @param position in [0, 1] afterwards; may be {@code u}
     */
    public static void positions(float[] u, float width, int from, int to, float[] position) {
        float perWidth = width > 0 ? Math.min(STEEPEST, 1 / width) : 0;
        for (int i = from; i < to; i++) {
            position[i] = Math.min(1f, u[i] * perWidth);
        }
    }

    private static void hardLevels(float[] u, float width, int from, int to, float[] level) {
        for (int i = from; i < to; i++) {
            level[i] = Math.min(1f, Math.max(0f, (width - u[i]) * STEEP));
        }
    }

    private static void softLevels(float[] u, float width, float perEdge, int from, int to, float[] level) {
        for (int i = from; i < to; i++) {
            float inward = Math.min(u[i], width - u[i]) * perEdge;
            float rise = Math.min(1f, Levels.aboveZero(inward));
            level[i] = rise * rise * (3f - 2f * rise);
        }
    }
}

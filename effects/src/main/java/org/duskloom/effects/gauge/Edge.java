package org.duskloom.effects.gauge;

import org.duskloom.effects.kit.Dial;
import org.duskloom.engine.effect.CueTime;

/**
 * How much light there is at a place. Immutable.
 *
 * @param amount how high the light is
 * @param soft how wide its edge is
 * @param low how much light is left above
 */
record Edge(Dial amount, Dial soft, Dial low) {
    /** So steep an edge is hard: no two pixels are on it. */
    private static final float HARD = 1e7f;

    /** The place at which the light ends. */
    float end(CueTime time) {
        double width = soft.at(time);
        double height = amount.at(time);
        return width == 0 && height == 1 ? 2 : (float) (height * (1 + width));
    }

    /** How much the light rises per share of the way down from the end. */
    float steepness(CueTime time) {
        double width = soft.at(time);
        return width * HARD > 1 ? (float) (1 / width) : HARD;
    }

    /**
     * Fills a plane with levels.
     *
     * @param places in [0, 1]
     * @param levels receives them, in [0, 1]; not the places
     */
    static void fill(float[] places, float end, float steepness, float low, int from, int to, float[] levels) {
        float rest = 1 - low;
        for (int i = from; i < to; i++) {
            float x = Math.min(1, Math.max(0, (end - places[i]) * steepness));
            levels[i] = low + rest * (x * x * (3 - 2 * x));
        }
    }
}

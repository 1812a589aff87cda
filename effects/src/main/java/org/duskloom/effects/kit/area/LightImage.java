package org.duskloom.effects.kit.area;

import java.util.Objects;

/**
 * A picture as premultiplied linear light. Immutable; the array is shared and must not be written to.
 *
 * @param width in pixels, at least 1
 * @param height in pixels, at least 1
 * @param light red, green, blue and alpha of each pixel, row by row from the top, each in [0, 1] and no colour above
 *     alpha
 */
public record LightImage(int width, int height, float[] light) {
    /** Floats of a pixel. */
    public static final int CHANNELS = 4;

    /** An alpha so near to 1 differs from it by rounding only. */
    private static final double OPAQUE = 1 - 1e-6;

    /**
     * @throws IllegalArgumentException if the array does not fit the size
     */
    public LightImage {
        Objects.requireNonNull(light, "light");
        if (width < 1 || height < 1 || light.length != (long) width * height * CHANNELS) {
            throw new IllegalArgumentException(width + " by " + height + " pixels in " + light.length + " floats");
        }
    }

    /** Whether light can nowhere shine through. */
    boolean isOpaque() {
        for (int i = CHANNELS - 1; i < light.length; i += CHANNELS) {
            if (light[i] != 1) {
                return false;
            }
        }
        return true;
    }

    /** An alpha without what rounding took from 1. */
    static float alpha(double mean) {
        return mean > OPAQUE ? 1 : (float) mean;
    }
}

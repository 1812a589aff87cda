package org.duskloom.engine.color;

import org.duskloom.engine.digest.FingerprintWriter;
import org.duskloom.engine.digest.Fingerprinted;

/**
 * A colour in linear light with the sRGB primaries, not multiplied by its alpha. Every part is in [0, 1].
 *
 * @param red light of the red primary
 * @param green light of the green primary
 * @param blue light of the blue primary
 * @param alpha how far it covers what lies below: 0 not at all, 1 fully
 */
public record LinearColor(float red, float green, float blue, float alpha) implements Fingerprinted {
    /** No light, opaque. */
    public static final LinearColor BLACK = new LinearColor(0, 0, 0, 1);

    /** Full light of all three primaries, opaque. */
    public static final LinearColor WHITE = new LinearColor(1, 1, 1, 1);

    /** Nothing at all; the CSS word {@code transparent}. */
    public static final LinearColor TRANSPARENT = new LinearColor(0, 0, 0, 0);

    /**
     * @throws IllegalArgumentException if a part is outside [0, 1] or is NaN
     */
    public LinearColor {
        if (!(isShare(red) && isShare(green) && isShare(blue) && isShare(alpha))) {
            throw new IllegalArgumentException(
                    "colour parts must be in [0, 1]: " + red + ", " + green + ", " + blue + ", " + alpha);
        }
    }

    /** A colour whose parts are first clipped to [0, 1]; NaN becomes 0. */
    public static LinearColor clipped(double red, double green, double blue, double alpha) {
        return new LinearColor(share(red), share(green), share(blue), share(alpha));
    }

    /**
     * An opaque colour from sRGB codes.
     *
     * @throws IndexOutOfBoundsException if a code is outside 0 to 255
     */
    public static LinearColor ofCodes(int red, int green, int blue) {
        return new LinearColor(Srgb.decode(red), Srgb.decode(green), Srgb.decode(blue), 1);
    }

    /**
     * The same light with another alpha.
     *
     * @throws IllegalArgumentException if it is outside [0, 1] or is NaN
     */
    public LinearColor withAlpha(float newAlpha) {
        return new LinearColor(red, green, blue, newAlpha);
    }

    @Override
    public void addTo(FingerprintWriter parts) {
        parts.number(red).number(green).number(blue).number(alpha);
    }

    private static boolean isShare(float value) {
        return value >= 0 && value <= 1;
    }

    /** A part clipped to [0, 1]; NaN becomes 0. */
    static float share(double value) {
        return value > 0 ? (float) Math.min(value, 1) : 0;
    }
}

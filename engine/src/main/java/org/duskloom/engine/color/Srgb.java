package org.duskloom.engine.color;

/**
 * The sRGB transfer function between encoded values and linear light, both in [0, 1] (IEC 61966-2-1:1999 with Amendment
 * 1:2003, as restated in W3C CSS Color Module Level 4, sample code {@code lin_sRGB} and {@code gam_sRGB}). Negative
 * values are mirrored, as there.
 */
public final class Srgb {
    private static final float[] LINEAR_OF_CODE = linearOfCode();

    private Srgb() {}

    /** Linear light of an encoded value. */
    public static double decode(double encoded) {
        double size = Math.abs(encoded);
        double linear = size <= 0.04045 ? size / 12.92 : StrictMath.pow((size + 0.055) / 1.055, 2.4);
        return encoded < 0 ? -linear : linear;
    }

    /**
     * Linear light of an 8-bit code, from a table.
     *
     * @throws IndexOutOfBoundsException if the code is outside 0 to 255
     */
    public static float decode(int code) {
        return LINEAR_OF_CODE[code];
    }

    /** The encoded value of linear light. The fast way to 8-bit codes is {@link SrgbEncoder}. */
    public static double encode(double linear) {
        double size = Math.abs(linear);
        double encoded = size <= 0.0031308 ? 12.92 * size : 1.055 * StrictMath.pow(size, 1 / 2.4) - 0.055;
        return linear < 0 ? -encoded : encoded;
    }

    private static float[] linearOfCode() {
        float[] table = new float[256];
        for (int code = 0; code < table.length; code++) {
            table[code] = (float) decode(code / 255.0);
        }
        return table;
    }
}

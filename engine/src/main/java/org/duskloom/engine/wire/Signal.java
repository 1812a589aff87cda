package org.duskloom.engine.wire;

import java.util.Objects;

/**
 * How the light of a pixel becomes bytes.
 *
 * @param colors the order of the colours
 * @param bits 8, or 16 with the most significant byte first
 * @param brightness factors in linear light, applied before the curve; to red, green and blue after the white light has
 *     taken its share, so that they set right what those three mix to and leave the white light alone
 * @param curve what is sent for the light
 * @param dither whether levels between two bytes are shown by turns of the two; counts at 8 bits only, and not for
 *     {@link Curve.Codes}
 */
public record Signal(ColorOrder colors, int bits, Brightness brightness, Curve curve, boolean dither) {
    /** Red, green, blue in 8 bits, as the timeline's author saw it. */
    public static final Signal USUAL = new Signal(ColorOrder.RGB, 8, Brightness.FULL, new Curve.Linear(), true);

    /**
     * @throws IllegalArgumentException if the bits are neither 8 nor 16
     */
    public Signal {
        Objects.requireNonNull(colors, "colors");
        Objects.requireNonNull(brightness, "brightness");
        Objects.requireNonNull(curve, "curve");
        if (bits != 8 && bits != 16) {
            throw new IllegalArgumentException(bits + " bits");
        }
        dither = dither && bits == 8 && curve.meansDuty();
    }

    /** How many bytes a pixel takes: 3 to 8. */
    public int bytesPerPixel() {
        return colors.count() * bits / 8;
    }

    /** How many bits a pixel takes on the data line. */
    public int bitsPerPixel() {
        return colors.count() * bits;
    }
}

package org.duskloom.engine.proof;

import java.util.Arrays;

/** A frame while it is painted: one colour for each pixel. */
final class ProofLight {
    /** So dim that a whole display of it strains no supply, and bright enough to find the pixels. */
    static final int DIM = 0x141414;

    static final int WHITE = 0xFFFFFF;
    static final int GREEN = 0x00A040;
    static final int RED = 0xE01010;
    static final int AMBER = 0xFFA000;
    static final int BLUE = 0x1020C0;

    private final byte[] rgb;

    ProofLight(byte[] rgb) {
        this.rgb = rgb;
    }

    /** Gives a pixel a colour, written 0xRRGGBB. */
    void set(int pixel, int color) {
        rgb[3 * pixel] = (byte) (color >> 16);
        rgb[3 * pixel + 1] = (byte) (color >> 8);
        rgb[3 * pixel + 2] = (byte) color;
    }

    /** Gives all pixels a colour whose three channels are the same. */
    void fill(int grey) {
        Arrays.fill(rgb, (byte) grey);
    }
}

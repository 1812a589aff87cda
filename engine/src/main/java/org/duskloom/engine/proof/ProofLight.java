package org.duskloom.engine.proof;

import java.util.Arrays;
import java.util.BitSet;

/** A frame while it is painted: one colour for each pixel. */
final class ProofLight {
    /** So dim that a whole display of it strains no supply, and bright enough to find the pixels. */
    static final int DIM = 0x141414;

    static final int WHITE = 0xFFFFFF;
    static final int GREEN = 0x00A040;
    static final int RED = 0xE01010;
    static final int AMBER = 0xFFA000;
    static final int BLUE = 0x1020C0;

    /** The code of a tenth of the light: IEC 61966-2-1 gives 1.055 * 0.1^(1/2.4) - 0.055 = 0.349. */
    static final int TENTH = 89;

    private final byte[] rgb;
    private final int from;
    private final int to;

    /** A frame that stands in an array, from one byte up to but not including another. */
    ProofLight(byte[] rgb, int from, int to) {
        this.rgb = rgb;
        this.from = from;
        this.to = to;
    }

    /** Gives a pixel a colour, written 0xRRGGBB. */
    void set(int pixel, int color) {
        int at = from + 3 * pixel;
        rgb[at] = (byte) (color >> 16);
        rgb[at + 1] = (byte) (color >> 8);
        rgb[at + 2] = (byte) color;
    }

    /** Makes all pixels dark but some. */
    void keep(BitSet pixels) {
        for (int pixel = 0; from + 3 * pixel < to; pixel++) {
            if (!pixels.get(pixel)) {
                set(pixel, 0);
            }
        }
    }

    /** Whether any pixel is lit. */
    boolean isLit() {
        for (int at = from; at < to; at++) {
            if (rgb[at] != 0) {
                return true;
            }
        }
        return false;
    }

    /** Gives all pixels a colour whose three channels are the same. */
    void fill(int grey) {
        Arrays.fill(rgb, from, to, (byte) grey);
    }
}

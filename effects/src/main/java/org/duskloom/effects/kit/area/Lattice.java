package org.duskloom.effects.kit.area;

import org.duskloom.engine.effect.Patch;

/**
 * A picture laid out for looking light up between its pixels: with a frame of one pixel about it, which repeats the pixel at
 * the edge, or where the picture repeats that of the other edge. Immutable.
 */
final class Lattice {
    private static final int CHANNELS = LightImage.CHANNELS;

    private final float[] texels;
    private final int rowFloats;
    private final float width;
    private final float height;

    private Lattice(float[] texels, int width, int height) {
        this.texels = texels;
        this.rowFloats = (width + 2) * CHANNELS;
        this.width = width;
        this.height = height;
    }

    static Lattice of(LightImage image, boolean repeats) {
        int width = image.width();
        int height = image.height();
        float[] texels = new float[(width + 2) * (height + 2) * CHANNELS];
        int at = 0;
        for (int row = -1; row <= height; row++) {
            for (int column = -1; column <= width; column++, at += CHANNELS) {
                int from = within(row, height, repeats) * width + within(column, width, repeats);
                System.arraycopy(image.light(), from * CHANNELS, texels, at, CHANNELS);
            }
        }
        return new Lattice(texels, width, height);
    }

    private static int within(int place, int length, boolean repeats) {
        return repeats ? Math.floorMod(place, length) : Math.min(length - 1, Math.max(0, place));
    }

    /**
     * Looks up light for some cells of a patch.
     *
     * @param x shares of the width, in [0, 1], cell by cell; none of the patch's channels
     * @param y shares of the height, from the top, likewise
     */
    void paint(float[] x, float[] y, int from, int to, Patch patch) {
        paint(x, y, from, to, patch.red, patch.green, patch.blue, patch.alpha);
    }

    private void paint(
            float[] x, float[] y, int from, int to, float[] red, float[] green, float[] blue, float[] alpha) {
        float[] light = texels;
        for (int i = from; i < to; i++) {
            float column = x[i] * width + 0.5f;
            float row = y[i] * height + 0.5f;
            int left = (int) column;
            int top = (int) row;
            float right = column - left;
            float down = row - top;
            float c = (1f - right) * (1f - down);
            float d = right * (1f - down);
            float e = (1f - right) * down;
            float f = right * down;
            int p = top * rowFloats + left * CHANNELS;
            int q = p + rowFloats;
            red[i] = light[p] * c + light[p + 4] * d + light[q] * e + light[q + 4] * f;
            green[i] = light[p + 1] * c + light[p + 5] * d + light[q + 1] * e + light[q + 5] * f;
            blue[i] = light[p + 2] * c + light[p + 6] * d + light[q + 2] * e + light[q + 6] * f;
            alpha[i] = light[p + 3] * c + light[p + 7] * d + light[q + 3] * e + light[q + 7] * f;
        }
    }
    /** Mixes light that is looked up here into what is there, by a share. */
    void mixIn(float[] x, float[] y, float share, int from, int to, Patch patch) {
        mixIn(x, y, share, from, to, patch.red, patch.green, patch.blue, patch.alpha);
    }

    private void mixIn(
            float[] x,
            float[] y,
            float share,
            int from,
            int to,
            float[] red,
            float[] green,
            float[] blue,
            float[] alpha) {
        float[] light = texels;
        float rest = 1f - share;
        for (int i = from; i < to; i++) {
            float column = x[i] * width + 0.5f;
            float row = y[i] * height + 0.5f;
            int left = (int) column;
            int top = (int) row;
            float right = column - left;
            float down = row - top;
            float below = down * share;
            float above = share - below;
            float c = (1f - right) * above;
            float d = right * above;
            float e = (1f - right) * below;
            float f = right * below;
            int p = top * rowFloats + left * CHANNELS;
            int q = p + rowFloats;
            red[i] = red[i] * rest + light[p] * c + light[p + 4] * d + light[q] * e + light[q + 4] * f;
            green[i] = green[i] * rest + light[p + 1] * c + light[p + 5] * d + light[q + 1] * e + light[q + 5] * f;
            blue[i] = blue[i] * rest + light[p + 2] * c + light[p + 6] * d + light[q + 2] * e + light[q + 6] * f;
            alpha[i] = alpha[i] * rest + light[p + 3] * c + light[p + 7] * d + light[q + 3] * e + light[q + 7] * f;
        }
    }
}

package org.duskloom.effects.morph;

import java.util.Arrays;
import java.util.List;
import org.duskloom.engine.effect.Patch;

/**
 * The light of every pixel of a canvas, premultiplied. Where dots meet, each channel has the greatest of their lights:
 * the same in whatever order they come, and never more than any of them. The four channels of a pixel stand side by
 * side, and pixels in the order of the {@link PixelGrid}s, so that a dot lights what lies together. For one thread.
 */
final class Light {
    static final int CHANNELS = 4;

    private final int[] channels;
    /** Where the pixels of each grid begin in that order. */
    private final int[] gridStarts;
    /** Where each pixel of the canvas stands in it; those of no grid share a dark place at the end. */
    private final int[] placeOf;

    private int gridStart;

    /** Darkness over a canvas of so many pixels, of which the grids hold some, none in two of them. */
    Light(int pixelCount, List<PixelGrid> grids) {
        gridStarts = new int[grids.size()];
        placeOf = new int[pixelCount];
        int count = grids.stream().mapToInt(PixelGrid::size).sum();
        Arrays.fill(placeOf, count);
        channels = new int[CHANNELS * (count + 1)];
        int next = 0;
        for (int grid = 0; grid < gridStarts.length; grid++) {
            gridStarts[grid] = next;
            for (int place = 0; place < grids.get(grid).size(); place++) {
                placeOf[grids.get(grid).pixel(place)] = next++;
            }
        }
    }

    void clear() {
        Arrays.fill(channels, 0);
    }

    /** Turns to the pixels of a grid. */
    void turnTo(int grid) {
        gridStart = gridStarts[grid];
    }

    /**
     * Lights the pixels found, each by the level (1 − distance / reach)², both squared; nothing is left to be found.
     *
     * @param frame has the colours of the dots
     * @param square of how far dots reach
     */
    void add(Found found, DotFrame frame, double square) {
        int count = found.count;
        double[] shares = found.squares;
        for (int i = 0; i < count; i++) {
            shares[i] = 1 - shares[i] / square;
        }
        add(found, count, frame.colors, frame.firstColor);
        found.count = 0;
    }

    private void add(Found found, int count, float[] colors, int colorsFrom) {
        double[] shares = found.squares;
        int[] words = found.words;
        int[] light = channels;
        int first = CHANNELS * (gridStart + found.firstPlace);
        int firstColor = colorsFrom + CHANNELS * found.firstDot;
        for (int i = 0; i < count; i++) {
            float away = (float) shares[i];
            float level = away * away;
            int at = first + CHANNELS * Found.placeAbove(words[i]);
            int color = firstColor + CHANNELS * Found.dotAbove(words[i]);
            light[at] = greater(light[at], level * colors[color]);
            light[at + 1] = greater(light[at + 1], level * colors[color + 1]);
            light[at + 2] = greater(light[at + 2], level * colors[color + 2]);
            light[at + 3] = greater(light[at + 3], level * colors[color + 3]);
        }
    }

    /** The greater of the bits of a float and another: of floats that are not below 0 they rise with them. */
    private static int greater(int bits, float other) {
        return Math.max(bits, Float.floatToRawIntBits(other));
    }

    void paint(int firstPixel, Patch patch) {
        int ahead = firstPixel - patch.from();
        for (int i = patch.from(); i < patch.to(); i++) {
            int at = CHANNELS * placeOf[ahead + i];
            patch.red[i] = Float.intBitsToFloat(channels[at]);
            patch.green[i] = Float.intBitsToFloat(channels[at + 1]);
            patch.blue[i] = Float.intBitsToFloat(channels[at + 2]);
            patch.alpha[i] = Float.intBitsToFloat(channels[at + 3]);
        }
    }
}

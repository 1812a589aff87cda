package org.duskloom.effects.morph;

import java.util.Arrays;
import java.util.List;
import org.duskloom.engine.effect.Patch;

/**
 * The light of every pixel of a canvas, premultiplied. Where dots meet, each channel has the greatest of their lights:
 * the same in whatever order they come, and never more than any of them. Pixels stand in the order of the {@link
 * PixelGrid}s, so that a dot lights what lies together. For one thread.
 */
abstract sealed class Light permits ColorLight, LevelLight {
    static final int CHANNELS = 4;

    /** How many pixels the grids hold. */
    final int count;
    /** Where each pixel of the canvas stands in their order; those of no grid share a dark place at the end. */
    final int[] placeOf;
    /** Where the pixels of each grid begin in that order. */
    private final int[] gridStarts;
    /** Where those of the grid turned to do. */
    int gridStart;

    /** Over a canvas of so many pixels, of which the grids hold some, none in two of them. */
    Light(int pixelCount, List<PixelGrid> grids) {
        gridStarts = new int[grids.size()];
        placeOf = new int[pixelCount];
        count = grids.stream().mapToInt(PixelGrid::size).sum();
        Arrays.fill(placeOf, count);
        int next = 0;
        for (int grid = 0; grid < gridStarts.length; grid++) {
            gridStarts[grid] = next;
            for (int place = 0; place < grids.get(grid).size(); place++) {
                placeOf[grids.get(grid).pixel(place)] = next++;
            }
        }
    }

    /** Darkness over a canvas, for dots of so many colours. */
    static Light of(int pixelCount, List<PixelGrid> grids, int colors) {
        return colors == 1 ? new LevelLight(pixelCount, grids) : new ColorLight(pixelCount, grids);
    }

    /**
     * Begins a frame, in darkness.
     *
     * @param colors red, green, blue and alpha of every way
     */
    abstract void begin(float[] colors);

    /** Turns to the pixels of a grid. */
    final void turnTo(int grid) {
        gridStart = gridStarts[grid];
    }

    /**
     * Lights the pixels found, each by the level (1 − distance / reach)², both squared; nothing is left to be found.
     *
     * @param frame has the colours of the dots, if this asks for them
     * @param square of how far dots reach
     */
    final void add(Found found, DotFrame frame, double square) {
        int lit = found.count;
        double[] shares = found.squares;
        for (int i = 0; i < lit; i++) {
            shares[i] = 1 - shares[i] / square;
        }
        light(found, frame);
        found.count = 0;
    }

    /** Whether it asks for the colours of the dots. */
    abstract boolean asksForColors();

    /** Lights the pixels found, of which the share of reach is known that is left. */
    abstract void light(Found found, DotFrame frame);

    abstract void paint(int firstPixel, Patch patch);

    /** The greater of the bits of a float and another: of floats that are not below 0 they rise with them. */
    static int greater(int bits, float other) {
        return Math.max(bits, Float.floatToRawIntBits(other));
    }
}

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
    private static final int CHANNELS = 4;

    private final float[] channels;
    /** Where the pixels of each grid begin in that order. */
    private final int[] gridStarts;
    /** Where each pixel of the canvas stands in it; those of no grid share a dark place at the end. */
    private final int[] placeOf;

    private int gridStart;
    private float takenRed;
    private float takenGreen;
    private float takenBlue;
    private float takenAlpha;

    /** Darkness over a canvas of so many pixels, of which the grids hold some, none in two of them. */
    Light(int pixelCount, List<PixelGrid> grids) {
        gridStarts = new int[grids.size()];
        placeOf = new int[pixelCount];
        int count = grids.stream().mapToInt(PixelGrid::size).sum();
        Arrays.fill(placeOf, count);
        channels = new float[CHANNELS * (count + 1)];
        int next = 0;
        for (int grid = 0; grid < gridStarts.length; grid++) {
            gridStarts[grid] = next;
            for (int place = 0; place < grids.get(grid).size(); place++) {
                placeOf[grids.get(grid).pixel(place)] = next++;
            }
        }
    }

    void clear() {
        Arrays.fill(channels, 0f);
    }

    /** Turns to the pixels of a grid. */
    void turnTo(int grid) {
        gridStart = gridStarts[grid];
    }

    /** Takes up a colour, premultiplied. */
    void take(float ofRed, float ofGreen, float ofBlue, float ofAlpha) {
        takenRed = ofRed;
        takenGreen = ofGreen;
        takenBlue = ofBlue;
        takenAlpha = ofAlpha;
    }

    /** Lights a pixel, given by its place in the grid, with the colour taken up, at a level in [0, 1]. */
    void add(int place, float level) {
        int at = CHANNELS * (gridStart + place);
        channels[at] = greater(channels[at], level * takenRed);
        channels[at + 1] = greater(channels[at + 1], level * takenGreen);
        channels[at + 2] = greater(channels[at + 2], level * takenBlue);
        channels[at + 3] = greater(channels[at + 3], level * takenAlpha);
    }

    /** The greater of two floats that are not below 0, whose bits rise with them: without a branch, unlike Math.max. */
    private static float greater(float a, float b) {
        return Float.intBitsToFloat(Math.max(Float.floatToRawIntBits(a), Float.floatToRawIntBits(b)));
    }

    void paint(int firstPixel, Patch patch) {
        int ahead = firstPixel - patch.from();
        for (int i = patch.from(); i < patch.to(); i++) {
            int at = CHANNELS * placeOf[ahead + i];
            patch.red[i] = channels[at];
            patch.green[i] = channels[at + 1];
            patch.blue[i] = channels[at + 2];
            patch.alpha[i] = channels[at + 3];
        }
    }
}

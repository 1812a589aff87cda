package org.duskloom.effects.morph;

import java.util.Arrays;
import java.util.List;
import org.duskloom.engine.effect.Patch;

/** Light of dots of several colours: the four channels of a pixel side by side. */
final class ColorLight extends Light {
    private final int[] channels;

    ColorLight(int pixelCount, List<PixelGrid> grids) {
        super(pixelCount, grids);
        channels = new int[CHANNELS * (count + 1)];
    }

    @Override
    void begin(float[] colors) {
        Arrays.fill(channels, 0);
    }

    @Override
    boolean asksForColors() {
        return true;
    }

    @Override
    void light(Found found, DotFrame frame) {
        add(found, found.count, frame.colors, frame.firstColor);
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

    @Override
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

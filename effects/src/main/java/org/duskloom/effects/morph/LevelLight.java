package org.duskloom.effects.morph;

import java.util.Arrays;
import java.util.List;
import org.duskloom.effects.kit.Levels;
import org.duskloom.engine.effect.Patch;

/**
 * Light of dots of one colour: a level for each pixel. As products of floats never fall when a factor rises, the colour
 * times the greatest level has the very bits of the greatest product.
 */
final class LevelLight extends Light {
    private final int[] levels;
    private final float[] color = new float[CHANNELS];

    LevelLight(int pixelCount, List<PixelGrid> grids) {
        super(pixelCount, grids);
        levels = new int[count + 1];
    }

    @Override
    void begin(float[] colors) {
        Arrays.fill(levels, 0);
        System.arraycopy(colors, 0, color, 0, CHANNELS);
    }

    @Override
    boolean asksForColors() {
        return false;
    }

    @Override
    void light(Found found, DotFrame frame) {
        double[] shares = found.squares;
        int[] words = found.words;
        int first = gridStart + found.firstPlace;
        int lit = found.count;
        for (int i = 0; i < lit; i++) {
            float away = (float) shares[i];
            int at = first + Found.placeAbove(words[i]);
            levels[at] = greater(levels[at], away * away);
        }
    }

    @Override
    void paint(int firstPixel, Patch patch) {
        int ahead = firstPixel - patch.from();
        float[] level = patch.first;
        for (int i = patch.from(); i < patch.to(); i++) {
            level[i] = Float.intBitsToFloat(levels[placeOf[ahead + i]]);
        }
        for (int channel = 0; channel < Patch.CHANNELS; channel++) {
            Levels.scale(level, color[channel], patch.from(), patch.to(), patch.plane(channel));
        }
        Levels.scale(level, color[Patch.CHANNELS], patch.from(), patch.to(), patch.alpha);
    }
}

package org.duskloom.effects.kit;

import java.util.Arrays;
import org.duskloom.engine.color.LinearColor;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.effect.Patch;

/** A palette of one colour. */
final class SingleRamp extends Ramp {
    private final LinearColor color;
    private final float red;
    private final float green;
    private final float blue;
    private final float alpha;

    SingleRamp(LinearColor color) {
        this.color = color;
        red = color.red() * color.alpha();
        green = color.green() * color.alpha();
        blue = color.blue() * color.alpha();
        alpha = color.alpha();
    }

    /** Makes a patch flat, as bright as a level says. */
    void paintFlat(float[] level, Patch patch) {
        Levels.scale(level, alpha, patch.from(), patch.to(), patch.alpha);
        patch.makeFlat(color.red(), color.green(), color.blue());
    }

    static boolean shows(Palette palette) {
        LinearColor color = palette.at(0);
        return palette.stops().stream().allMatch(stop -> stop.color().equals(color));
    }

    @Override
    public boolean isOpaque() {
        return alpha == 1;
    }

    @Override
    void fillLight(float[] places, int from, int to, float[] reds, float[] greens, float[] blues, float[] alphas) {
        Arrays.fill(reds, from, to, red);
        Arrays.fill(greens, from, to, green);
        Arrays.fill(blues, from, to, blue);
        Arrays.fill(alphas, from, to, alpha);
    }
}

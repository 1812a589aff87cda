package org.duskloom.effects.kit;

import java.util.Arrays;
import org.duskloom.engine.effect.Patch;

/** A palette of one colour at a time. */
abstract sealed class FlatRamp extends Ramp permits SingleRamp, MovingSingleRamp {
    /** Red, in [0, 1], not multiplied by alpha. */
    abstract float red();

    /** Green, likewise. */
    abstract float green();

    /** Blue, likewise. */
    abstract float blue();

    /** Alpha. */
    abstract float alpha();

    /** Makes a patch flat, as bright as a level says. */
    final void paintFlat(float[] level, Patch patch) {
        if (level != patch.alpha || alpha() != 1) {
            Levels.scale(level, alpha(), patch.from(), patch.to(), patch.alpha);
        }
        patch.makeFlat(red(), green(), blue());
    }

    /** Makes a patch flat, as bright as the product of two levels says. */
    final void paintFlat(float[] level, float[] by, Patch patch) {
        Levels.scaledProduct(level, by, alpha(), patch.from(), patch.to(), patch.alpha);
        patch.makeFlat(red(), green(), blue());
    }

    @Override
    public final boolean isOpaque() {
        return alpha() == 1;
    }

    @Override
    final void fillLight(
            float[] places, int from, int to, float[] reds, float[] greens, float[] blues, float[] alphas) {
        Arrays.fill(reds, from, to, red() * alpha());
        Arrays.fill(greens, from, to, green() * alpha());
        Arrays.fill(blues, from, to, blue() * alpha());
        Arrays.fill(alphas, from, to, alpha());
    }
}

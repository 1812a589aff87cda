package org.duskloom.effects.wash;

import org.duskloom.effects.kit.Ramp;
import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Patch;

/** Light that does not change, painted by copying. Keeps nothing of a frame, so all threads can share it. */
final class SteadyLight implements Brush {
    private final float[] red;
    private final float[] green;
    private final float[] blue;
    private final float[] alpha;
    private final boolean opaque;

    SteadyLight(Ramp ramp, float[] places) {
        red = new float[places.length];
        green = new float[places.length];
        blue = new float[places.length];
        alpha = new float[places.length];
        opaque = ramp.isOpaque();
        ramp.fill(places, 0, places.length, red, green, blue, alpha);
    }

    @Override
    public void begin(CueTime time) {
        // The light is the same at all times.
    }

    @Override
    public void paint(int firstPixel, Patch patch) {
        patch.load(red, firstPixel, patch.red);
        patch.load(green, firstPixel, patch.green);
        patch.load(blue, firstPixel, patch.blue);
        if (opaque) {
            patch.makeOpaque();
        } else {
            patch.load(alpha, firstPixel, patch.alpha);
        }
    }
}

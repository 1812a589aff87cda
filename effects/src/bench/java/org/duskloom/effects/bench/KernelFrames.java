package org.duskloom.effects.bench;

import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Kernel;
import org.duskloom.engine.effect.Patch;

/** Frames of one kernel by itself: all its patches, filled, without blending and encoding. */
final class KernelFrames {
    private final Patch patch = new Patch();
    private final CueTime time = new CueTime();
    private final Brush brush;
    private final int pixels;

    KernelFrames(Kernel kernel, int pixels) {
        this.brush = kernel.open();
        this.pixels = pixels;
    }

    /** Paints a frame; gives something that depends on it. */
    float paint(double seconds, double lengthSeconds) {
        brush.begin(time.set(seconds, lengthSeconds));
        float sum = 0;
        for (int first = 0; first < pixels; first += Patch.CAPACITY) {
            patch.reset(0, Math.min(Patch.CAPACITY, pixels - first));
            brush.paint(first, patch);
            patch.fill();
            sum += patch.red[0];
        }
        return sum;
    }
}

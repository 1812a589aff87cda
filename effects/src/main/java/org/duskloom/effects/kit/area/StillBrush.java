package org.duskloom.effects.kit.area;

import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Patch;

/** Paints {@link StillLight}. */
final class StillBrush implements Brush {
    private final StillLight light;
    private final ReelClock clock;
    private int image;

    StillBrush(StillLight light, ReelClock clock) {
        this.light = light;
        this.clock = clock;
    }

    @Override
    public void begin(CueTime time) {
        image = clock.imageAt(time);
    }

    @Override
    public void paint(int firstPixel, Patch patch) {
        light.paint(image, firstPixel, patch);
    }
}

package org.duskloom.effects.wash;

import org.duskloom.effects.kit.Projection;
import org.duskloom.effects.kit.Ramp;
import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Patch;

/** A gradient whose direction moves. */
final class GradientBrush implements Brush {
    private final Ramp ramp;
    private final Projection.View projection;

    GradientBrush(Ramp ramp, Projection.View projection) {
        this.ramp = ramp;
        this.projection = projection;
    }

    @Override
    public void begin(CueTime time) {
        projection.begin(time.seconds());
    }

    @Override
    public void paint(int firstPixel, Patch patch) {
        patch.load(projection.shares(), firstPixel, patch.first);
        ramp.paint(patch.first, patch);
    }
}

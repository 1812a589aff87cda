package org.duskloom.effects.wash;

import org.duskloom.effects.kit.Ramp;
import org.duskloom.effects.kit.SharePlane;
import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Patch;

/** A gradient whose direction or colours move. */
final class GradientBrush implements Brush {
    private final Ramp ramp;
    private final SharePlane places;

    GradientBrush(Ramp ramp, SharePlane places) {
        this.ramp = ramp;
        this.places = places;
    }

    @Override
    public void begin(CueTime time) {
        ramp.begin(time.seconds());
        places.begin(time);
    }

    @Override
    public void paint(int firstPixel, Patch patch) {
        patch.load(places.shares(), firstPixel, patch.first);
        ramp.paint(patch.first, patch);
    }
}

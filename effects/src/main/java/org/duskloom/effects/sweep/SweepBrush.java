package org.duskloom.effects.sweep;

import org.duskloom.effects.kit.BandLook;
import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.Fractions;
import org.duskloom.effects.kit.Motion;
import org.duskloom.effects.kit.Projection;
import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Patch;

/** Paints the bands of {@link Sweep}. */
final class SweepBrush implements Brush {
    private final Projection.View projection;
    private final Dial bands;
    private final Motion motion;
    private final BandLook.Painter painter;

    private float bandsNow;
    private float phiNow;

    SweepBrush(Projection.View projection, Dial bands, Motion motion, BandLook.Painter painter) {
        this.projection = projection;
        this.bands = bands;
        this.motion = motion;
        this.painter = painter;
    }

    @Override
    public void begin(CueTime time) {
        projection.begin(time.seconds());
        bandsNow = bands.floatAt(time.seconds());
        phiNow = (float) motion.phiFraction(time);
        painter.begin(time.seconds());
    }

    @Override
    public void paint(int firstPixel, Patch patch) {
        patch.load(projection.shares(), firstPixel, patch.first);
        Fractions.ofLine(patch.first, bandsNow, -phiNow, patch.from(), patch.to(), patch.first);
        painter.paintAcross(patch);
    }
}

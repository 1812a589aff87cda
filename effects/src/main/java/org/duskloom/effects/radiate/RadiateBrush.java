package org.duskloom.effects.radiate;

import org.duskloom.effects.kit.BandLook;
import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.Fractions;
import org.duskloom.effects.kit.Motion;
import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Patch;

/** Paints the rings of {@link Radiate}. */
final class RadiateBrush implements Brush {
    private final Reaches reaches;
    private final Dial bands;
    private final Motion motion;
    private final BandLook.Painter painter;

    private float bandsNow;
    private float phiNow;

    RadiateBrush(Reaches reaches, Dial bands, Motion motion, BandLook.Painter painter) {
        this.reaches = reaches;
        this.bands = bands;
        this.motion = motion;
        this.painter = painter;
    }

    @Override
    public void begin(CueTime time) {
        if (!reaches.isConstant()) {
            reaches.begin(time.seconds());
        }
        bandsNow = bands.floatAt(time.seconds());
        phiNow = (float) motion.phiFraction(time);
        painter.begin(time.seconds());
    }

    @Override
    public void paint(int firstPixel, Patch patch) {
        patch.load(reaches.shares(), firstPixel, patch.first);
        Fractions.ofLine(patch.first, bandsNow, -phiNow, patch.from(), patch.to(), patch.first);
        painter.paintAcross(patch);
    }
}

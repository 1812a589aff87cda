package org.duskloom.effects.radiate;

import org.duskloom.effects.kit.BandLook;
import org.duskloom.effects.kit.Fractions;
import org.duskloom.effects.kit.Motion;
import org.duskloom.effects.kit.Repeats;
import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Patch;

/** Paints the rings of {@link Radiate}. */
final class RadiateBrush implements Brush {
    private final Repeats bands;
    private final Motion motion;
    private final BandLook.Painter painter;

    /** φ modulo 1. */
    private float moved;

    RadiateBrush(Repeats bands, Motion motion, BandLook.Painter painter) {
        this.bands = bands;
        this.motion = motion;
        this.painter = painter;
    }

    @Override
    public void begin(CueTime time) {
        bands.begin(time.seconds());
        moved = (float) motion.phiFraction(time);
        painter.begin(time.seconds());
    }

    @Override
    public void paint(int firstPixel, Patch patch) {
        patch.load(bands.fractions(), firstPixel, patch.first);
        Fractions.ofSum(patch.first, -moved, patch.from(), patch.to(), patch.first);
        painter.paintAcross(patch);
    }
}

package org.duskloom.effects.kit;

import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Patch;

/** Paints bands that repeat along a plane of shares and move by one with each pass. */
public final class MovingBands implements Brush {
    private final Repeats bands;
    private final Motion motion;
    private final BandLook.Painter painter;

    /** φ modulo 1. */
    private float moved;

    /** Bands of a look, where they repeat and how they move. */
    public MovingBands(Repeats bands, Motion motion, BandLook.Painter painter) {
        this.bands = bands;
        this.motion = motion;
        this.painter = painter;
    }

    @Override
    public void begin(CueTime time) {
        bands.begin(time);
        moved = (float) motion.phiFraction(time);
        painter.begin(time);
    }

    @Override
    public void paint(int firstPixel, Patch patch) {
        patch.load(bands.fractions(), firstPixel, patch.first);
        Fractions.ofSum(patch.first, -moved, patch.from(), patch.to(), patch.first);
        painter.paintAcross(patch);
    }
}

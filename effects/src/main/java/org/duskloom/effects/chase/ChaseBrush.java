package org.duskloom.effects.chase;

import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.Fractions;
import org.duskloom.effects.kit.Motion;
import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Patch;

/** Paints the lights of {@link Chase}. */
final class ChaseBrush implements Brush {
    private final float[] places;
    private final Motion motion;
    private final Dial heads;
    private final Tail tail;

    private float headsNow;
    /** heads · φ modulo 1. */
    private float ahead;

    ChaseBrush(float[] places, Motion motion, Dial heads, Tail tail) {
        this.places = places;
        this.motion = motion;
        this.heads = heads;
        this.tail = tail;
    }

    @Override
    public void begin(CueTime time) {
        headsNow = heads.floatAt(time.seconds());
        ahead = (float) Motion.fraction(headsNow * motion.phiFraction(time));
        tail.begin(time.seconds());
    }

    @Override
    public void paint(int firstPixel, Patch patch) {
        patch.load(places, firstPixel, patch.first);
        Fractions.ofLine(patch.first, -headsNow, ahead, patch.from(), patch.to(), patch.first);
        tail.paint(patch);
    }
}

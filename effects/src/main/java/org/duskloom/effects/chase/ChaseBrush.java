package org.duskloom.effects.chase;

import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.Fractions;
import org.duskloom.effects.kit.Motion;
import org.duskloom.effects.kit.Repeats;
import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Patch;

/** Paints the lights of {@link Chase}. */
final class ChaseBrush implements Brush {
    private final Repeats gaps;
    private final Dial heads;
    private final Motion motion;
    private final Tail tail;

    /** heads · φ modulo 1. */
    private float ahead;

    ChaseBrush(Repeats gaps, Dial heads, Motion motion, Tail tail) {
        this.gaps = gaps;
        this.heads = heads;
        this.motion = motion;
        this.tail = tail;
    }

    @Override
    public void begin(CueTime time) {
        gaps.begin(time);
        ahead = (float) Motion.fraction(heads.at(time) * motion.phiFraction(time));
        tail.begin(time);
    }

    @Override
    public void paint(int firstPixel, Patch patch) {
        patch.load(gaps.fractions(), firstPixel, patch.first);
        Fractions.ofSum(patch.first, ahead, patch.from(), patch.to(), patch.first);
        tail.paint(patch);
    }
}

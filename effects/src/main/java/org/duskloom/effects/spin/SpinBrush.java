package org.duskloom.effects.spin;

import org.duskloom.effects.kit.BandLook;
import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.Fractions;
import org.duskloom.effects.kit.Motion;
import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Patch;

/** Paints the arms of {@link Spin}. */
final class SpinBrush implements Brush {
    private final ArmPattern pattern;
    private final Dial arms;
    private final Motion motion;
    private final BandLook.Painter painter;
    private final boolean outward;

    /** arms · φ modulo 1. */
    private float turned;

    SpinBrush(ArmPattern pattern, Dial arms, Motion motion, BandLook.Painter painter, boolean outward) {
        this.pattern = pattern;
        this.arms = arms;
        this.motion = motion;
        this.painter = painter;
        this.outward = outward;
    }

    @Override
    public void begin(CueTime time) {
        pattern.begin(time);
        turned = (float) Motion.fraction(arms.at(time) * motion.phiFraction(time));
        painter.begin(time);
    }

    @Override
    public void paint(int firstPixel, Patch patch) {
        patch.load(pattern.fractions(), firstPixel, patch.first);
        Fractions.ofSum(patch.first, -turned, patch.from(), patch.to(), patch.first);
        if (outward) {
            patch.load(pattern.radii(), firstPixel, patch.third);
            painter.paintAlong(patch);
        } else {
            painter.paintAcross(patch);
        }
    }
}

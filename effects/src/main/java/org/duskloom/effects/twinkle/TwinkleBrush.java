package org.duskloom.effects.twinkle;

import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.Fractions;
import org.duskloom.effects.kit.Motion;
import org.duskloom.effects.kit.WindowOffsets;
import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Patch;

/** Paints the sparkle of {@link Twinkle}. */
final class TwinkleBrush implements Brush {
    private static final double STEEPEST = 1e30;

    private final Motion motion;
    private final WindowOffsets offsets;
    private final LitWindows windows;
    private final Dial rise;
    private final Dial fall;

    private float passFraction;
    private float risePerPass;
    private float riseStart;
    private float fallPerPass;
    private float fallEnd;

    TwinkleBrush(Motion motion, WindowOffsets offsets, LitWindows windows, Dial rise, Dial fall) {
        this.motion = motion;
        this.offsets = offsets;
        this.windows = windows;
        this.rise = rise;
        this.fall = fall;
    }

    @Override
    public void begin(CueTime time) {
        double phi = motion.phi(time);
        double wholePasses = Math.floor(phi);
        passFraction = (float) (phi - wholePasses);
        windows.begin(offsets.begun((long) wholePasses, passFraction), time);
        risePerPass = slope(rise.at(time));
        riseStart = risePerPass == 0 ? 1 : 0;
        fallPerPass = slope(fall.at(time));
        fallEnd = fallPerPass == 0 ? 1 : fallPerPass;
    }

    /** How fast a level goes over an edge of this share of the pass; 0 where there is no edge. */
    private static float slope(double share) {
        return share > 0 ? (float) Math.min(STEEPEST, 1 / share) : 0;
    }

    @Override
    public void paint(int firstPixel, Patch patch) {
        patch.load(offsets.ofPixels(), firstPixel, patch.first);
        int from = patch.from();
        int to = patch.to();
        Fractions.ofSum(patch.first, passFraction, from, to, patch.first);
        envelope(patch.first, riseStart, risePerPass, fallEnd, fallPerPass, from, to, patch.second);
        windows.paint(firstPixel, patch.second, patch);
    }

    private static void envelope(
            float[] fraction, float start, float rise, float end, float fall, int from, int to, float[] level) {
        for (int i = from; i < to; i++) {
            float up = start + fraction[i] * rise;
            float down = end - fraction[i] * fall;
            level[i] = Math.min(1f, Math.min(up, down));
        }
    }
}

package org.duskloom.effects.festoon;

import org.duskloom.effects.kit.Band;
import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.Fractions;
import org.duskloom.effects.kit.Motion;
import org.duskloom.effects.kit.Ramp;
import org.duskloom.effects.kit.Repeats;
import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Patch;

/** Paints the swags of {@link Festoon}. */
final class FestoonBrush implements Brush {
    private final Hanging hanging;
    private final Repeats bands;
    private final Motion motion;
    private final Dial thickness;
    private final Dial soft;
    private final Ramp ramp;

    /** φ modulo 1. */
    private float moved;

    private float thicknessNow;
    private float softNow;

    FestoonBrush(Hanging hanging, Repeats bands, Motion motion, Dial thickness, Dial soft, Ramp ramp) {
        this.hanging = hanging;
        this.bands = bands;
        this.motion = motion;
        this.thickness = thickness;
        this.soft = soft;
        this.ramp = ramp;
    }

    @Override
    public void begin(CueTime time) {
        bands.begin(time);
        moved = (float) motion.phiFraction(time);
        ramp.begin(time.seconds());
        thicknessNow = thickness.floatAt(time);
        softNow = soft.floatAt(time);
    }

    @Override
    public void paint(int firstPixel, Patch patch) {
        int from = patch.from();
        int to = patch.to();
        patch.load(bands.fractions(), firstPixel, patch.first);
        Fractions.ofSum(patch.first, -moved, from, to, patch.first);
        ramp.paint(patch.first, patch);
        patch.load(hanging.distances(), firstPixel, patch.second);
        fromTheEdge(patch.second, thicknessNow / 2, from, to, patch.third);
        Band.levels(patch.third, thicknessNow, softNow, from, to, patch.second);
        patch.dimBy(patch.second);
    }

    /** How far each pixel lies from the far edge of the light. */
    private static void fromTheEdge(float[] distance, float half, int from, int to, float[] depth) {
        for (int i = from; i < to; i++) {
            depth[i] = distance[i] + half;
        }
    }
}

package org.duskloom.effects.drift;

import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.Motion;
import org.duskloom.effects.kit.Ramp;
import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Patch;

/** Paints the noise of {@link Drift}. */
final class DriftBrush implements Brush {
    private final Motion motion;
    private final Octaves.View octaves;
    private final Dial contrast;
    private final Ramp ramp;

    private float contrastNow;

    DriftBrush(Motion motion, Octaves.View octaves, Dial contrast, Ramp ramp) {
        this.motion = motion;
        this.octaves = octaves;
        this.contrast = contrast;
        this.ramp = ramp;
    }

    @Override
    public void begin(CueTime time) {
        octaves.begin(motion.phi(time), time);
        ramp.begin(time.seconds());
        contrastNow = contrast.floatAt(time);
    }

    @Override
    public void paint(int firstPixel, Patch patch) {
        octaves.fill(firstPixel, patch);
        places(contrastNow, patch.from(), patch.to(), patch.third);
        ramp.paint(patch.third, patch);
    }

    private static void places(float contrast, int from, int to, float[] noise) {
        for (int i = from; i < to; i++) {
            noise[i] = Math.min(1f, Math.max(0f, 0.5f + contrast * noise[i]));
        }
    }
}

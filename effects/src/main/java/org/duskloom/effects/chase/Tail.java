package org.duskloom.effects.chase;

import org.duskloom.effects.kit.Band;
import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.Ramp;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Patch;

/** Paints what follows a head. For one thread. */
final class Tail {
    private final Ramp ramp;
    private final Dial length;
    private final Dial fade;

    private float lengthNow;
    private float fadeNow;

    Tail(Ramp ramp, Dial length, Dial fade) {
        this.ramp = ramp;
        this.length = length;
        this.fade = fade;
    }

    void begin(CueTime time) {
        ramp.begin(time.seconds());
        lengthNow = length.floatAt(time);
        fadeNow = fade.floatAt(time);
    }

    /**
     * Paints.
     *
     * @param patch its plane {@code first} holds how far each pixel lies behind its head, in gaps, in [0, 1)
     */
    void paint(Patch patch) {
        int from = patch.from();
        int to = patch.to();
        Band.positions(patch.first, lengthNow, from, to, patch.third);
        ramp.paint(patch.third, patch);
        Band.levels(patch.first, lengthNow, 0, from, to, patch.second);
        fade(patch.third, fadeNow, from, to, patch.second);
        patch.dimBy(patch.second);
    }

    private static void fade(float[] position, float fade, int from, int to, float[] level) {
        for (int i = from; i < to; i++) {
            level[i] *= 1f - fade * position[i];
        }
    }
}

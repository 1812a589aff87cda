package org.duskloom.effects.pile;

import org.duskloom.effects.kit.Fractions;
import org.duskloom.effects.kit.Ramp;
import org.duskloom.engine.effect.Patch;

/** One colour for each light, from the first to the last. For one thread. */
final class LightColors implements PileColors {
    private final Ramp ramp;
    private final float[] place = new float[1];
    private final float[] red = new float[1];
    private final float[] green = new float[1];
    private final float[] blue = new float[1];
    private final float[] alpha = new float[1];
    private float lightsNow;
    private float perLight;

    LightColors(Ramp ramp) {
        this.ramp = ramp;
    }

    @Override
    public void begin(int lights, int running) {
        lightsNow = lights;
        perLight = lights > 1 ? 1f / (lights - 1) : 0;
        place[0] = Math.min(1f, Math.max(0, running) * perLight);
        ramp.fill(place, 0, 1, red, green, blue, alpha);
    }

    @Override
    public void paint(float[] running, Patch patch) {
        int from = patch.from();
        int to = patch.to();
        Fractions.ofLine(patch.first, lightsNow, 0, from, to, patch.second);
        number(patch.second, lightsNow, perLight, from, to, patch.first);
        ramp.paint(patch.first, patch);
        patch.dimBy(patch.third);
        patch.fill();
        add(running, patch.third, red[0], from, to, patch.red);
        add(running, patch.third, green[0], from, to, patch.green);
        add(running, patch.third, blue[0], from, to, patch.blue);
        add(running, patch.third, alpha[0], from, to, patch.alpha);
    }

    /** The place in the palette of the light that rests where each pixel is. */
    private static void number(float[] fraction, float lights, float perLight, int from, int to, float[] place) {
        for (int i = from; i < to; i++) {
            float number = place[i] * lights - fraction[i];
            place[i] = Math.min(1f, Math.max(0f, number * perLight));
        }
    }

    /** Adds the running light, as far as the resting ones leave room. */
    private static void add(float[] running, float[] resting, float light, int from, int to, float[] plane) {
        for (int i = from; i < to; i++) {
            plane[i] += light * Math.min(running[i], 1f - resting[i]);
        }
    }
}

package org.duskloom.effects.pile;

import org.duskloom.effects.kit.Ramp;
import org.duskloom.engine.effect.Patch;

/** Colours along the order, whichever light shows them. */
record OrderColors(PileSteps steps, Ramp ramp) implements PileColors {
    @Override
    public void begin(int lights, int running, int firstResting, int arrived) {
        // The colours stay where they are.
    }

    @Override
    public void paint(int firstPixel, float[] running, Patch patch) {
        patch.load(steps.place(), firstPixel, patch.first);
        ramp.paint(patch.first, patch);
        add(running, patch.from(), patch.to(), patch.third);
        patch.dimBy(patch.third);
    }

    private static void add(float[] running, int from, int to, float[] level) {
        for (int i = from; i < to; i++) {
            level[i] = Math.min(1f, level[i] + running[i]);
        }
    }
}

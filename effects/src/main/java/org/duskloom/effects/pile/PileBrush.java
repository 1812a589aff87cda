package org.duskloom.effects.pile;

import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.Ramp;
import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Patch;

/** Paints the lights of {@link Pile}. */
final class PileBrush implements Brush {
    private final PileSteps steps;
    private final Passing passing;
    private final PileRule rule;
    private final Dial lights;
    private final Ramp ramp;
    private final PileColors colors;
    private final float[] running = new float[Patch.CAPACITY];

    private boolean mirrored;
    /** Where the resting lights end. */
    private float top;

    private float runsFrom;
    private float runsTo;

    PileBrush(PileSteps steps, Passing passing, PileRule rule, Dial lights, Ramp ramp, PileColors colors) {
        this.steps = steps;
        this.passing = passing;
        this.rule = rule;
        this.lights = lights;
        this.ramp = ramp;
        this.colors = colors;
    }

    @Override
    public void begin(CueTime time) {
        ramp.begin(time.seconds());
        int count = (int) lights.at(time);
        double filled = passing.filled(time);
        int arrived = rule.arrived(filled, count);
        double rest = (double) arrived / count;
        double low = arrived < count ? rule.lowerEnd(filled, arrived, count) : 1;
        double high = low + 1.0 / count;
        mirrored = passing.isThroughTheGround(time);
        top = (float) (mirrored ? 1 - rest : rest);
        runsFrom = (float) (mirrored ? 1 - high : low);
        runsTo = (float) (mirrored ? 1 - low : high);
        colors.begin(count, mirrored ? count - 1 - arrived : arrived, mirrored ? count - arrived : 0, arrived);
    }

    @Override
    public void paint(int firstPixel, Patch patch) {
        int from = patch.from();
        int to = patch.to();
        patch.load(steps.position(), firstPixel, patch.first);
        patch.load(steps.count(), firstPixel, patch.second);
        if (mirrored) {
            PileSteps.above(patch.first, patch.second, top, from, to, patch.third);
        } else {
            PileSteps.below(patch.first, patch.second, top, from, to, patch.third);
        }
        PileSteps.below(patch.first, patch.second, runsTo, from, to, running);
        PileSteps.below(patch.first, patch.second, runsFrom, from, to, patch.second);
        PileSteps.subtract(patch.second, from, to, running);
        colors.paint(firstPixel, running, patch);
    }
}

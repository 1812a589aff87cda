package org.duskloom.effects.pile;

import org.duskloom.effects.kit.Dial;
import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Patch;

/** Paints the lights of {@link Pile}. */
final class PileBrush implements Brush {
    private final Steps steps;
    private final Passing passing;
    private final PileRule rule;
    private final Dial lights;
    private final PileColors colors;
    private final float[] running = new float[Patch.CAPACITY];

    private float restsFrom;
    private float restsTo;
    private float runsFrom;
    private float runsTo;

    PileBrush(Steps steps, Passing passing, PileRule rule, Dial lights, PileColors colors) {
        this.steps = steps;
        this.passing = passing;
        this.rule = rule;
        this.lights = lights;
        this.colors = colors;
    }

    @Override
    public void begin(CueTime time) {
        int count = (int) lights.at(time.seconds());
        double filled = passing.filled(time);
        int arrived = rule.arrived(filled, count);
        double top = (double) arrived / count;
        double lower = arrived < count ? rule.lowerEnd(filled, arrived, count) : 1;
        double upper = lower + 1.0 / count;
        if (passing.isThroughTheGround(time)) {
            setRest(1 - top, 1);
            setRun(1 - upper, 1 - lower);
            colors.begin(count, count - 1 - arrived);
        } else {
            setRest(0, top);
            setRun(lower, upper);
            colors.begin(count, arrived);
        }
    }

    @Override
    public void paint(int firstPixel, Patch patch) {
        int from = patch.from();
        int to = patch.to();
        patch.load(steps.position(), firstPixel, patch.first);
        patch.load(steps.count(), firstPixel, patch.second);
        Steps.cover(patch.first, patch.second, restsFrom, restsTo, from, to, patch.third);
        Steps.cover(patch.first, patch.second, runsFrom, runsTo, from, to, running);
        patch.load(steps.place(), firstPixel, patch.first);
        colors.paint(running, patch);
    }

    private void setRest(double low, double high) {
        restsFrom = (float) low;
        restsTo = (float) high;
    }

    private void setRun(double low, double high) {
        runsFrom = (float) low;
        runsTo = (float) high;
    }
}

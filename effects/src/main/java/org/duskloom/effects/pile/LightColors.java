package org.duskloom.effects.pile;

import org.duskloom.effects.kit.Ramp;
import org.duskloom.engine.effect.Patch;

/**
 * One colour for each light, from the first to the last. A pixel that several resting lights share shows the mean of
 * their colours, each by how much of the pixel's step it fills: the difference of two sums, which cost the same however
 * many lights lie between them. For one thread.
 */
final class LightColors implements PileColors {
    private static final int MOST_LIGHTS = (int) Pile.LIGHTS.max();

    private final PileSteps steps;
    private final Ramp ramp;
    private final float[] place = new float[MOST_LIGHTS];
    private final Channel red = new Channel();
    private final Channel green = new Channel();
    private final Channel blue = new Channel();
    private final Channel alpha = new Channel();
    private int lightsNow;
    private int runningNow;
    private int restsFrom;
    private int restsTo;

    LightColors(PileSteps steps, Ramp ramp) {
        this.steps = steps;
        this.ramp = ramp;
    }

    @Override
    public void begin(int lights, int running, int firstResting, int arrived) {
        lightsNow = lights;
        runningNow = Math.min(lights - 1, Math.max(0, running));
        restsFrom = firstResting;
        restsTo = firstResting + arrived;
        float perLight = lights > 1 ? 1f / (lights - 1) : 0;
        for (int light = 0; light < lights; light++) {
            place[light] = Math.min(1f, light * perLight);
        }
        ramp.fill(place, 0, lights, red.light, green.light, blue.light, alpha.light);
        red.addUp(lights);
        green.addUp(lights);
        blue.addUp(lights);
        alpha.addUp(lights);
    }

    @Override
    public void paint(int firstPixel, float[] running, Patch patch) {
        patch.load(steps.position(), firstPixel, patch.first);
        patch.load(steps.count(), firstPixel, patch.second);
        paint(red, running, patch, patch.red);
        paint(green, running, patch, patch.green);
        paint(blue, running, patch, patch.blue);
        paint(alpha, running, patch, patch.alpha);
    }

    /** What rests on each step, and the running light, as far as the resting ones leave room. */
    private void paint(Channel channel, float[] running, Patch patch, float[] plane) {
        float lit = channel.light[runningNow];
        for (int i = patch.from(); i < patch.to(); i++) {
            double lightsOfAStep = lightsNow / (double) patch.second[i];
            double from = Math.max(restsFrom, patch.first[i] * lightsOfAStep);
            double to = Math.min(restsTo, (patch.first[i] + 1.0) * lightsOfAStep);
            double rests = to > from ? channel.between(from, to) / lightsOfAStep : 0;
            plane[i] = (float) Math.min(1, rests + lit * Math.min(running[i], 1f - patch.third[i]));
        }
    }

    /** A channel of all lights, and the sums of it that the lights before each have. */
    private static final class Channel {
        private final float[] light = new float[MOST_LIGHTS + 1];
        private final double[] sums = new double[MOST_LIGHTS + 1];

        private void addUp(int lights) {
            light[lights] = 0;
            for (int i = 0; i < lights; i++) {
                sums[i + 1] = sums[i] + light[i];
            }
        }

        /** The light between two places, counted in lights from the ground. */
        private double between(double from, double to) {
            int first = (int) from;
            int last = (int) to;
            return sums[last] - sums[first] + (to - last) * light[last] - (from - first) * light[first];
        }
    }
}

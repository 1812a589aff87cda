package org.duskloom.effects.kit;

import org.duskloom.engine.effect.CueTime;

/**
 * A way repeated several times: {@code frac(times · share)} of each pixel, the pattern that {@link Fractions#ofSum}
 * then moves. If nothing in it moves, it is computed once, and threads may share it.
 */
public final class Repeats {
    private final SharePlane shares;
    private final Dial times;
    private final double sign;
    private final float[] fractions;

    private Repeats(SharePlane shares, Dial times, double sign) {
        this.shares = shares;
        this.times = times;
        this.sign = sign;
        fractions = new float[shares.shares().length];
        compute(new CueTime());
    }

    /** The pattern that grows with the share. */
    public static Repeats rising(SharePlane shares, Dial times) {
        return new Repeats(shares, times, 1);
    }

    /** The pattern that falls with the share: {@code frac(-times · share)}. */
    public static Repeats falling(SharePlane shares, Dial times) {
        return new Repeats(shares, times, -1);
    }

    /** Whether it is the same at all times. */
    public boolean isConstant() {
        return shares.isConstant() && times.isConstant();
    }

    /** Goes to an instant. */
    public void begin(CueTime time) {
        if (!isConstant()) {
            shares.begin(time);
            compute(time);
        }
    }

    /** Of each pixel, in [0, 1]; not to be written to. */
    public float[] fractions() {
        return fractions;
    }

    private void compute(CueTime time) {
        float[] places = shares.shares();
        double factor = sign * times.at(time);
        for (int pixel = 0; pixel < fractions.length; pixel++) {
            double value = factor * places[pixel];
            fractions[pixel] = (float) (value - Math.floor(value));
        }
    }
}

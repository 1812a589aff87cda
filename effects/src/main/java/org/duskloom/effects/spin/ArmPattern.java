package org.duskloom.effects.spin;

import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.Motion;
import org.duskloom.effects.kit.Polar;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Settings;

/**
 * The arms as they stand before they turn: arms · a + bend · r modulo 1, and where each distance lies in its member.
 * Can be shared by threads if nothing in it moves.
 */
final class ArmPattern {
    /** More than what a sum of two products is off by, as a share. */
    private static final double ROUNDING = 1e-14;

    private static final double NEAR_ZERO = 1e-9;

    private final Polar polar;
    private final Dial arms;
    private final Dial bend;
    private final float[] fractions;
    private final float[] radii;
    /** Whether they are those of the instant: only what runs outward asks for them. */
    private boolean radiiKnown;

    private ArmPattern(Polar polar, Dial arms, Dial bend, int pixelCount) {
        this.polar = polar;
        this.arms = arms;
        this.bend = bend;
        fractions = new float[pixelCount];
        radii = new float[pixelCount];
        compute(new CueTime());
        // Threads share it if nothing moves.
        radii();
    }

    static ArmPattern of(Canvas canvas, Settings settings) {
        return new ArmPattern(
                Polar.of(canvas, settings),
                Dial.of(settings, Spin.ARMS),
                Dial.of(settings, Spin.BEND),
                canvas.pixelCount());
    }

    boolean isConstant() {
        return polar.isConstant() && arms.isConstant() && bend.isConstant();
    }

    void begin(CueTime time) {
        if (!isConstant()) {
            polar.begin(time);
            compute(time);
        }
    }

    /** Of each pixel, in [0, 1]. */
    float[] fractions() {
        return fractions;
    }

    /** Of each pixel, in [0, 1]: from the nearest to the farthest of its member. */
    float[] radii() {
        if (!radiiKnown) {
            polar.placeRadii(radii);
            radiiKnown = true;
        }
        return radii;
    }

    private void compute(CueTime time) {
        double armsNow = arms.at(time);
        double twistNow = bend.at(time);
        double error = armsNow * polar.angleError();
        double[] angles = polar.angleTurns();
        double[] distances = polar.radii();
        for (int pixel = 0; pixel < fractions.length; pixel++) {
            double wound = armsNow * angles[pixel] + twistNow * distances[pixel];
            double fraction = Motion.fraction(wound);
            fractions[pixel] = (float) fraction;
            if (error > 0 && !isCertain(fraction, angles[pixel], error + ROUNDING * (1 + Math.abs(wound)))) {
                fractions[pixel] =
                        (float) Motion.fraction(armsNow * polar.exactAngleTurns(pixel) + twistNow * distances[pixel]);
            }
        }
        radiiKnown = false;
    }

    /**
     * Whether the exact angle gives the very same float: what is a little less and what is a little more does. It
     * nearly always does, since floats are a million times as coarse as the error. Near angle 0, near a whole number,
     * and at the centre, nothing is certain.
     */
    private static boolean isCertain(double fraction, double angleTurns, double error) {
        return angleTurns > NEAR_ZERO
                && angleTurns < 1 - NEAR_ZERO
                && fraction > error
                && fraction < 1 - error
                && (float) (fraction - error) == (float) (fraction + error);
    }
}

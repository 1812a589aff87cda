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
    private final Polar polar;
    private final Dial arms;
    private final Dial bend;
    private final float[] fractions;
    private final float[] radii;

    private ArmPattern(Polar polar, Dial arms, Dial bend, int pixelCount) {
        this.polar = polar;
        this.arms = arms;
        this.bend = bend;
        fractions = new float[pixelCount];
        radii = new float[pixelCount];
        compute(new CueTime());
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
        return radii;
    }

    private void compute(CueTime time) {
        double armsNow = arms.at(time);
        double twistNow = bend.at(time);
        double[] angles = polar.angleTurns();
        double[] distances = polar.radii();
        for (int pixel = 0; pixel < fractions.length; pixel++) {
            fractions[pixel] = (float) Motion.fraction(armsNow * angles[pixel] + twistNow * distances[pixel]);
        }
        polar.placeRadii(radii);
    }
}

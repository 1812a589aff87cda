package org.duskloom.effects.pile;

import org.duskloom.effects.kit.Easings;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.time.Easing;

/**
 * When each light of a filling runs and how far it has come.
 *
 * @param evenSpeed whether all lights run at one speed, so that those with a long way take longer; else all take as
 *     long
 * @param easing of each run
 */
record PileRule(boolean evenSpeed, Easing easing) {
    static PileRule of(Settings settings) throws SettingException {
        return new PileRule(settings.value(Pile.STEADY).equals("speed"), Easings.of(settings, Pile.EASING));
    }

    /**
     * How many of the lights have arrived.
     *
     * @param filled the share of the filling that is done, in [0, 1]
     */
    int arrived(double filled, int lights) {
        if (!evenSpeed) {
            return (int) Math.min(lights, Math.floor(filled * lights));
        }
        double run = filled * runOf(lights, lights);
        // The root of runOf(m) = run; rounding may put it on the wrong side of a whole number.
        double middle = lights + 0.5;
        double root = middle - Math.sqrt(Math.max(0, middle * middle - 2 * lights * run));
        int arrived = (int) Math.max(0, Math.min(lights, Math.floor(root)));
        if (arrived < lights && runOf(arrived + 1, lights) <= run) {
            return arrived + 1;
        }
        return arrived > 0 && runOf(arrived, lights) > run ? arrived - 1 : arrived;
    }

    /**
     * Where the lower end of the running light is, as a share of the order: from 1, outside, down to the top of the
     * pile.
     *
     * @param arrived from {@link #arrived}; below {@code lights}
     */
    double lowerEnd(double filled, int arrived, int lights) {
        double top = (double) arrived / lights;
        double share = evenSpeed
                ? (filled * runOf(lights, lights) - runOf(arrived, lights)) / (1 - top)
                : filled * lights - arrived;
        return Math.max(top, 1 - (1 - top) * easing.at(share));
    }

    /** How far the first lights run together, in lengths of the order. */
    private static double runOf(int count, int lights) {
        return count - count * (count - 1.0) / (2.0 * lights);
    }
}

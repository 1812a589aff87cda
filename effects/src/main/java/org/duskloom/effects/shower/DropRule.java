package org.duskloom.effects.shower;

import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.Motion;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Settings;

/**
 * When drops start and how they fall. Immutable.
 *
 * @param motion a pass is a crossing
 * @param density drops per lane and pass
 * @param slotsPerPass in each slot of a lane at most one drop starts
 * @param tail share of the way
 * @param vary by how much the slowest takes longer
 */
record DropRule(Motion motion, Dial density, int slotsPerPass, Dial tail, Dial vary) {
    static DropRule of(Settings settings, Motion motion) {
        Dial density = Dial.of(settings, Shower.DENSITY);
        return new DropRule(
                motion,
                density,
                (int) Math.max(1, Math.ceil(density.greatestKey())),
                Dial.of(settings, Shower.TAIL),
                Dial.of(settings, Shower.VARY));
    }

    /** How many passes have gone by, counted the same way whether the drops fall along {@code toward} or against it. */
    double passes(CueTime time) {
        return motion.isReversed() ? -motion.phi(time) : motion.phi(time);
    }

    /** Whether a drop is the same drop at all times. */
    boolean isLasting() {
        return density.isConstant() && vary.isConstant();
    }

    /** How likely a slot is to hold a drop if the drop would start at this number of passes. */
    double chance(double startPasses, CueTime time) {
        if (density.isConstant()) {
            return density.resting() / slotsPerPass;
        }
        double phi = motion.isReversed() ? -startPasses : startPasses;
        return density.at(motion.secondsWhen(phi, time), time) / slotsPerPass;
    }

    /** The most drops of a lane that can be seen at a time. */
    int mostInSight() {
        return slotsInSight(tail.ceiling(), vary.ceiling());
    }

    /** How many slots of a lane, up to the current one, may hold drops that are still seen. */
    int slotsInSight(double tailNow, double varyNow) {
        return (int) Math.ceil((1 + tailNow) * (1 + varyNow) * slotsPerPass) + 1;
    }
}

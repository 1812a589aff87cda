package org.duskloom.effects.pile;

import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.Motion;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;

/** How far the filling has come, and whether it is one. Immutable. */
final class Passing {
    private final Motion motion;
    private final Dial hold;
    private final String then;

    private Passing(Motion motion, Dial hold, String then) {
        this.motion = motion;
        this.hold = hold;
        this.then = then;
    }

    static Passing of(Settings settings) throws SettingException {
        return new Passing(Motion.of(settings), Dial.of(settings, Pile.HOLD), settings.value(Pile.THEN));
    }

    /** The share of the filling that is done, in [0, 1]; what is left where the pile is emptied. */
    double filled(CueTime time) {
        double filling = 1 - hold.at(time);
        double passed = passed(time);
        double done = passed < filling ? passed / filling : 1;
        return isEmptying(time) ? 1 - done : done;
    }

    /** Whether lights leave through the ground, so that everything is mirrored. */
    boolean isThroughTheGround(CueTime time) {
        return then.equals("through") && isEmptying(time);
    }

    private boolean isEmptying(CueTime time) {
        boolean alternates = then.equals("back") || then.equals("through");
        return alternates && Math.floorMod((long) Math.floor(forward(time)), 2) == 1;
    }

    private double passed(CueTime time) {
        double passes = forward(time);
        double passed = then.equals("stay") ? Math.min(1, Math.max(0, passes)) : Motion.fraction(passes);
        return motion.isReversed() ? 1 - passed : passed;
    }

    private double forward(CueTime time) {
        return motion.isReversed() ? -motion.phi(time) : motion.phi(time);
    }
}

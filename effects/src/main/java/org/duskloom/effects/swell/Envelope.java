package org.duskloom.effects.swell;

import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.Easings;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.effect.Shown;
import org.duskloom.engine.time.Easing;

/**
 * How bright a pulse is over its pass.
 *
 * @param attack share of the pass
 * @param hold likewise
 * @param decay likewise
 * @param easing of the attack and, mirrored, of the decay
 */
record Envelope(Dial attack, Dial hold, Dial decay, Easing easing) {
    private static final double ROUNDING = 1e-9;

    /** @throws SettingException if the settings are constant and longer than the pass, or if the easing is none */
    static Envelope of(Settings settings) throws SettingException {
        Envelope envelope = new Envelope(
                Dial.of(settings, Swell.ATTACK),
                Dial.of(settings, Swell.HOLD),
                Dial.of(settings, Swell.DECAY),
                Easings.of(settings, Swell.EASING));
        if (envelope.isConstant() && envelope.length(new CueTime()) > 1 + ROUNDING) {
            throw new SettingException(
                    "decay",
                    "attack " + shown(envelope.attack) + ", hold " + shown(envelope.hold) + " and decay "
                            + shown(envelope.decay) + " are longer than the pass",
                    "together at most 1");
        }
        return envelope;
    }

    private static String shown(Dial steady) {
        return Shown.number(steady.resting());
    }

    /**
     * The level at a share of the pass. Each of its stretches of time holds its first instant and not its last one; run
     * backward, it is the last that comes first.
     *
     * @param passed in [0, 1), backward in (0, 1]
     * @return in [0, 1]
     */
    double at(double passed, CueTime time, boolean backward) {
        double last = backward ? ROUNDING : 0;
        double stretch = Math.max(1, length(time));
        double inAttack = passed * stretch;
        double inHold = inAttack - attack.at(time);
        if (inHold < last && attack.at(time) > 0) {
            return eased(inAttack / attack.at(time));
        }
        double inDecay = inHold - hold.at(time);
        if (inDecay < last && hold.at(time) > 0) {
            return 1;
        }
        double toDark = decay.at(time) - inDecay;
        return toDark > -last && decay.at(time) > 0 ? eased(toDark / decay.at(time)) : 0;
    }

    private double eased(double share) {
        return Math.min(1, Math.max(0, easing.at(share)));
    }

    private double length(CueTime time) {
        return attack.at(time) + hold.at(time) + decay.at(time);
    }

    private boolean isConstant() {
        return attack.isConstant() && hold.isConstant() && decay.isConstant();
    }
}

package org.duskloom.effects.kit;

import java.util.List;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.DurationSetting;
import org.duskloom.engine.effect.FlagSetting;
import org.duskloom.engine.effect.NumberSetting;
import org.duskloom.engine.effect.Period;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;

/**
 * The clock of a periodic effect: how many passes have gone by, <i>φ = elapsed / every + phase</i>, negated by {@code
 * reverse}. A function of the time alone, so it does not depend on the frame rate. Immutable.
 */
public final class Motion {
    /** Time for one pass. */
    public static final DurationSetting EVERY = DurationSetting.of("every", 2, "time for one pass");

    /** How many passes the cue has, instead of {@link #EVERY}: one number for the whole cue, so it does not move. */
    public static final NumberSetting PASSES = NumberSetting.of(
                    "passes", "passes", 0, 100_000, 1, "how many passes the cue has; instead of every")
            .steady("a cue has one number of passes; to change the pace, move \"phase\"");

    /** Runs the other way round. */
    public static final FlagSetting REVERSE = FlagSetting.of("reverse", "runs the other way round");

    /** How far ahead it is. */
    public static final NumberSetting PHASE =
            NumberSetting.of("phase", "passes", -1000, 1000, 0, "how many passes it is ahead");

    /** The four settings, in the order of the reference. */
    public static final List<Setting<?>> SETTINGS = List.of(EVERY, PASSES, REVERSE, PHASE);

    /** Null where the cue has a number of passes. */
    private final Period every;

    private final double passes;

    private final double sign;
    private final Dial phase;

    private Motion(Period every, double passes, boolean reverse, Dial phase) {
        this.every = every;
        this.passes = passes;
        this.sign = reverse ? -1 : 1;
        this.phase = phase;
    }

    /**
     * The clock that the settings describe.
     *
     * @throws SettingException if both {@code every} and {@code passes} are given
     */
    public static Motion of(Settings settings) throws SettingException {
        return of(settings, EVERY, EVERY.standard().orElseThrow());
    }

    /**
     * The clock that the settings describe, where one pass has a time of its own.
     *
     * @param every stands for {@link #EVERY}
     * @param own time for one pass where nothing else is said; above 0
     * @throws SettingException if both {@code every} and {@code passes} are given
     */
    public static Motion of(Settings settings, DurationSetting every, Period own) throws SettingException {
        Dial phase = Dial.of(settings, PHASE);
        boolean reverse = settings.value(REVERSE);
        if (!settings.isGiven(PASSES)) {
            return new Motion(settings.value(every).orElse(own), 0, reverse, phase);
        }
        if (settings.isGiven(every)) {
            throw new SettingException("passes", "both every and passes are given", "say one of the two");
        }
        return new Motion(null, Dial.of(settings, PASSES).resting(), reverse, phase);
    }

    /** How many passes have gone by: any number, below zero too. */
    public double phi(CueTime time) {
        return sign * (passesSinceStart(time) + phase.at(time));
    }

    /** How far into its pass the effect is: {@link #phi} modulo 1, in [0, 1). */
    public double phiFraction(CueTime time) {
        return fraction(phi(time));
    }

    /**
     * How far into its pass the effect is, for what looks different at the two ends of a pass: in [0, 1), and backward
     * in (0, 1], so that a pass that runs backward begins with the end of it from its very first frame on.
     */
    public double passed(CueTime time) {
        double forward = fraction(sign * phi(time));
        return sign < 0 ? 1 - forward : forward;
    }

    /** The number of the pass that {@link #passed} goes through: 0 is the first, and backward -1 is. */
    public double pass(CueTime time) {
        double forward = Math.floor(sign * phi(time));
        return sign < 0 ? -1 - forward : forward;
    }

    /**
     * When {@link #phi} has a value, if the phase stays as it is at the start of the cue. Not finite if nothing passes.
     *
     * @param time says how long the cue is; its instant does not matter
     * @return seconds from the start of the cue, below zero too
     */
    public double secondsWhen(double phi, CueTime time) {
        double passesFromStart = sign * phi - phase.resting();
        return every != null
                ? every.secondsAfter(passesFromStart, time)
                : passesFromStart * time.lengthSeconds() / passes;
    }

    /** Whether it runs the other way round. */
    public boolean isReversed() {
        return sign < 0;
    }

    /** A number modulo 1, in [0, 1). */
    public static double fraction(double value) {
        double fraction = value - Math.floor(value);
        return fraction < 1 ? fraction : 0;
    }

    private double passesSinceStart(CueTime time) {
        return every != null ? every.passes(time) : time.seconds() * passes / time.lengthSeconds();
    }
}

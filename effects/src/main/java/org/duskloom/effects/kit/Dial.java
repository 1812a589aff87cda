package org.duskloom.effects.kit;

import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.NumberSetting;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.effect.Settings;

/**
 * A number setting as one cue has it. It never leaves the setting's range, not even where an easing overshoots between
 * two keys. Immutable; asking allocates nothing.
 */
public final class Dial {
    private final NumberTrack track;
    private final double min;
    private final double max;
    private final boolean whole;
    private final boolean constant;
    private final double resting;

    private Dial(NumberSetting setting, NumberTrack track) {
        this.track = track;
        min = setting.min();
        max = setting.max();
        whole = setting.isWhole();
        constant = track.isConstant();
        resting = shown(track.first());
    }

    /** What the settings say of this one. */
    public static Dial of(Settings settings, NumberSetting setting) {
        return new Dial(setting, settings.value(setting));
    }

    /** Whether it is the same at all times. */
    public boolean isConstant() {
        return constant;
    }

    /** The greatest value that it has at any key. */
    public double greatestKey() {
        return Math.min(max, Math.max(min, track.keyRange()[1]));
    }

    /**
     * What it never exceeds: its value if it does not move, else the most allowed, which an easing may overshoot to.
     */
    public double ceiling() {
        return constant ? resting() : max;
    }

    /** The least and the greatest value at any key: {@code [least, greatest]}; an easing may lead beyond them. */
    public double[] keyRange() {
        return track.keyRange();
    }

    /** Its value; a whole number is rounded to the nearest, halves up. */
    public double at(CueTime time) {
        return at(time.seconds(), time);
    }

    /**
     * Its value at another instant of the cue.
     *
     * @param seconds from the start of the cue
     * @param time tells when the cue began
     */
    public double at(double seconds, CueTime time) {
        return constant ? resting : shown(track.at(seconds, time.startSeconds()));
    }

    /** Its value if it does not move, else the one that it has at the start. */
    public double resting() {
        return resting;
    }

    private double shown(double value) {
        double inRange = Math.min(max, Math.max(min, value));
        return whole ? Math.floor(inRange + 0.5) : inRange;
    }

    /** Its value as a float. */
    public float floatAt(CueTime time) {
        return (float) at(time);
    }
}

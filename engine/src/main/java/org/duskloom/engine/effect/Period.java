package org.duskloom.engine.effect;

import java.util.Objects;
import org.duskloom.engine.digest.FingerprintWriter;
import org.duskloom.engine.digest.Fingerprinted;

/**
 * How long a pass takes: seconds, or so many beats or bars of the music, wherever these lie.
 *
 * @param count above zero, or zero where the setting allows that
 * @param unit of what
 */
public record Period(double count, Unit unit) implements Fingerprinted {
    /** What a period is counted in. */
    public enum Unit {
        /** Seconds. */
        SECONDS,
        /** Beats of the music. */
        BEATS,
        /** Bars of the music. */
        BARS
    }

    public Period {
        Objects.requireNonNull(unit, "unit");
    }

    /** So many seconds. */
    public static Period ofSeconds(double seconds) {
        return new Period(seconds, Unit.SECONDS);
    }

    /** Whether it hangs on the beats of the music. */
    public boolean hearsBeats() {
        return unit != Unit.SECONDS;
    }

    /** How many passes have gone by since the cue began. */
    public double passes(CueTime time) {
        return switch (unit) {
            case SECONDS -> time.seconds() / count;
            case BEATS -> time.beats() / count;
            case BARS -> time.bars() / count;
        };
    }

    /** When so many passes have gone by: seconds since the cue began, below zero too. */
    public double secondsAfter(double passes, CueTime time) {
        return switch (unit) {
            case SECONDS -> passes * count;
            case BEATS -> time.music().secondsAfterBeats(passes * count);
            case BARS -> time.music().secondsAfterBars(passes * count);
        };
    }

    @Override
    public void addTo(FingerprintWriter parts) {
        if (hearsBeats()) {
            parts.text(unit.name());
        }
        parts.number(count);
    }
}

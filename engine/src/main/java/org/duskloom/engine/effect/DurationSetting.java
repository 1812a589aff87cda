package org.duskloom.engine.effect;

import java.util.Optional;
import org.duskloom.engine.document.ValueKind;
import org.duskloom.engine.timeline.Values;

/**
 * A length of time, in seconds, beats or bars. It does not move: how many passes have gone by would be the integral of
 * 1 / every, which has no closed form for most easings, and without one a frame could not be rendered by itself. A
 * periodic effect that shall change its pace moves its phase, which is that integral; where it counts beats, it keeps
 * their pace.
 */
public final class DurationSetting extends Setting<Optional<Period>> {
    private final String standardText;
    private final Optional<Period> standard;
    private final boolean zeroAllowed;

    private DurationSetting(
            String name, String meaning, String standardText, Optional<Period> standard, boolean zeroAllowed) {
        super(name, meaning);
        this.standardText = standardText;
        this.standard = standard;
        this.zeroAllowed = zeroAllowed;
    }

    /** A length of time above zero, with a default in seconds. */
    public static DurationSetting of(String name, int standardSeconds, String meaning) {
        return new DurationSetting(
                name, meaning, standardSeconds + "s", Optional.of(Period.ofSeconds(standardSeconds)), false);
    }

    /** A length of time that may be zero, with a default in milliseconds. */
    public static DurationSetting orZero(String name, int standardMilliseconds, String meaning) {
        Optional<Period> seconds = Optional.of(Period.ofSeconds(standardMilliseconds / 1000.0));
        return new DurationSetting(name, meaning, standardMilliseconds + "ms", seconds, true);
    }

    /** A length of time above zero that need not be set. */
    public static DurationSetting optional(String name, String meaning) {
        return new DurationSetting(name, meaning, "", Optional.empty(), false);
    }

    /** Whether zero is allowed. */
    public boolean zeroAllowed() {
        return zeroAllowed;
    }

    @Override
    public String whyNot() {
        return "it has one value over the whole cue; to change the pace, move \"phase\"";
    }

    @Override
    public ValueKind<?> kind() {
        return Values.TIME;
    }

    @Override
    public String unit() {
        return "time";
    }

    @Override
    public String range() {
        return zeroAllowed ? "0 s or longer" : "longer than 0 s";
    }

    @Override
    public String standardText() {
        return standardText;
    }

    @Override
    public Optional<Period> standard() {
        return standard;
    }
}

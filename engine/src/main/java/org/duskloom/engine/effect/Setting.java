package org.duskloom.engine.effect;

import java.util.Objects;
import org.duskloom.engine.document.ValueKind;

/**
 * One thing about an effect that a timeline may set. The descriptor is also the key under which {@link Settings} holds
 * the resolved value, so an effect never looks a value up by its text.
 *
 * @param <T> what a resolved value is to the effect
 */
public abstract sealed class Setting<T>
        permits NumberSetting,
                ColorSetting,
                PaletteSetting,
                DurationSetting,
                HitsSetting,
                ChoiceSetting,
                FlagSetting,
                TextSetting,
                FileSetting {
    private final String name;
    private final String meaning;

    Setting(String name, String meaning) {
        this.name = Objects.requireNonNull(name, "name");
        this.meaning = Objects.requireNonNull(meaning, "meaning");
    }

    /** The word that stands in a timeline. */
    public final String name() {
        return name;
    }

    /** What it does, in one phrase. */
    public final String meaning() {
        return meaning;
    }

    /** Whether it may move over the cue. */
    public boolean moves() {
        return false;
    }

    /** For a setting that does not move: why, or what to do instead, in one phrase. */
    public String whyNot() {
        return "it has one value over the whole cue";
    }

    /** What may stand in a timeline for it, keys included where it moves. */
    public abstract ValueKind<?> kind();

    /** The unit, or the kind of value where there is none: {@code "degrees"}, {@code "colour"}. */
    public abstract String unit();

    /** What is allowed, for the reference and for hints. */
    public abstract String range();

    /** The default as it would be written in a timeline; empty where there is none. */
    public abstract String standardText();

    /** The value where the timeline says nothing. */
    public abstract T standard();

    @Override
    public final String toString() {
        return name;
    }
}

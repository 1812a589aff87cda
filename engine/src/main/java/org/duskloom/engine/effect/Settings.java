package org.duskloom.engine.effect;

import java.util.Map;

/** The resolved values of one cue's settings. Immutable. */
public final class Settings {
    private final Map<Setting<?>, Object> given;

    private Settings(Map<Setting<?>, Object> given) {
        this.given = given;
    }

    /**
     * The settings of a cue.
     *
     * @param given the values that the timeline sets, each of the type of its setting
     */
    public static Settings of(Map<Setting<?>, Object> given) {
        return new Settings(Map.copyOf(given));
    }

    /** Whether the timeline sets it. */
    public boolean isGiven(Setting<?> setting) {
        return given.containsKey(setting);
    }

    /** What the timeline sets, else the default. */
    @SuppressWarnings("unchecked") // The reader stores a setting's value under that setting only.
    public <T> T value(Setting<T> setting) {
        Object value = given.get(setting);
        return value == null ? setting.standard() : (T) value;
    }
}

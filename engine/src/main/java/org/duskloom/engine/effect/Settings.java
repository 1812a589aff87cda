package org.duskloom.engine.effect;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.duskloom.engine.digest.Fingerprint;
import org.duskloom.engine.digest.FingerprintWriter;
import org.duskloom.engine.digest.Fingerprinted;

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

    /** Whether what they describe hangs on the beats of the music. */
    public boolean hearBeats() {
        for (Object value : given.values()) {
            if (hearsBeats(value)) {
                return true;
            }
        }
        return false;
    }

    private static boolean hearsBeats(Object value) {
        return value instanceof NumberTrack track && track.hearsBeats()
                || value instanceof Hits hits && hits.hearsBeats()
                || value instanceof Optional<?> time
                        && time.orElse(null) instanceof Period period
                        && period.hearsBeats();
    }

    /**
     * Their fingerprint. A setting that is written as its default would be counts as another one, since effects may
     * tell whether it is written.
     *
     * @param all the settings of the effect
     * @param digestOf the digest of the bytes of a file, by which it is known wherever it lies
     */
    public Fingerprint fingerprint(List<Setting<?>> all, Function<Path, String> digestOf) {
        FingerprintWriter parts = new FingerprintWriter("settings/1");
        for (Setting<?> setting : all) {
            if (given.containsKey(setting)) {
                parts.text(setting.name());
                add(given.get(setting), parts, digestOf);
            }
        }
        return parts.finish();
    }

    private static void add(Object value, FingerprintWriter parts, Function<Path, String> digestOf) {
        if (value instanceof Fingerprinted track) {
            parts.value(track);
        } else if (value instanceof Optional<?> time && time.orElseThrow() instanceof Period period) {
            parts.value(period);
        } else if (value instanceof Boolean flag) {
            parts.flag(flag);
        } else if (value instanceof Optional<?> file) {
            parts.text(digestOf.apply((Path) file.orElseThrow()));
        } else {
            parts.text((String) value);
        }
    }
}

package org.duskloom.engine.timeline;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.TimeContext;

/**
 * A show as written.
 *
 * @param title what it is called; may be empty
 * @param pixels where its pixels come from
 * @param rate frames per second
 * @param length from the first frame to the end
 * @param seed of all random choices
 * @param sound that it is played to
 * @param markers by name, in the order in which they are written
 * @param palettes by name
 * @param scenes by name, and as they are wherever they are played
 * @param layers from the bottom up
 * @param looks what looks say and no cue takes, to be checked and never played
 * @param times what the words in its times refer to; marks are its markers, and the starts and ends of cues whose names
 *     are used once
 */
public record Timeline(
        String title,
        PixelSource pixels,
        FrameRate rate,
        ExactTime length,
        long seed,
        Optional<SoundSource> sound,
        Map<String, ExactTime> markers,
        Map<String, NamedPalette> palettes,
        Scenes scenes,
        List<Layer> layers,
        List<UntakenSettings> looks,
        TimeContext times) {
    public Timeline {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(pixels, "pixels");
        Objects.requireNonNull(rate, "rate");
        Objects.requireNonNull(length, "length");
        Objects.requireNonNull(sound, "sound");
        markers = Collections.unmodifiableMap(new LinkedHashMap<>(markers));
        palettes = Map.copyOf(palettes);
        Objects.requireNonNull(scenes, "scenes");
        layers = List.copyOf(layers);
        looks = List.copyOf(looks);
        Objects.requireNonNull(times, "times");
    }

    /** What the words in lengths of time refer to. */
    public TimeContext lengths() {
        return times.withoutMarks();
    }

    /** How many frames it has: those from 0 up to but not including its end. */
    public long frameCount() {
        return rate.firstFrameAtOrAfter(length);
    }
}

package org.duskloom.engine.sound;

import java.util.Objects;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.time.ExactTime;

/**
 * One label of a track.
 *
 * @param start from the start of the sound; not negative
 * @param end not before the start; the same for an instant
 * @param text what it says; may be empty
 * @param location where it stands
 */
public record TrackLabel(ExactTime start, ExactTime end, String text, Location location) {
    /** @throws IllegalArgumentException if it starts below 0 or ends before it starts */
    public TrackLabel {
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(location, "location");
        if (start.isNegative() || end.compareTo(start) < 0) {
            throw new IllegalArgumentException("a label from " + start + " to " + end);
        }
    }

    /** A label that is not in a file yet. */
    public static TrackLabel of(ExactTime start, ExactTime end, String text) {
        return new TrackLabel(start, end, text, Location.ofFile(""));
    }

    /** An instant that is not in a file yet. */
    public static TrackLabel of(ExactTime instant, String text) {
        return of(instant, instant, text);
    }

    /** Whether it marks an instant and no stretch of time. */
    public boolean isInstant() {
        return start.equals(end);
    }
}

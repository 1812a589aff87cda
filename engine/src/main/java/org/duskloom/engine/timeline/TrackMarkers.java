package org.duskloom.engine.timeline;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.sound.LabelTrack;
import org.duskloom.engine.sound.TrackLabel;
import org.duskloom.engine.time.ExactTime;

/**
 * Takes the labels of a track for markers, but for those of beats. The second with the same text is called {@code TEXT
 * 2}, the third {@code TEXT 3}. A label that lasts has an end, too.
 */
final class TrackMarkers {
    private TrackMarkers() {}

    /** @param starts when the sound starts whose track it is */
    static Map<String, InstantNames.Marker> of(LabelTrack track, ExactTime starts, Problems problems) {
        Map<String, InstantNames.Marker> markers = new LinkedHashMap<>();
        Map<String, Integer> seen = new HashMap<>();
        for (TrackLabel label : track.labels()) {
            if (TrackBeats.isBeat(label)) {
                continue;
            }
            if (label.text().isEmpty()) {
                problems.warn(
                        label.location(),
                        "the label at " + label.start() + " has no text, so that no time can count from it",
                        "give it a name, or remove it");
                continue;
            }
            String name = free(label.text(), markers, seen);
            markers.put(name, marker(starts.plus(label.start()), label));
            if (!label.isInstant()) {
                markers.putIfAbsent(name + CueInstant.END, marker(starts.plus(label.end()), label));
            }
        }
        return markers;
    }

    private static InstantNames.Marker marker(ExactTime time, TrackLabel label) {
        return new InstantNames.Marker(Optional.of(time), label.location());
    }

    /** The next number behind a text that no other marker has. */
    private static String free(String text, Map<String, InstantNames.Marker> taken, Map<String, Integer> seen) {
        String name;
        do {
            int number = seen.merge(text, 1, Integer::sum);
            name = number == 1 ? text : text + " " + number;
        } while (taken.containsKey(name));
        return name;
    }
}

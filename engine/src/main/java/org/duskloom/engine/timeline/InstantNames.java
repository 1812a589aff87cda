package org.duskloom.engine.timeline;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.TimeText;

/**
 * What the names behind an {@code @} stand for. A cue of the same list goes before those of other lists; a marker may
 * have the name of neither.
 */
final class InstantNames {
    /** The names in its list; nothing for those of lists without names. */
    private final Map<OpenCue, Map<String, List<CueInstant>>> ownByCue = new HashMap<>();

    private final Map<String, List<CueInstant>> all = new HashMap<>();
    private final Map<String, Marker> markers;
    private final Set<String> labels = new HashSet<>();

    InstantNames(List<List<OpenCue>> lists, Map<String, Marker> markers) {
        this.markers = markers;
        for (List<OpenCue> list : lists) {
            Map<String, List<CueInstant>> own = new HashMap<>();
            for (OpenCue cue : list) {
                if (!cue.name().isEmpty()) {
                    add(cue.name(), new CueInstant(cue, false), own);
                    add(cue.name() + CueInstant.END, new CueInstant(cue, true), own);
                }
            }
            if (!own.isEmpty()) {
                list.forEach(cue -> ownByCue.put(cue, own));
            }
        }
        labels.addAll(all.keySet());
        labels.addAll(markers.keySet());
    }

    /**
     * A named instant, and where it stands.
     *
     * @param time nothing if what is written is wrong
     */
    record Marker(Optional<ExactTime> time, Location location) {}

    /**
     * What a name may stand for: one thing, if all is well.
     *
     * @param label the name, with {@code .end} if it is an end
     */
    record Meaning(String label, List<CueInstant> cues, Optional<Marker> marker) {
        boolean isClear() {
            return cues.size() + (marker.isPresent() ? 1 : 0) == 1;
        }

        /** The time; nothing as long as it is not known. */
        Optional<ExactTime> time() {
            return marker.flatMap(Marker::time)
                    .or(() -> cues.stream().findFirst().flatMap(CueInstant::time));
        }

        /** Where what it may stand for is written. */
        List<String> places() {
            List<String> places = new ArrayList<>();
            marker.ifPresent(found -> places.add("the marker at " + found.location()));
            cues.forEach(
                    found -> places.add("the cue at " + found.cue().fields().location()));
            return places;
        }
    }

    private void add(String label, CueInstant instant, Map<String, List<CueInstant>> own) {
        own.computeIfAbsent(label, key -> new ArrayList<>()).add(instant);
        all.computeIfAbsent(label, key -> new ArrayList<>()).add(instant);
    }

    /** Every name that a time may count from. */
    Set<String> labels() {
        return Set.copyOf(labels);
    }

    /** What the name in a time of a cue stands for; nothing if it names nothing that there is. */
    Optional<Meaning> meaning(OpenCue cue, String time) {
        return TimeText.markIn(time, labels).map(label -> {
            Map<String, List<CueInstant>> own = ownByCue.getOrDefault(cue, Map.of());
            List<CueInstant> cues = own.containsKey(label) ? own.get(label) : all.getOrDefault(label, List.of());
            return new Meaning(label, cues, Optional.ofNullable(markers.get(label)));
        });
    }

    /** The names that stand for one thing wherever they are used, with their times as far as these are known. */
    Map<String, ExactTime> clear() {
        Map<String, ExactTime> clear = new HashMap<>();
        for (String label : labels) {
            Meaning meaning =
                    new Meaning(label, all.getOrDefault(label, List.of()), Optional.ofNullable(markers.get(label)));
            if (meaning.isClear()) {
                meaning.time().ifPresent(time -> clear.put(label, time));
            }
        }
        return clear;
    }
}

package org.duskloom.engine.timeline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.sound.LabelTrack;
import org.duskloom.engine.sound.TrackLabel;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.time.Beats;
import org.duskloom.engine.time.ExactTime;

/**
 * Finds the beats in a label track: labels {@value #BEAT}, and {@value #BAR} for those that start a bar; all others are
 * markers.
 */
final class TrackBeats {
    static final String BEAT = "beat";
    static final String BAR = "bar";

    private TrackBeats() {}

    static boolean isBeat(TrackLabel label) {
        return label.text().equals(BEAT) || label.text().equals(BAR);
    }

    /** Warns of labels that are markers and no beats only because letters of theirs are large. */
    static void warnOfCase(LabelTrack track, Problems problems) {
        for (String word : List.of(BEAT, BAR)) {
            List<TrackLabel> alike = track.labels().stream()
                    .filter(label ->
                            label.text().equalsIgnoreCase(word) && !label.text().equals(word))
                    .toList();
            if (!alike.isEmpty()) {
                TrackLabel first = alike.get(0);
                problems.warn(
                        first.location(),
                        "the label " + Quoted.of(first.text()) + " differs from " + Quoted.of(word)
                                + " only by its large letters, so it is a marker"
                                + (alike.size() == 1 ? "" : ", and " + (alike.size() - 1) + " more like it"),
                        "label beats \"beat\", and those that start a bar \"bar\", in small letters");
            }
        }
    }

    /**
     * The beats of a track.
     *
     * @param starts when the sound starts whose track it is
     * @param file where the track is named
     * @return nothing if an error was added
     */
    static Optional<Beats> of(LabelTrack track, ExactTime starts, TextNode file, Problems problems) {
        List<TrackLabel> labels =
                track.labels().stream().filter(TrackBeats::isBeat).toList();
        if (labels.size() < 2) {
            problems.error(
                    file.location(),
                    "the label track " + Quoted.of(file.value()) + " has "
                            + (labels.isEmpty() ? "no beats" : "one beat only"),
                    "label every beat \"beat\", and the first of every bar \"bar\"");
            return Optional.empty();
        }
        int errorsBefore = problems.errorCount();
        List<ExactTime> beats = new ArrayList<>();
        List<Integer> bars = new ArrayList<>();
        for (TrackLabel label : labels) {
            ExactTime time = starts.plus(label.start());
            if (!beats.isEmpty() && beats.get(beats.size() - 1).equals(time)) {
                problems.error(label.location(), "two beats are at " + label.start(), "remove one of them");
            }
            if (label.text().equals(BAR)) {
                bars.add(beats.size());
            }
            beats.add(time);
        }
        return problems.errorCount() > errorsBefore
                ? Optional.empty()
                : Optional.of(Beats.at(beats, bars.size() < 2 ? List.of() : bars));
    }
}

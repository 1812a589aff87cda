package org.duskloom.engine.timeline;

import java.util.List;
import java.util.Optional;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.document.JsonReader;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.sound.LabelTrack;

/** Timelines for tests. */
final class Timelines {
    private Timelines() {}

    /** A timeline of ten seconds at 40 frames a second; the cue stands on line 5 from column 1 on. */
    static String withCue(String cue) {
        return """
                {"duskloom": "timeline/1", "map": "map.csv", "rate": 40, "length": "10s",
                 "palettes": {"dusk": ["#1b2a6b", "#ff9e5e"]},
                 "looks": {"glow": {"effect": "wash"}},
                 "layers": [{"cues": [
                """ + cue + "\n]}]}";
    }

    /** A timeline of one second without layers but with other fields, which start at column 76. */
    static String withFields(String fields) {
        return "{\"duskloom\": \"timeline/1\", \"map\": \"map.csv\", \"length\": \"1s\", \"layers\": [], " + fields
                + "}";
    }

    /** Every problem of a timeline called show.json, as lines. */
    static List<String> problems(String json) {
        Problems problems = new Problems();
        read(json, problems);
        return Inputs.shown(problems);
    }

    /** A timeline, which must have no errors. */
    static Timeline sound(String json) {
        Problems problems = new Problems();
        Optional<Timeline> timeline = read(json, problems);
        if (problems.hasErrors()) {
            throw new AssertionError(Inputs.shown(problems));
        }
        return timeline.orElseThrow();
    }

    /** The plays of the one cue of {@link #withCue}, which must have no errors. */
    static List<Cue> cues(String cue) {
        return sound(withCue(cue)).layers().get(0).cues();
    }

    /** A timeline that names the label track song.txt; it must have no errors. */
    static Timeline sound(String json, String track) {
        Problems problems = new Problems();
        Optional<Timeline> timeline = read(json, track, problems);
        if (problems.hasErrors()) {
            throw new AssertionError(Inputs.shown(problems));
        }
        return timeline.orElseThrow();
    }

    /** Every problem of a timeline that names the label track song.txt, as lines. */
    static List<String> problems(String json, String track) {
        Problems problems = new Problems();
        read(json, track, problems);
        return Inputs.shown(problems);
    }

    private static Optional<Timeline> read(String json, String track, Problems problems) {
        LabelFiles files = file -> LabelTrack.read(Inputs.source(file.value(), track), problems);
        return JsonReader.read(Inputs.source("show.json", json), problems)
                .flatMap(root -> TimelineReader.read(root, files, problems));
    }

    private static Optional<Timeline> read(String json, Problems problems) {
        return JsonReader.read(Inputs.source("show.json", json), problems)
                .flatMap(root -> TimelineReader.read(root, problems));
    }
}

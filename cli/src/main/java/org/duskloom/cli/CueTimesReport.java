package org.duskloom.cli;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.document.JsonText;
import org.duskloom.engine.plan.PlannedCue;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.text.ShortestDecimal;
import org.duskloom.engine.timeline.Cue;
import org.duskloom.engine.timeline.Layer;

/**
 * Where every cue of some shows begins and ends, each play of a cue that is repeated by itself; layer by layer, in the order of
 * the file.
 */
final class CueTimesReport {
    private static final int WIDTH = 100;

    private final List<Row> rows = new ArrayList<>();

    /** A play of a cue, as read and as planned. */
    private record Row(LoadedShow show, Layer layer, Cue cue, PlannedCue planned) {
        /** Its name, else its effect. */
        String what() {
            return cue.name().isEmpty()
                    ? cue.effect().value()
                    : Quoted.of(cue.name()) + " " + cue.effect().value();
        }
    }

    CueTimesReport(List<LoadedShow> shows) {
        for (LoadedShow show : shows) {
            List<Layer> layers = show.show().timeline().layers();
            for (int i = 0; i < layers.size(); i++) {
                List<PlannedCue> planned = show.plan().layers().get(i).cues();
                for (int k = 0; k < planned.size(); k++) {
                    rows.add(new Row(show, layers.get(i), layers.get(i).cues().get(k), planned.get(k)));
                }
            }
        }
    }

    /** A table for people, with the frames A..B in which each is seen, B not included. */
    String table() {
        TextTable table = new TextTable(WIDTH, 3, 4);
        table.row("from", "to", "frames", "layer", "cue", "place");
        for (Row row : rows) {
            table.row(
                    row.cue().at().toString(),
                    row.cue().seenUntil().toString(),
                    row.planned().firstFrame() + ".." + row.planned().endFrameExclusive(),
                    Quoted.of(row.layer().name()),
                    row.what(),
                    row.cue().location().toString());
        }
        return table.text();
    }

    /** The same for programs: {@code {"duskloom": "times/1", "cues": [...]}}, times in seconds. */
    String json() {
        JsonText json = new JsonText();
        json.field("duskloom", "times/1");
        json.field(
                "cues",
                rows.stream()
                        .map(row -> JsonText.object(
                                "file", row.show().file().toString(),
                                "line", row.cue().location().line(),
                                "layer", row.layer().name(),
                                "name", row.cue().name(),
                                "effect", row.cue().effect().value(),
                                "at", seconds(row.cue().at().seconds()),
                                "end", seconds(row.cue().seenUntil().seconds()),
                                "firstFrame", row.planned().firstFrame(),
                                "endFrame", row.planned().endFrameExclusive()))
                        .toList());
        return json.end();
    }

    private static JsonText.Inline seconds(double seconds) {
        return new JsonText.Inline(ShortestDecimal.of(seconds));
    }
}

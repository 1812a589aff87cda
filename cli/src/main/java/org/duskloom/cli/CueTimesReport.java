package org.duskloom.cli;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.duskloom.engine.document.JsonText;
import org.duskloom.engine.plan.PlannedCue;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.text.ShortestDecimal;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.FrameSpan;
import org.duskloom.engine.timeline.Cue;
import org.duskloom.engine.timeline.Layer;
import org.duskloom.engine.timeline.Played;
import org.duskloom.engine.timeline.SceneCue;

/**
 * Where every cue of some shows begins and ends, each play of a cue that is repeated by itself; layer by layer, in the
 * order of the file.
 */
final class CueTimesReport {
    private static final int WIDTH = 100;

    private final List<Row> rows = new ArrayList<>();
    private final List<Marker> markers = new ArrayList<>();

    /** A named instant of a show. */
    private record Marker(LoadedShow show, String name, ExactTime at) {}

    /**
     * A play of a cue.
     *
     * @param played the cue as written
     * @param within the cues that play the scenes in which it stands, from the outside in
     */
    private record Row(LoadedShow show, String layer, Played played, List<SceneCue> within) {
        /** Its name, else its effect or scene; behind those of the cues that play the scenes around it. */
        String what() {
            Stream<String> around = within.stream().map(Row::shortly);
            return Stream.concat(around, Stream.of(what(played))).collect(Collectors.joining(" > "));
        }

        private static String what(Played played) {
            return played.name().isEmpty() ? content(played) : Quoted.of(played.name()) + " " + content(played);
        }

        private static String shortly(Played played) {
            return played.name().isEmpty() ? content(played) : Quoted.of(played.name());
        }

        private static String content(Played played) {
            return played instanceof SceneCue scene
                    ? "scene " + Quoted.of(scene.scene().value())
                    : ((Cue) played).effect().value();
        }

        FrameSpan frames() {
            return FrameSpan.of(show.show().timeline().rate(), played.at(), played.seenUntil());
        }
    }

    CueTimesReport(List<LoadedShow> shows) {
        for (LoadedShow show : shows) {
            show.show().timeline().markers().forEach((name, at) -> markers.add(new Marker(show, name, at)));
            List<Layer> layers = show.show().timeline().layers();
            for (int i = 0; i < layers.size(); i++) {
                add(show, layers.get(i).name(), show.plan().layers().get(i).cues());
            }
        }
    }

    /** A cue that plays a scene stands before what is in it. */
    private void add(LoadedShow show, String layer, List<PlannedCue> cues) {
        Set<SceneCue> open = Collections.newSetFromMap(new IdentityHashMap<>());
        for (PlannedCue cue : cues) {
            for (int depth = 0; depth < cue.within().size(); depth++) {
                SceneCue around = cue.within().get(depth);
                if (open.add(around)) {
                    rows.add(new Row(show, layer, around, cue.within().subList(0, depth)));
                }
            }
            rows.add(new Row(show, layer, cue.cue(), cue.within()));
        }
    }

    /** A table for people, with the frames A..B in which each is seen, B not included. */
    String table() {
        TextTable table = new TextTable(WIDTH, 3, 4);
        table.row("from", "to", "frames", "layer", "cue", "place");
        for (Row row : rows) {
            table.row(
                    shown(row.played().at()),
                    shown(row.played().seenUntil()),
                    row.frames().toString(),
                    Quoted.of(row.layer()),
                    row.what(),
                    row.played().location().toString());
        }
        return markers.isEmpty() ? table.text() : table.text() + System.lineSeparator() + markerTable();
    }

    private String markerTable() {
        TextTable table = new TextTable(WIDTH, 1);
        table.row("at", "marker");
        markers.forEach(marker -> table.row(shown(marker.at()), Quoted.of(marker.name())));
        return table.text();
    }

    /** Seconds: exact where decimals can say it, else to the microsecond. */
    private static String shown(ExactTime time) {
        String exact = time.toString();
        return exact.contains("/") ? String.format(Locale.ROOT, "%.6fs", time.seconds()) : exact;
    }

    /**
     * The same for programs: {@code {"duskloom": "times/1", "cues": [...]}}, times in seconds, and {@code "markers"}
     * where there are any.
     */
    String json() {
        JsonText json = new JsonText();
        json.field("duskloom", "times/1");
        json.field("cues", rows.stream().map(CueTimesReport::json).toList());
        if (!markers.isEmpty()) {
            json.field(
                    "markers",
                    markers.stream()
                            .map(marker -> JsonText.object(
                                    "file", marker.show().file().toString(),
                                    "name", marker.name(),
                                    "at", seconds(marker.at().seconds())))
                            .toList());
        }
        return json.end();
    }

    private static JsonText.Inline json(Row row) {
        Played played = row.played();
        List<Object> fields = new ArrayList<>(List.of(
                "file", row.show().file().toString(), "line", played.location().line(), "layer", row.layer()));
        if (!row.within().isEmpty()) {
            fields.addAll(List.of("within", names(row.within())));
        }
        fields.addAll(List.of("name", played.name()));
        if (played instanceof SceneCue scene) {
            fields.addAll(List.of("scene", scene.scene().value()));
        } else if (played instanceof Cue cue) {
            fields.addAll(List.of("effect", cue.effect().value()));
        }
        fields.addAll(List.of(
                "at",
                seconds(played.at().seconds()),
                "end",
                seconds(played.seenUntil().seconds())));
        fields.addAll(List.of(
                "firstFrame",
                row.frames().firstFrame(),
                "endFrame",
                row.frames().endFrameExclusive()));
        return JsonText.object(fields.toArray());
    }

    private static JsonText.Inline names(List<SceneCue> within) {
        return new JsonText.Inline(within.stream()
                .map(around -> JsonText.quoted(around.scene().value()))
                .collect(Collectors.joining(", ", "[", "]")));
    }

    private static JsonText.Inline seconds(double seconds) {
        return new JsonText.Inline(ShortestDecimal.of(seconds));
    }
}

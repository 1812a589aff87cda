package org.duskloom.engine.timeline;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.NearestName;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.TimeContext;

/**
 * The scenes of a timeline while it is read: first how long each is, since cues that play one may last as long as it
 * does.
 */
final class SceneBook {
    /** No scenes. */
    static final SceneBook NONE = new SceneBook(List.of(), TimeContext.NONE, ExactTime.ZERO, new Problems());

    private final Map<String, Header> headers = new LinkedHashMap<>();
    private final Map<String, Field> places = new LinkedHashMap<>();
    private final Set<String> used = new HashSet<>();

    /** What is known of a scene before its cues are read. */
    private record Header(Fields fields, ExactTime length) {}

    /**
     * Reads how long the scenes are.
     *
     * @param times what the words in their times refer to
     * @param end of the timeline, which no scene may be longer than
     */
    SceneBook(List<Field> written, TimeContext times, ExactTime end, Problems problems) {
        for (Field field : written) {
            places.put(field.name(), field);
            String what = what(field.name());
            Optional<Fields> fields = Fields.of(field.value(), TimelineFields.SCENE, what, problems);
            CueContext context = new CueContext(what, times, end, this, problems);
            Optional<ExactTime> length = fields.flatMap(scene -> context.length(scene, TimelineFields.SCENE_LENGTH));
            length.filter(time -> time.compareTo(end) > 0)
                    .ifPresent(time -> problems.error(
                            fields.orElseThrow().location(TimelineFields.SCENE_LENGTH),
                            what + " lasts " + time,
                            "the timeline ends at " + end));
            fields.ifPresent(scene -> headers.put(field.name(), new Header(scene, length.orElse(end))));
        }
    }

    private static String what(String name) {
        return "the scene " + Quoted.of(name);
    }

    /** How long a scene is; nothing if there is none of that name that can be read. */
    Optional<ExactTime> length(String name) {
        return Optional.ofNullable(headers.get(name)).map(Header::length);
    }

    /** Finds the scene that a cue plays; an error if there is none. */
    boolean isKnown(TextNode name, Problems problems) {
        used.add(name.value());
        if (!places.containsKey(name.value())) {
            String hint = places.isEmpty()
                    ? "the timeline has no \"scenes\""
                    : NearestName.hint(name.value(), places.keySet());
            problems.error(name.location(), "there is no scene " + Quoted.of(name.value()), hint);
        }
        return headers.containsKey(name.value());
    }

    /**
     * Reads the cues of all scenes.
     *
     * @param empty takes the layers that have none
     */
    List<Scene> read(LookBook looks, TimeContext times, Problems problems, List<Fields> empty) {
        List<Scene> scenes = new ArrayList<>();
        headers.forEach((name, header) -> {
            Fields fields = header.fields();
            CueContext context = new CueContext(what(name), times, header.length(), this, problems);
            LayersReader.Read read = new LayersReader(looks, context)
                    .read(
                            fields.given(TimelineFields.LAYERS)
                                    .map(ListNode::items)
                                    .orElse(List.of()),
                            Map.of());
            empty.addAll(read.empty());
            scenes.add(new Scene(
                    name,
                    places.get(name).nameLocation(),
                    header.length(),
                    fields.value(TimelineFields.SAME),
                    read.layers(),
                    Map.of()));
        });
        return scenes;
    }

    /** Warns of scenes that no cue plays. */
    void warnOfUnused(Problems problems) {
        places.forEach((name, field) -> {
            if (!used.contains(name)) {
                problems.warn(field.nameLocation(), "no cue plays " + what(name), "");
            }
        });
    }
}

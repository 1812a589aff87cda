package org.duskloom.engine.timeline;

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
import org.duskloom.engine.time.Lapse;
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
    private record Header(Fields fields, Lapse length) {}

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
            Optional<Lapse> length = fields.flatMap(scene -> context.length(scene, TimelineFields.SCENE_LENGTH));
            length.map(lapse -> lapse.from(earliest(times)))
                    .filter(time -> time.compareTo(end) > 0)
                    .ifPresent(time -> problems.error(
                            fields.orElseThrow().location(TimelineFields.SCENE_LENGTH),
                            what + " lasts " + time,
                            "the timeline ends at " + end));
            fields.ifPresent(scene -> headers.put(field.name(), new Header(scene, length.orElse(Lapse.of(end)))));
        }
    }

    /** Where a scene is taken to start that is not played yet: on the first beat. */
    private static ExactTime earliest(TimeContext times) {
        return times.beats().map(beats -> beats.known().get(0)).orElse(ExactTime.ZERO);
    }

    private static String what(String name) {
        return "the scene " + Quoted.of(name);
    }

    /**
     * How long a scene is; nothing if there is none of that name that can be read.
     *
     * @param times where the beats lie that its length may count
     */
    Optional<Lapse> length(String name, TimeContext times) {
        return Optional.ofNullable(headers.get(name))
                .map(header -> header.fields()
                        .node(TimelineFields.SCENE_LENGTH)
                        .flatMap(node -> Values.length(node, "", times.withoutMarks(), new Problems()))
                        .filter(length -> !length.isZero())
                        .orElse(header.length()));
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
     * Reads the cues of all scenes, as they are where they start on the first beat.
     *
     * @param empty takes the layers that have none
     */
    List<Scene> read(LookBook looks, TimeContext times, Problems problems, List<Fields> empty) {
        return headers.keySet().stream()
                .map(name -> read(name, earliest(times), looks, times, problems, empty))
                .toList();
    }

    /** Reads the cues of a scene that starts at an instant of the music. */
    Scene read(String name, ExactTime start, LookBook looks, TimeContext times, Problems problems, List<Fields> empty) {
        Header header = headers.get(name);
        Fields fields = header.fields();
        ExactTime length = header.length().from(start);
        String whole = times.isEven() ? what(name) : what(name) + " played at " + start;
        CueContext context = new CueContext(whole, times.inScene(start), length, this, problems);
        LayersReader.Read read = new LayersReader(looks, context)
                .read(fields.given(TimelineFields.LAYERS).map(ListNode::items).orElse(List.of()), Map.of());
        empty.addAll(read.empty());
        return new Scene(
                name,
                places.get(name).nameLocation(),
                length,
                fields.value(TimelineFields.SAME),
                read.layers(),
                Map.of());
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

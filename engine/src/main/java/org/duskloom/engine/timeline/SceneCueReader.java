package org.duskloom.engine.timeline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.color.BlendMode;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;

/** Reads a cue that plays a scene. */
final class SceneCueReader {
    private final OpenCue open;
    private final Fields fields;
    private final CueContext context;
    private final Problems problems;

    SceneCueReader(OpenCue open, CueContext context) {
        this.open = open;
        this.fields = open.fields();
        this.context = context;
        this.problems = context.problems();
    }

    /** Every play of it; none if it has errors. */
    List<Played> read(RandomKeys keys, WrittenFade fade) {
        refuseWhatBelongsToEffects();
        Optional<TextNode> scene =
                fields.given(CueFields.SCENE).filter(name -> context.scenes().isKnown(name, problems));
        List<SceneCue.Instead> on = on();
        Optional<Stagger> stagger = new LayoutReader(fields, context).stagger();
        if (stagger.isPresent() && on.size() != 1) {
            problems.error(
                    fields.location(CueFields.STAGGER),
                    "\"stagger\" of a scene needs one name in \"on\"",
                    "its members then play the scene one after the other, such as \"on\": {\"flower\": \"daisies\"}");
        }
        BlendMode blend = fields.value(CueFields.BLEND);
        if (scene.isEmpty() || open.plays().isEmpty()) {
            fade.check(open, problems);
            return List.of();
        }
        Plays.Times first = open.plays().get().times().get(0);
        SceneCue cue = new SceneCue(
                fields.location(),
                open.name(),
                keys.of(open, "scene " + scene.get().value(), open.keyStart().orElseThrow()),
                first.at(),
                first.end(),
                first.end(),
                scene.get(),
                on,
                stagger,
                Fade.NONE,
                fields.node(CueFields.OPACITY),
                blend);
        return open.plays().get().of(cue, fade, problems);
    }

    private void refuseWhatBelongsToEffects() {
        for (DeclaredField<?> field : CueFields.NOT_OF_SCENES) {
            if (fields.has(field)) {
                problems.error(
                        fields.location(field),
                        "a cue with a \"scene\" has \"" + field.name() + "\"",
                        "that belongs to the cues in the scene");
            }
        }
        if (fields.node(CueFields.REPEAT).orElse(null) instanceof ObjectNode repeat
                && repeat.value(CueFields.REPEAT_CHANGE.name()).isPresent()) {
            problems.error(
                    repeat.value(CueFields.REPEAT_CHANGE.name()).get().location(),
                    "a scene has no settings that could change from play to play",
                    "leave \"change\" out");
        }
    }

    private List<SceneCue.Instead> on() {
        List<SceneCue.Instead> all = new ArrayList<>();
        Node node = fields.node(CueFields.ON).orElse(null);
        if (node instanceof ObjectNode names) {
            names.fields().forEach(field -> instead(field).ifPresent(all::add));
        } else if (node != null) {
            problems.error(
                    node.location(),
                    "beside \"scene\", " + fields.label(CueFields.ON)
                            + " says what the names in the scene stand for, and is an object, not " + node.kind(),
                    "such as \"on\": {\"flower\": \"daisies\"}");
        }
        return all;
    }

    private Optional<SceneCue.Instead> instead(Field field) {
        String what = Quoted.of(field.name()) + " in " + fields.label(CueFields.ON);
        if (field.value() instanceof ListNode list && list.items().isEmpty()) {
            problems.error(list.location(), what + " is empty", "name props, parts or groups");
        }
        return CueFields.ADDRESSES
                .read(field.value(), what, problems)
                .map(addresses -> new SceneCue.Instead(field.name(), field.nameLocation(), addresses));
    }
}

package org.duskloom.engine.timeline;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.duskloom.engine.color.BlendMode;
import org.duskloom.engine.document.Expected;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.Easing;
import org.duskloom.engine.time.ExactTime;

/** Reads the cues of one layer. */
final class CueReader {
    private final String layerName;
    private final LookBook looks;
    private final CueContext context;
    private final Problems problems;
    private final Map<String, Integer> keysSeen = new HashMap<>();

    CueReader(String layerName, LookBook looks, CueContext context) {
        this.layerName = layerName;
        this.looks = looks;
        this.context = context;
        this.problems = context.problems();
    }

    /** The cue, once for every time that it is played; none if it has errors. */
    List<Cue> read(Node node) {
        Optional<ObjectNode> written = Expected.object(node, "a cue", problems);
        if (written.isEmpty()) {
            return List.of();
        }
        int errorsBefore = problems.errorCount();
        Fields fields = Fields.of(looks.filledIn(written.get(), problems), "a cue", problems)
                .orElseThrow();
        List<Cue> cues = cues(fields);
        fields.finish();
        return problems.errorCount() > errorsBefore ? List.of() : cues;
    }

    private List<Cue> cues(Fields fields) {
        fields.textNode("look");
        Optional<TextNode> effect = fields.textNode("effect");
        Optional<ExactTime> at = fields.has("at") ? context.instant(fields, "at") : Optional.of(ExactTime.ZERO);
        Optional<ExactTime> length = at.flatMap(start -> length(fields, start));
        List<TextNode> on = on(fields);
        List<Field> with = with(fields);
        Layout layout = new LayoutReader(fields, context).read();
        Fade fade = length.map(time -> fade(fields, time)).orElse(null);
        Optional<Node> opacity = fields.node("opacity");
        BlendMode blend =
                fields.choice("blend", BlendMode.words()).flatMap(BlendMode::of).orElse(BlendMode.NORMAL);
        Optional<String> name = fields.text("name");
        if (effect.isEmpty() && !fields.has("effect") && !fields.has("look")) {
            problems.error(fields.location(), "the cue has neither \"effect\" nor \"look\"", "name one of them");
        }
        Optional<RepeatPlan> repeat = length.flatMap(time -> repeat(fields, at.orElseThrow(), time));
        if (effect.isEmpty() || repeat.isEmpty() || fade == null) {
            return List.of();
        }
        String key = randomKey(name, effect.get().value(), at.get());
        Cue first = new Cue(
                fields.location(),
                key,
                at.get(),
                at.get().plus(length.get()),
                on,
                effect.get(),
                with,
                layout,
                fade,
                opacity,
                blend);
        return repeated(first, repeat.get());
    }

    private List<Cue> repeated(Cue first, RepeatPlan plan) {
        List<Cue> cues = new ArrayList<>();
        for (int repeat = 0; repeat < plan.count(); repeat++) {
            ExactTime shift = plan.every().times(repeat);
            ExactTime at = first.at().plus(shift);
            if (at.compareTo(context.end()) >= 0) {
                problems.error(
                        first.location(),
                        "repeat " + (repeat + 1) + " of the cue would start at " + at,
                        "the timeline ends at " + context.end());
                break;
            }
            String key = repeat == 0 ? first.randomKey() : first.randomKey() + "#" + repeat;
            cues.add(new Cue(
                    first.location(),
                    key,
                    at,
                    first.end().plus(shift),
                    first.on(),
                    first.effect(),
                    plan.changed(first.with(), repeat, problems),
                    first.layout(),
                    first.fade(),
                    first.opacity(),
                    first.blend()));
        }
        return cues;
    }

    private Optional<RepeatPlan> repeat(Fields fields, ExactTime at, ExactTime length) {
        Optional<Node> node = fields.node("repeat");
        return node.isEmpty() ? Optional.of(RepeatPlan.once(length)) : RepeatPlan.read(node.get(), at, length, context);
    }

    /** A name keeps the random choices of a cue wherever it is moved; without one they hang on its place. */
    private String randomKey(Optional<String> name, String effect, ExactTime at) {
        if (name.isPresent()) {
            return "cue " + name.get();
        }
        String key = "layer " + layerName + " at " + at + " " + effect;
        int before = keysSeen.merge(key, 1, Integer::sum) - 1;
        return before == 0 ? key : key + " " + before;
    }

    private Optional<ExactTime> length(Fields fields, ExactTime at) {
        if (fields.has("for") && fields.has("until")) {
            problems.error(fields.location("until"), "the cue has both \"for\" and \"until\"", "leave one of them out");
            return Optional.empty();
        }
        if (fields.has("for")) {
            return context.length(fields, "for").filter(length -> endsInTime(fields, at.plus(length)));
        }
        Optional<ExactTime> end = fields.has("until") ? context.instant(fields, "until") : Optional.of(context.end());
        if (end.isPresent() && end.get().compareTo(at) <= 0) {
            problems.error(
                    fields.location(fields.has("until") ? "until" : "at"),
                    "the cue starts at " + at.seconds() + " s and ends at " + end.get(),
                    "it must end after it starts");
            return Optional.empty();
        }
        return end.map(instant -> instant.minus(at));
    }

    private boolean endsInTime(Fields fields, ExactTime end) {
        if (end.compareTo(context.end()) <= 0) {
            return true;
        }
        problems.error(fields.location("for"), "the cue ends at " + end, "the timeline ends at " + context.end());
        return false;
    }

    private List<TextNode> on(Fields fields) {
        fields.require("on");
        Optional<List<TextNode>> on = fields.texts("on");
        if (on.isPresent() && on.get().isEmpty()) {
            problems.error(fields.location("on"), "\"on\" of a cue is empty", "name props, parts or groups");
        }
        return on.orElse(List.of());
    }

    private List<Field> with(Fields fields) {
        return fields.node("with")
                .flatMap(node -> Expected.object(node, "\"with\" of a cue", problems))
                .map(ObjectNode::fields)
                .orElse(List.of());
    }

    private Fade fade(Fields fields, ExactTime length) {
        Fade none = new Fade(ExactTime.ZERO, ExactTime.ZERO, Easing.LINEAR);
        Optional<Fields> written = fields.fields("fade");
        if (written.isEmpty()) {
            return none;
        }
        Fields fade = written.get();
        ExactTime in = context.orZero(fade, "in").orElse(ExactTime.ZERO);
        ExactTime out = context.orZero(fade, "out").orElse(ExactTime.ZERO);
        Easing easing = fade.node("easing")
                .flatMap(node -> Values.easing(node, "\"easing\" of a fade", problems))
                .orElse(Easing.LINEAR);
        fade.finish();
        if (in.plus(out).compareTo(length) > 0) {
            problems.error(fade.location(), "the fades take " + in.plus(out), "the cue lasts " + length);
        }
        return new Fade(in, out, easing);
    }
}

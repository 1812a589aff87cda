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
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.time.Easing;
import org.duskloom.engine.time.ExactTime;

/** Reads the cues of one layer. Every field of a cue is read, whatever is wrong with the others. */
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

    /** The cue, once for every time that it is played; if it has errors, what can still be checked of it. */
    CuePlays read(Node node) {
        Optional<ObjectNode> written = Expected.object(node, "a cue", problems);
        if (written.isEmpty()) {
            return CuePlays.NONE;
        }
        int errorsBefore = problems.errorCount();
        Fields fields = Fields.of(looks.filledIn(written.get(), problems), CueFields.CUE, "a cue", problems)
                .orElseThrow();
        Seen seen = seen(fields);
        List<Cue> cues = List.of();
        try {
            cues = played(fields, seen);
        } catch (ArithmeticException tooLarge) {
            problems.error(
                    node.location(),
                    "the times of the cue cannot be counted exactly together",
                    "use fewer digits behind the dot, or a simpler frame rate");
        }
        return problems.errorCount() > errorsBefore
                ? new CuePlays(List.of(), unsound(fields, seen))
                : new CuePlays(cues, List.of());
    }

    /** What is seen, not when. It is complete if nothing is wrong that an effect is prepared from. */
    private record Seen(
            Optional<TextNode> effect, List<TextNode> on, List<Field> with, Layout layout, boolean complete) {}

    private Seen seen(Fields fields) {
        int errorsBefore = problems.errorCount();
        Optional<TextNode> effect = effect(fields);
        List<TextNode> on = on(fields);
        List<Field> with = with(fields);
        Layout layout = new LayoutReader(fields, context).read();
        return new Seen(effect, on, with, layout, effect.isPresent() && problems.errorCount() == errorsBefore);
    }

    private List<Cue> played(Fields fields, Seen seen) {
        Optional<CueTimes> times = CueTimes.read(fields, context);
        Fade fade = fade(fields, times);
        Optional<Node> opacity = fields.node(CueFields.OPACITY);
        BlendMode blend = fields.value(CueFields.BLEND);
        Optional<String> name = fields.given(CueFields.NAME).map(TextNode::value);
        Optional<Node> repeatNode = fields.node(CueFields.REPEAT);
        Optional<Repeat> repeat = repeatNode.flatMap(node -> Repeat.read(node, context));
        if (seen.effect().isEmpty() || times.isEmpty() || repeatNode.isPresent() != repeat.isPresent()) {
            return List.of();
        }
        ExactTime at = times.get().at();
        ExactTime end = at.plus(times.get().length());
        Cue cue = new Cue(
                fields.location(),
                name.orElse(""),
                randomKey(name, seen.effect().get().value(), at),
                at,
                end,
                end,
                seen.on(),
                seen.effect().get(),
                seen.with(),
                List.of(),
                seen.layout(),
                fade,
                opacity,
                blend);
        return repeat.map(plan -> plan.of(cue, context)).orElse(List.of(cue));
    }

    /** A repeat with errors is followed until each of its values has had its turn. */
    private List<UnsoundCue> unsound(Fields fields, Seen seen) {
        Cue standIn = new Cue(
                fields.location(),
                "",
                "",
                ExactTime.ZERO,
                context.end(),
                context.end(),
                seen.on(),
                seen.effect().orElseGet(() -> new TextNode(fields.location(), "")),
                seen.with(),
                List.of(),
                seen.layout(),
                Fade.NONE,
                fields.node(CueFields.OPACITY),
                BlendMode.NORMAL);
        boolean canBePrepared = seen.complete() && !fields.hasUnknown();
        SettingSteps change =
                fields.node(CueFields.REPEAT).map(SettingSteps::in).orElse(SettingSteps.NONE);
        List<UnsoundCue> cues = new ArrayList<>();
        for (int play = 0; play < change.playsToSeeAll(); play++) {
            Cue cue = standIn.repeated(
                    play, ExactTime.ZERO, context.end(), change.appliedTo(seen.with(), play, problems));
            cues.add(new UnsoundCue(cue, seen.effect().isPresent(), canBePrepared));
        }
        return cues;
    }

    private Optional<TextNode> effect(Fields fields) {
        Optional<TextNode> look = fields.given(CueFields.LOOK);
        Optional<TextNode> effect = fields.given(CueFields.EFFECT);
        if (!fields.has(CueFields.EFFECT) && !fields.has(CueFields.LOOK)) {
            problems.error(fields.location(), "the cue has neither \"effect\" nor \"look\"", "name one of them");
        } else if (!fields.has(CueFields.EFFECT)
                && look.isPresent()
                && looks.knows(look.get().value())) {
            problems.error(
                    look.get().location(),
                    "neither the cue nor its look " + Quoted.of(look.get().value()) + " has an \"effect\"",
                    "add \"effect\" to one of them");
        }
        return effect;
    }

    /**
     * A name keeps the random choices of a cue wherever it is moved. Without one they hang on its layer, its start and its
     * effect, so that other cues may come and go; only of cues that share all three the order in the file matters.
     */
    private String randomKey(Optional<String> name, String effect, ExactTime at) {
        if (name.isPresent()) {
            return "cue " + name.get();
        }
        String key = "layer " + layerName + " at " + at + " " + effect;
        int before = keysSeen.merge(key, 1, Integer::sum) - 1;
        return before == 0 ? key : key + " " + before;
    }

    private List<TextNode> on(Fields fields) {
        Optional<List<TextNode>> on = fields.given(CueFields.ON);
        if (fields.node(CueFields.ON).orElse(null) instanceof ListNode list
                && list.items().isEmpty()) {
            problems.error(list.location(), "\"on\" of a cue is empty", "name props, parts or groups");
        }
        return on.orElse(List.of());
    }

    private List<Field> with(Fields fields) {
        return fields.given(CueFields.WITH).orElse(List.of());
    }

    private Fade fade(Fields fields, Optional<CueTimes> times) {
        Optional<Fields> written = fields.given(CueFields.FADE);
        if (written.isEmpty()) {
            return Fade.NONE;
        }
        Fields fade = written.get();
        ExactTime in = context.orZero(fade, CueFields.FADE_IN).orElse(ExactTime.ZERO);
        ExactTime out = context.orZero(fade, CueFields.FADE_OUT).orElse(ExactTime.ZERO);
        Easing easing = fade.node(CueFields.FADE_EASING)
                .flatMap(node -> Values.easing(node, "\"easing\" of a fade", problems))
                .orElse(Easing.LINEAR);
        Optional<ExactTime> length = times.map(CueTimes::length);
        if (length.isPresent() && in.plus(out).compareTo(length.get()) > 0) {
            problems.error(fade.location(), "the fades take " + in.plus(out), "the cue lasts " + length.get());
        }
        return new Fade(in, out, easing);
    }
}

package org.duskloom.engine.timeline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
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
import org.duskloom.engine.time.Lapse;

/** Reads the cues of one layer. Every field of a cue is read, whatever is wrong with the others. */
final class CueReader {
    private final String layerName;
    private final LookBook looks;
    private final CueContext context;
    private final Problems problems;
    private final RandomKeys randomKeys;

    CueReader(String layerName, LookBook looks, CueContext context) {
        this.layerName = layerName;
        this.looks = looks;
        this.context = context;
        this.problems = context.problems();
        this.randomKeys = new RandomKeys(layerName);
    }

    String layerName() {
        return layerName;
    }

    /** The cue with its look filled in; nothing if it is none. */
    Optional<OpenCue> open(Node node) {
        return Expected.object(node, "a cue", problems).map(written -> {
            int errorsBefore = problems.errorCount();
            Fields fields = Fields.of(looks.filledIn(written, problems), CueFields.CUE, "a cue", problems)
                    .orElseThrow();
            return new OpenCue(fields, problems.errorCount() == errorsBefore, problems);
        });
    }

    /**
     * The cue, once for every time that it is played; if it has errors, what can still be checked of it.
     *
     * @param cue whose times are known, if they ever will be
     */
    CuePlays read(OpenCue cue) {
        Fields fields = cue.fields();
        if (fields.has(CueFields.SCENE)) {
            List<LayerItem> plays = new ArrayList<>();
            cue.finds(() -> plays.addAll(new SceneCueReader(cue, context).read(randomKeys, fade(fields))));
            return cue.isSound() ? new CuePlays(plays, List.of()) : CuePlays.NONE;
        }
        Seen seen = seen(cue);
        List<LayerItem> cues = new ArrayList<>();
        cue.finds(() -> cues.addAll(played(cue, seen)));
        return cue.isSound() && cue.plays().isPresent()
                ? new CuePlays(cues, List.of())
                : new CuePlays(List.of(), unsound(fields, seen));
    }

    /** What is seen, not when. It is complete if nothing is wrong that an effect is prepared from. */
    private record Seen(
            Optional<TextNode> effect, List<TextNode> on, List<Field> with, Layout layout, boolean complete) {}

    private Seen seen(OpenCue cue) {
        Fields fields = cue.fields();
        AtomicReference<Seen> seen = new AtomicReference<>();
        cue.finds(() -> seen.set(seen(fields)));
        return seen.get();
    }

    private Seen seen(Fields fields) {
        int errorsBefore = problems.errorCount();
        Optional<TextNode> effect = effect(fields);
        List<TextNode> on = on(fields);
        List<Field> with = with(fields);
        Layout layout = new LayoutReader(fields, context).read();
        return new Seen(effect, on, with, layout, effect.isPresent() && problems.errorCount() == errorsBefore);
    }

    private List<? extends LayerItem> played(OpenCue open, Seen seen) {
        Fields fields = open.fields();
        WrittenFade fade = fade(fields);
        Optional<Node> opacity = fields.node(CueFields.OPACITY);
        BlendMode blend = fields.value(CueFields.BLEND);
        if (seen.effect().isEmpty() || open.plays().isEmpty()) {
            fade.check(open, problems);
            return List.of();
        }
        Plays.Times first = open.plays().get().times().get(0);
        Cue cue = new Cue(
                fields.location(),
                open.name(),
                randomKeys.of(open, seen.effect().get().value(), open.keyStart().orElseThrow()),
                0,
                first.at(),
                first.end(),
                first.end(),
                seen.on(),
                seen.effect().get(),
                seen.with(),
                List.of(),
                seen.layout(),
                Fade.NONE,
                opacity,
                blend);
        Optional<EvenPlays> evenly = open.plays().get().evenly(cue, fade);
        return evenly.isPresent() ? List.of(evenly.get()) : open.plays().get().of(cue, fade, problems);
    }

    /** A repeat with errors is followed until each of its values has had its turn. */
    private List<UnsoundCue> unsound(Fields fields, Seen seen) {
        Cue standIn = new Cue(
                fields.location(),
                "",
                "",
                0,
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
        Plays.Times always = new Plays.Times(ExactTime.ZERO, context.end());
        List<UnsoundCue> cues = new ArrayList<>();
        for (int play = 0; play < change.playsToSeeAll(); play++) {
            Cue cue = standIn.repeated(
                    play + 1, always, context.end(), Fade.NONE, change.appliedTo(seen.with(), play, problems));
            cues.add(new UnsoundCue(cue, seen.effect().isPresent(), canBePrepared));
        }
        return cues;
    }

    private Optional<TextNode> effect(Fields fields) {
        Optional<TextNode> look = fields.given(CueFields.LOOK);
        Optional<TextNode> effect = fields.given(CueFields.EFFECT);
        if (!fields.has(CueFields.EFFECT) && !fields.has(CueFields.LOOK)) {
            problems.error(
                    fields.location(), "the cue has neither \"effect\" nor \"look\" nor \"scene\"", "name one of them");
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

    private List<TextNode> on(Fields fields) {
        if (!fields.require(CueFields.ON)) {
            return List.of();
        }
        Node node = fields.node(CueFields.ON).orElseThrow();
        if (node instanceof ListNode list && list.items().isEmpty()) {
            problems.error(list.location(), "\"on\" of a cue is empty", "name props, parts or groups");
        }
        if (node instanceof ObjectNode) {
            problems.error(
                    node.location(),
                    fields.label(CueFields.ON) + " is an object, which goes with \"scene\"",
                    "name props, parts or groups; what \"all\" and \"except\" say is said of a group");
            return List.of();
        }
        return CueFields.ADDRESSES
                .read(node, fields.label(CueFields.ON), problems)
                .orElse(List.of());
    }

    private List<Field> with(Fields fields) {
        return fields.given(CueFields.WITH).orElse(List.of());
    }

    private WrittenFade fade(Fields cue) {
        Optional<Fields> written = cue.given(CueFields.FADE);
        if (written.isEmpty()) {
            return WrittenFade.NONE;
        }
        Fields fade = written.get();
        Lapse in = context.orZero(fade, CueFields.FADE_IN).orElse(Lapse.NONE);
        Lapse out = context.orZero(fade, CueFields.FADE_OUT).orElse(Lapse.NONE);
        Easing easing = fade.node(CueFields.FADE_EASING)
                .flatMap(node -> Values.easing(node, "\"easing\" of a fade", problems))
                .orElse(Easing.LINEAR);
        return new WrittenFade(fade.location(), in, out, easing, context.times());
    }
}

package org.duskloom.engine.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.duskloom.engine.digest.Fingerprint;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.group.Member;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.NearestName;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.show.Show;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.FrameSpan;
import org.duskloom.engine.timeline.Cue;
import org.duskloom.engine.timeline.Layer;
import org.duskloom.engine.timeline.Layout;
import org.duskloom.engine.timeline.PixelOrder;
import org.duskloom.engine.timeline.Scene;
import org.duskloom.engine.timeline.Timeline;
import org.duskloom.engine.timeline.UnsoundCue;
import org.duskloom.engine.timeline.UntakenSettings;

/** Turns a show as read into a plan that can be rendered. */
public final class PlanCompiler {
    private final Show show;
    private final EffectRegistry effects;
    private final Problems problems;
    private final KernelShelf shelf;
    private final Optional<FrameBeats> beats;
    private final FirstFaults faults;
    private final SettingsReader settingsReader;
    private final LayoutDoubts layoutDoubts;
    private final UnseenCues unseen;
    /** What plays of one cue of a scene have in common; nothing where it has errors. */
    private final Map<Body, Optional<CanvasCompiler>> bodies = new HashMap<>();
    /** The one that was asked for last: plays of a cue follow each other, and are compared sooner than looked up. */
    private Body lastBody;

    private Optional<CanvasCompiler> lastCanvases;

    private final Map<Place, CueGeometry> places = new HashMap<>();
    private final Map<SharedKernels.Key, SharedKernels> kernels = new HashMap<>();
    /** Those of settings that cues share. */
    private final Map<Settings, Fingerprint> settingsPrints = new IdentityHashMap<>();
    /** Said only if nothing is wrong. */
    private final List<Runnable> warnings = new ArrayList<>();

    private int brushCount;

    /**
     * Where cues are painted, wherever they are written.
     *
     * @param start of the cue, where beats make the starts of its members hang on it
     */
    private record Place(List<Member> members, Layout layout, Optional<ExactTime> start) {
        static Place of(List<Member> members, Cue cue) {
            boolean even = cue.layout()
                    .stagger()
                    .map(stagger -> stagger.time().isFixed())
                    .orElse(true);
            return new Place(members, cue.layout().withoutLocation(), even ? Optional.empty() : Optional.of(cue.at()));
        }

        CueGeometry geometry(Show show) {
            return CueGeometry.of(show, layout, members, start.orElse(ExactTime.ZERO));
        }
    }

    /**
     * What a cue paints, as written: the same for all its plays that do not change it.
     *
     * @param start of the play, where beats make what is painted hang on it
     */
    private record Body(
            List<TextNode> on,
            SceneNames names,
            Layout layout,
            TextNode effect,
            List<Field> with,
            List<Field> changes,
            Optional<ExactTime> start) {
        static Body of(CuePlay play, boolean even) {
            Cue cue = play.cue();
            boolean same = even || !BeatKeys.in(cue.with()) && !BeatKeys.in(cue.changes());
            boolean together = cue.layout()
                    .stagger()
                    .map(stagger -> stagger.time().isFixed())
                    .orElse(true);
            return new Body(
                    cue.on(),
                    play.names(),
                    cue.layout(),
                    cue.effect(),
                    cue.with(),
                    cue.changes(),
                    same && together ? Optional.empty() : Optional.of(cue.at()));
        }

        /** Written out, as most plays have the very same parts as the one before, or stand in another line. */
        @Override
        public boolean equals(Object other) {
            return other instanceof Body that
                    && (on == that.on || startsWhere(on, that.on) && on.equals(that.on))
                    && (names == that.names || names.equals(that.names))
                    && (layout == that.layout || layout.equals(that.layout))
                    && (effect == that.effect || effect.equals(that.effect))
                    && (with == that.with || with.equals(that.with))
                    && (changes == that.changes || changes.equals(that.changes))
                    && start.equals(that.start);
        }

        private static boolean startsWhere(List<TextNode> one, List<TextNode> other) {
            if (one.isEmpty() || other.isEmpty()) {
                return one.isEmpty() && other.isEmpty();
            }
            Location first = one.get(0).location();
            Location second = other.get(0).location();
            return first.line() == second.line() && first.column() == second.column();
        }

        @Override
        public int hashCode() {
            return Objects.hash(on, names, layout, effect, with, changes, start);
        }
    }

    private PlanCompiler(Show show, EffectRegistry effects, KernelShelf shelf, Problems problems) {
        this.show = show;
        this.effects = effects;
        this.problems = problems;
        this.shelf = shelf;
        this.beats = show.timeline()
                .times()
                .beats()
                .map(music -> new FrameBeats(music, show.timeline().rate()));
        this.faults = new FirstFaults(problems);
        this.settingsReader = new SettingsReader(show, beats, faults, problems);
        this.layoutDoubts = new LayoutDoubts(show.map(), problems);
        this.unseen = new UnseenCues(show.timeline().rate());
    }

    /**
     * Compiles a show.
     *
     * @param show what was read
     * @param effects the effects that its cues may name
     * @param problems where errors and warnings go; all of them, not only the first
     * @return the plan, or nothing if there are errors, whether from here or from reading the show
     */
    public static Optional<Plan> compile(Show show, EffectRegistry effects, Problems problems) {
        return compile(show, effects, KernelShelf.unused(), problems);
    }

    /**
     * The same for a show that is compiled again and again: the plan is the same, and sooner there.
     *
     * @param shelf what is left from compilations with the same effects
     */
    public static Optional<Plan> compile(Show show, EffectRegistry effects, KernelShelf shelf, Problems problems) {
        shelf.turn();
        Plan plan = new PlanCompiler(show, effects, shelf, problems).plan();
        return problems.hasErrors() ? Optional.empty() : Optional.of(plan);
    }

    private Plan plan() {
        Timeline timeline = show.timeline();
        List<PlannedLayer> layers = new ArrayList<>();
        EvenPlanner evenPlanner = new EvenPlanner(timeline, settingsReader, beats, this::likeTheLast, unseen);
        SceneCompiler scenes =
                new SceneCompiler(show, problems, this::draft, evenPlanner::plan, settingsReader, warnings);
        for (Layer layer : timeline.layers()) {
            PlannedCues cues = scenes.cues(layer);
            layer.unsound().forEach(this::check);
            layers.add(new PlannedLayer(layer.blend(), (float) layer.opacity(), layer.mask(), cues));
        }
        for (UntakenSettings look : timeline.looks()) {
            effect(look.effect()).ifPresent(effect -> settingsReader.check(effect, look.with()));
        }
        timeline.scenes().all().forEach(scene -> check(scene, scenes.hasPlayed(scene)));
        unseen.warn(problems);
        if (!problems.hasErrors()) {
            settingsReader.warnOfSlips();
            warnings.forEach(Runnable::run);
        }
        return new Plan(timeline.rate(), timeline.frameCount(), show.map().pixelCount(), layers, brushCount);
    }

    private Optional<CueDraft> draft(CuePlay play) {
        try {
            Optional<CanvasCompiler> canvases = likeTheLast(play);
            NumberTrack opacity = settingsReader.opacity(play.cue());
            return canvases.map(compiler -> draft(play, compiler, opacity));
        } catch (ArithmeticException tooLarge) {
            reportTooLarge(play.cue());
            return Optional.empty();
        }
    }

    /** What a cue paints, as most do what the one before them does; nothing if it has errors. */
    private Optional<CanvasCompiler> likeTheLast(CuePlay play) {
        Body body = Body.of(play, show.timeline().times().isEven());
        if (!body.equals(lastBody)) {
            lastCanvases = play.within().isEmpty() ? canvases(play) : canvases(play, body);
            lastBody = body;
        }
        return lastCanvases;
    }

    /** The cues of a scene are met again each time that it is played; those of the show itself are not. */
    private Optional<CanvasCompiler> canvases(CuePlay play, Body body) {
        Optional<CanvasCompiler> known = bodies.get(body);
        if (known == null) {
            known = canvases(play);
            bodies.put(body, known);
        }
        return known;
    }

    private void reportTooLarge(Cue cue) {
        problems.error(
                cue.location(),
                "the times of the cue cannot be counted exactly together",
                "use fewer digits behind the dot, or a simpler frame rate");
    }

    /** Finds what is wrong with the cues of a scene that the plays of the scene have not shown. */
    private void check(Scene scene, boolean played) {
        for (Layer layer : scene.layers()) {
            layer.unsound().stream()
                    .filter(UnsoundCue::namesEffect)
                    .forEach(unsound -> checkSettings(unsound.standIn()));
            if (!played) {
                layer.cues().forEach(this::checkSettings);
            }
        }
    }

    private void checkSettings(Cue cue) {
        settingsReader.opacity(cue);
        effect(cue.effect()).ifPresent(effect -> settingsReader.read(effect, cue));
    }

    /** Finds what else is wrong with a cue that has errors already. */
    private void check(UnsoundCue unsound) {
        Cue cue = unsound.standIn();
        try {
            settingsReader.opacity(cue);
            if (unsound.canBePrepared()) {
                canvases(CuePlay.ofShow(cue)).ifPresent(canvases -> canvases.check(cue));
                return;
            }
            show.groups().resolve(cue.on(), problems);
            if (unsound.namesEffect()) {
                effect(cue.effect()).ifPresent(effect -> settingsReader.read(effect, cue));
            }
        } catch (ArithmeticException tooLarge) {
            reportTooLarge(cue);
        }
    }

    private Optional<CanvasCompiler> canvases(CuePlay play) {
        Cue cue = play.cue();
        int errorsBefore = problems.errorCount();
        Optional<Effect> effect = effect(cue.effect());
        Optional<CueGeometry> geometry = geometry(play);
        Optional<Settings> settings = effect.map(found -> settingsReader.read(found, cue));
        effect.filter(found -> cue.layout().order() != PixelOrder.WIRING && !found.usesOrder())
                .ifPresent(found -> warnings.add(() -> warnOfUselessOrder(found, cue)));
        return geometry.isEmpty() || settings.isEmpty() || problems.errorCount() > errorsBefore
                ? Optional.empty()
                : Optional.of(canvases(effect.get(), settings.get(), geometry.get()));
    }

    private CanvasCompiler canvases(Effect effect, Settings settings, CueGeometry geometry) {
        Fingerprint print = settingsPrints.computeIfAbsent(
                settings,
                key -> key.fingerprint(effect.settings(), path -> show.files().sha256Hex(path)));
        SharedKernels.Key identity = new SharedKernels.Key(geometry, effect, print);
        SharedKernels shared = kernels.computeIfAbsent(identity, key -> new SharedKernels(show, key, settings, shelf));
        return new CanvasCompiler(show, settings, shared, problems, faults, layoutDoubts, () -> brushCount++, beats);
    }

    private void warnOfUselessOrder(Effect effect, Cue cue) {
        List<String> running = effects.names().stream()
                .filter(name -> effects.find(name).orElseThrow().usesOrder())
                .toList();
        problems.warn(
                cue.effect().location(),
                "\"order\" is " + Quoted.of(cue.layout().order().word()) + ", but " + effect.name()
                        + " does not run along an order",
                "leave it out" + (running.isEmpty() ? "" : "; those that do: " + String.join(", ", running)));
    }

    private Optional<Effect> effect(TextNode name) {
        Optional<Effect> effect = effects.find(name.value());
        if (effect.isEmpty()) {
            problems.error(
                    name.location(),
                    "there is no effect " + Quoted.of(name.value()),
                    NearestName.hint(name.value(), effects.names()));
        }
        return effect;
    }

    private Optional<CueGeometry> geometry(CuePlay play) {
        return show.groups()
                .resolve(play.cue().on(), play.names().members(), problems)
                .map(members -> Place.of(members, play.cue()))
                .map(place -> places.computeIfAbsent(place, key -> key.geometry(show)));
    }

    private CueDraft draft(CuePlay play, CanvasCompiler compiler, NumberTrack opacity) {
        Cue cue = play.cue();
        PlannedCue.CueSpan span = span(cue);
        PlannedCue.CanvasSet canvases = compiler.compile(play, span.frames());
        if (span.frames().isEmpty() && !play.isCut()) {
            unseen.add(cue);
        }
        PlannedCue.Body body = new PlannedCue.Body(
                play,
                CueFingerprint.later(show.timeline(), play, span, compiler),
                span,
                opacity,
                PlannedFade.of(cue.fade()),
                cue.blend(),
                List.of(),
                canvases);
        return new CueDraft(body, compiler.geometry().pixels());
    }

    private PlannedCue.CueSpan span(Cue cue) {
        Timeline timeline = show.timeline();
        return new PlannedCue.CueSpan(
                FrameSpan.of(timeline.rate(), cue.at(), cue.seenUntil()),
                cue.length().seconds());
    }
}

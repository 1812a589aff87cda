package org.duskloom.engine.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.group.Member;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.show.Show;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.timeline.Axes;
import org.duskloom.engine.timeline.Cue;
import org.duskloom.engine.timeline.EvenPlays;
import org.duskloom.engine.timeline.Fit;
import org.duskloom.engine.timeline.Layer;
import org.duskloom.engine.timeline.LayerItem;
import org.duskloom.engine.timeline.Layout;
import org.duskloom.engine.timeline.PixelOrder;
import org.duskloom.engine.timeline.Played;
import org.duskloom.engine.timeline.Scene;
import org.duskloom.engine.timeline.SceneCue;
import org.duskloom.engine.timeline.Spread;

/**
 * Plays the scenes of a show: makes of every cue in them a cue of the show, by the show's clock, for each time it is
 * played.
 */
final class SceneCompiler {
    /** How many plays of scenes and of cues in them a show may have. */
    static final int MOST_PLAYS = 200_000;

    private final Show show;
    private final Problems problems;
    private final Function<CuePlay, Optional<CueDraft>> planner;
    private final Function<EvenPlays, Optional<PlannedPlays>> evenPlanner;
    private final SettingsReader settings;
    private final List<Runnable> warnings;
    private final Map<NamesKey, Optional<SceneNames>> namesByKey = new HashMap<>();
    private final Map<AloneKey, SceneNames> aloneByKey = new HashMap<>();
    private final Set<String> played = new HashSet<>();
    private int plays;

    /** Names that stand for the same things in every play that has the same names around it. */
    private record NamesKey(SceneNames around, List<SceneCue.Instead> on) {}

    /** A member that plays a scene by itself, in every play that has the same names around it. */
    private record AloneKey(SceneNames names, String name, Member member) {}

    /**
     * A compiler.
     *
     * @param planner plans a cue for one play; nothing if it has errors
     * @param evenPlanner plans all plays of a cue of the show as one; nothing if each is to be planned by itself
     * @param warnings takes what is to be said if nothing is wrong
     */
    SceneCompiler(
            Show show,
            Problems problems,
            Function<CuePlay, Optional<CueDraft>> planner,
            Function<EvenPlays, Optional<PlannedPlays>> evenPlanner,
            SettingsReader settings,
            List<Runnable> warnings) {
        this.show = show;
        this.problems = problems;
        this.planner = planner;
        this.evenPlanner = evenPlanner;
        this.settings = settings;
        this.warnings = warnings;
    }

    /** The cues of a layer of the show, those of scenes among them, in the order of painting. */
    PlannedCues cues(Layer layer) {
        ScenePlay around = ScenePlay.ofShow(show.timeline().length());
        List<PlannedItem> planned = new ArrayList<>();
        LayerDraft draft = new LayerDraft();
        boolean scenes = layer.parts().stream().anyMatch(SceneCue.class::isInstance);
        for (LayerItem item : layer.parts()) {
            // Where scenes are played it may count of every cue before whether it meets one of theirs.
            Optional<PlannedPlays> evenly =
                    !scenes && item instanceof EvenPlays plays ? evenPlanner.apply(plays) : Optional.empty();
            if (evenly.isPresent()) {
                planned.addAll(draft.planned());
                planned.add(evenly.get());
                draft = new LayerDraft();
            } else {
                add(item, around, draft);
            }
        }
        planned.addAll(draft.planned());
        return PlannedCues.of(planned);
    }

    /** Whether the scene was played at all, so that all that is wrong with its cues has been said. */
    boolean hasPlayed(Scene scene) {
        return played.contains(scene.name());
    }

    private void add(Layer layer, ScenePlay around, LayerDraft draft) {
        layer.parts().forEach(item -> add(item, around, draft));
    }

    private void add(LayerItem item, ScenePlay around, LayerDraft draft) {
        if (item instanceof EvenPlays plays) {
            plays.plays().forEach(play -> add(play, around, draft));
        } else if (item instanceof Cue cue) {
            around.cue(cue).filter(play -> mayPlay(play, cue)).flatMap(planner).ifPresent(draft::add);
        } else if (item instanceof SceneCue scene) {
            around.sceneCue(scene).filter(this::mayPlay).ifPresent(cue -> add(cue, around, draft));
        }
    }

    private boolean mayPlay(CuePlay play, Cue cue) {
        return play.within().isEmpty() || mayPlay(cue);
    }

    private boolean mayPlay(Played item) {
        if (plays++ == MOST_PLAYS) {
            problems.error(
                    item.location(),
                    "the scenes of the show play more than " + MOST_PLAYS + " cues",
                    "play fewer of them, or repeat them less often");
        }
        return plays <= MOST_PLAYS;
    }

    private void add(SceneCue cue, ScenePlay around, LayerDraft draft) {
        Optional<Scene> found = show.timeline().scenes().find(cue.scene().value());
        if (found.isEmpty()) {
            return;
        }
        Scene scene = found.get();
        Optional<SceneNames> names = names(cue, around);
        if (names.isEmpty() || !areAllKnown(cue, scene, names.get())) {
            return;
        }
        NumberTrack opacity = settings.opacity(cue);
        if (cue.stagger().isEmpty()) {
            play(cue, scene, ExactTime.ZERO, "", names.get(), opacity, around, draft);
            return;
        }
        String name = cue.on().get(0).name();
        List<Member> members = names.get().members().get(name);
        List<ExactTime> lags = lags(cue, members);
        for (int k = 0; k < members.size(); k++) {
            Member member = members.get(k);
            SceneNames alone = aloneByKey.computeIfAbsent(
                    new AloneKey(names.get(), name, member), key -> key.names().with(Map.of(name, List.of(member))));
            play(cue, scene, lags.get(k), member.name(), alone, opacity, around, draft);
        }
        warnings.add(() -> LateMembers.warn(cue, startingAt(scene, cue.at()), members, lags, problems));
    }

    private void play(
            SceneCue cue,
            Scene scene,
            ExactTime lag,
            String member,
            SceneNames names,
            NumberTrack opacity,
            ScenePlay around,
            LayerDraft draft) {
        Scene there = startingAt(scene, cue.at().plus(lag));
        around.inner(cue, there, lag, member, names).ifPresent(play -> add(cue, there, opacity, play, draft));
    }

    /** Where there are errors already, a scene is not looked at from every start that it is played from. */
    private Scene startingAt(Scene scene, ExactTime start) {
        return problems.hasErrors() ? scene : show.timeline().scenes().startingAt(scene, start, problems);
    }

    private void add(SceneCue cue, Scene scene, NumberTrack opacity, ScenePlay play, LayerDraft draft) {
        played.add(scene.name());
        LayerDraft whole = new LayerDraft();
        for (Layer layer : scene.layers()) {
            LayerDraft cues = new LayerDraft();
            add(layer, play, cues);
            whole.add(cues, layer.blend(), layer.mask(), share(play, NumberTrack.constant(layer.opacity()), null));
        }
        draft.add(whole, cue.blend(), false, share(play, opacity, cue));
    }

    /** How much is seen of a whole; none if it is all. */
    private List<PlannedShare> share(ScenePlay play, NumberTrack opacity, SceneCue cue) {
        PlannedFade fade = cue == null ? PlannedFade.NONE : PlannedFade.of(cue.fade());
        if (fade.isNone() && opacity.isConstant() && opacity.at(0) == 1) {
            return List.of();
        }
        double length = cue == null ? 0 : cue.length().seconds();
        return List.of(
                new PlannedShare(opacity, fade, new FrameClock(show.timeline().rate(), play.start()), length));
    }

    private List<ExactTime> lags(SceneCue cue, List<Member> members) {
        Layout each =
                new Layout(Spread.EACH, Axes.STAGE, cue.location(), Fit.CONTAIN, PixelOrder.WIRING, cue.stagger());
        return StaggerPlan.lags(each, new CanvasGrounds(show.map(), each, members), cue.at());
    }

    /** What names stand for in a play; nothing if an address is wrong. */
    private Optional<SceneNames> names(SceneCue cue, ScenePlay around) {
        if (cue.on().isEmpty()) {
            return Optional.of(around.names());
        }
        NamesKey key = new NamesKey(around.names(), cue.on());
        Optional<SceneNames> known = namesByKey.get(key);
        if (known == null) {
            known = resolved(cue, around.names());
            namesByKey.put(key, known);
        }
        return known;
    }

    private Optional<SceneNames> resolved(SceneCue cue, SceneNames around) {
        Map<String, List<Member>> members = new HashMap<>();
        for (SceneCue.Instead instead : cue.on()) {
            show.groups()
                    .resolve(instead.addresses(), around.members(), problems)
                    .ifPresent(found -> members.put(instead.name(), found));
        }
        return members.size() == cue.on().size() ? Optional.of(around.with(members)) : Optional.empty();
    }

    private boolean areAllKnown(SceneCue cue, Scene scene, SceneNames names) {
        List<String> unknown = new ArrayList<>();
        for (String name : scene.names().keySet()) {
            if (!names.members().containsKey(name) && !show.groups().isHead(name)) {
                unknown.add(name);
            }
        }
        for (String name : unknown) {
            Location used = scene.names().get(name);
            problems.error(
                    cue.scene().location(),
                    "the scene " + Quoted.of(scene.name()) + " plays on " + Quoted.of(name)
                            + ", which is no prop and no group",
                    "say what it stands for, such as \"on\": {" + Quoted.of(name) + ": …}, or correct the name at "
                            + used);
        }
        return unknown.isEmpty();
    }
}

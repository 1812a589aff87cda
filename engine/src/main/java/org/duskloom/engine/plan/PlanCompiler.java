package org.duskloom.engine.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.document.Quoted;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.group.Member;
import org.duskloom.engine.problem.NearestName;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.FrameSpan;
import org.duskloom.engine.timeline.Cue;
import org.duskloom.engine.timeline.Layer;
import org.duskloom.engine.timeline.Timeline;

/** Turns a show as read into a plan that can be rendered. */
public final class PlanCompiler {
    private final Show show;
    private final EffectRegistry effects;
    private final Problems problems;
    private final SettingsReader settingsReader;
    private int canvasCount;

    private PlanCompiler(Show show, EffectRegistry effects, Problems problems) {
        this.show = show;
        this.effects = effects;
        this.problems = problems;
        this.settingsReader = new SettingsReader(show, problems);
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
        Plan plan = new PlanCompiler(show, effects, problems).plan();
        return problems.hasErrors() ? Optional.empty() : Optional.of(plan);
    }

    private Plan plan() {
        Timeline timeline = show.timeline();
        List<PlannedLayer> layers = new ArrayList<>();
        for (Layer layer : timeline.layers()) {
            List<PlannedCue> cues = new ArrayList<>();
            layer.cues().forEach(cue -> planned(cue).ifPresent(cues::add));
            layers.add(new PlannedLayer(layer.blend(), (float) layer.opacity(), layer.mask(), cues));
        }
        if (!problems.hasErrors()) {
            settingsReader.warnOfUnusedPalettes();
        }
        return new Plan(timeline.rate(), timeline.frameCount(), show.map().pixelCount(), layers, canvasCount);
    }

    private Optional<PlannedCue> planned(Cue cue) {
        int errorsBefore = problems.errorCount();
        Optional<Effect> effect = effects.find(cue.effect().value());
        if (effect.isEmpty()) {
            problems.error(
                    cue.effect().location(),
                    "there is no effect " + Quoted.of(cue.effect().value()),
                    NearestName.hint(cue.effect().value(), effects.names()));
        }
        Optional<List<Member>> members = show.groups().resolve(cue.on(), problems);
        Optional<Settings> settings = effect.map(found -> settingsReader.read(found, cue));
        NumberTrack opacity = settingsReader.opacity(cue);
        if (members.isEmpty() || settings.isEmpty() || problems.errorCount() > errorsBefore) {
            return Optional.empty();
        }
        try {
            return Optional.of(planned(cue, members.get(), effect.get(), settings.get(), opacity));
        } catch (ArithmeticException tooLarge) {
            problems.error(
                    cue.location(),
                    "the times of the cue cannot be counted exactly together",
                    "use fewer digits behind the dot, or a simpler frame rate");
            return Optional.empty();
        }
    }

    private PlannedCue planned(Cue cue, List<Member> members, Effect effect, Settings settings, NumberTrack opacity) {
        PlannedCue.CanvasSet canvases =
                new CanvasCompiler(show, cue, effect, settings, problems).compile(members, canvasCount);
        canvasCount += canvases.canvases().size();
        PlannedCue.CueSpan span = span(cue);
        if (span.frames().isEmpty()) {
            problems.warn(
                    cue.location(),
                    "the cue is never seen: no frame falls between " + cue.at() + " and " + cue.end(),
                    "frames are " + show.timeline().rate().timeOf(1) + " apart");
        }
        return new PlannedCue(span, opacity, fade(cue), cue.blend(), canvases);
    }

    private PlannedCue.CueSpan span(Cue cue) {
        Timeline timeline = show.timeline();
        ExactTime end = cue.end().compareTo(timeline.length()) < 0 ? cue.end() : timeline.length();
        return new PlannedCue.CueSpan(
                FrameSpan.of(timeline.rate(), cue.at(), end),
                new FrameClock(timeline.rate(), cue.at()),
                cue.length().seconds());
    }

    private static PlannedFade fade(Cue cue) {
        return new PlannedFade(
                cue.fade().in().seconds(),
                cue.fade().out().seconds(),
                cue.fade().easing());
    }
}

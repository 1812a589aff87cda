package org.duskloom.engine.plan;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.time.EvenInstants;
import org.duskloom.engine.time.FrameSpan;
import org.duskloom.engine.timeline.Cue;
import org.duskloom.engine.timeline.EvenPlays;
import org.duskloom.engine.timeline.Timeline;

/**
 * Plans all plays of a cue of the show as one, where they differ in nothing but their starts: not by chance, by beats
 * that they hear, or by what is to be said of one of them.
 */
final class EvenPlanner {
    private final Timeline timeline;
    private final SettingsReader settings;
    private final Optional<FrameBeats> beats;
    private final Function<CuePlay, Optional<CanvasCompiler>> canvases;
    private final UnseenCues unseen;

    /**
     * A planner.
     *
     * @param canvases what a cue paints; nothing if it has errors
     */
    EvenPlanner(
            Timeline timeline,
            SettingsReader settings,
            Optional<FrameBeats> beats,
            Function<CuePlay, Optional<CanvasCompiler>> canvases,
            UnseenCues unseen) {
        this.timeline = timeline;
        this.settings = settings;
        this.beats = beats;
        this.canvases = canvases;
        this.unseen = unseen;
    }

    /** The plays; nothing where each is to be planned by itself. */
    Optional<PlannedPlays> plan(EvenPlays plays) {
        Optional<EvenInstants> ends = plays.starts().later(plays.first().length());
        if (ends.isEmpty() || !timeline.times().isEven()) {
            return Optional.empty();
        }
        try {
            Optional<CanvasCompiler> compiler = canvases.apply(CuePlay.ofShow(plays.first()));
            Optional<NumberTrack> opacity = settings.evenOpacity(plays.first());
            return compiler.isEmpty() || opacity.isEmpty()
                    ? Optional.empty()
                    : plan(plays, ends.get(), compiler.get(), opacity.get());
        } catch (ArithmeticException tooLarge) {
            return Optional.empty();
        }
    }

    private Optional<PlannedPlays> plan(
            EvenPlays plays, EvenInstants ends, CanvasCompiler compiler, NumberTrack opacity) {
        Optional<PlannedPlays> planned = compiler.compileEvenly(plays, ends)
                .map(found -> new PlannedPlays(
                        plays,
                        ends,
                        timeline.rate(),
                        first(plays.first(), compiler.geometry(), opacity),
                        found,
                        beats,
                        (play, span) -> CueFingerprint.later(timeline, play, span, compiler)
                                .get()));
        planned.ifPresent(found -> unseen.add(plays, found));
        return planned;
    }

    /** What all plays have in common; by value each is another one. */
    private PlannedCue.Body first(Cue cue, CueGeometry geometry, NumberTrack opacity) {
        FrameSpan frames = FrameSpan.of(timeline.rate(), cue.at(), cue.seenUntil());
        return new PlannedCue.Body(
                CuePlay.ofShow(cue),
                () -> {
                    throw new IllegalStateException("asked of no play in particular");
                },
                new PlannedCue.CueSpan(frames, cue.length().seconds()),
                opacity,
                PlannedFade.of(cue.fade()),
                cue.blend(),
                List.of(),
                new PlannedCue.CanvasSet(List.of(), geometry.members(), geometry.isOverlapping()));
    }
}

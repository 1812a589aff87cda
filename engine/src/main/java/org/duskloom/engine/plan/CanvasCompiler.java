package org.duskloom.engine.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntSupplier;
import java.util.stream.Stream;
import org.duskloom.engine.digest.Fingerprint;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.Kernel;
import org.duskloom.engine.effect.MusicClock;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.show.Show;
import org.duskloom.engine.time.EvenInstants;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.FrameSpan;
import org.duskloom.engine.timeline.Cue;
import org.duskloom.engine.timeline.EvenPlays;

/**
 * Lays an effect with its settings over the canvases of a cue, for each of the cue's plays, and says at the cue's place
 * what is wrong or doubtful about that.
 */
final class CanvasCompiler {
    private final Show show;
    private final Effect effect;
    private final Settings settings;
    private final SharedKernels.Key identity;
    private final SharedKernels kernels;
    private final Problems problems;
    private final FirstFaults faults;
    private final LayoutDoubts layoutDoubts;
    private final IntSupplier freshBrush;
    private final Optional<FrameBeats> beats;
    private final Optional<FrameBeats> heardBeats;
    private boolean doubtsTold;

    /**
     * A compiler.
     *
     * @param settings as written at the cue
     * @param kernels those that the cue shares with others
     * @param layoutDoubts warns of slips in layouts, for the whole show
     * @param freshBrush numbers the brushes of the plan
     * @param beats of the music
     */
    CanvasCompiler(
            Show show,
            Settings settings,
            SharedKernels kernels,
            Problems problems,
            FirstFaults faults,
            LayoutDoubts layoutDoubts,
            IntSupplier freshBrush,
            Optional<FrameBeats> beats) {
        this.show = show;
        this.identity = kernels.identity();
        this.effect = identity.effect();
        this.settings = settings;
        this.kernels = kernels;
        this.problems = problems;
        this.faults = faults;
        this.layoutDoubts = layoutDoubts;
        this.freshBrush = freshBrush;
        this.beats = beats;
        this.heardBeats = settings.hearBeats() ? beats : Optional.empty();
    }

    /** The effect that paints. */
    Effect effect() {
        return effect;
    }

    /** What the settings of the effect are, by value. */
    Fingerprint settings() {
        return identity.settings();
    }

    /** The beats that what is painted hangs on; nothing if it hangs on none. */
    Optional<FrameBeats> heardBeats() {
        return heardBeats;
    }

    /** Where is painted. */
    CueGeometry geometry() {
        return identity.geometry();
    }

    /** What became of the effect on each canvas. */
    List<SharedKernels.Prepared> prepared(String randomKey) {
        return kernels.prepared(randomKey);
    }

    /**
     * The canvases of a play.
     *
     * @param frames in which it is seen
     * @throws ArithmeticException if the start of a member cannot be counted exactly
     */
    PlannedCue.CanvasSet compile(CuePlay played, FrameSpan frames) {
        Cue play = played.cue();
        List<SharedKernels.Prepared> prepared = prepared(played.randomKey());
        report(prepared, play);
        if (!doubtsTold && prepared.stream().allMatch(each -> each.kernel().isPresent())) {
            warnOfDoubts(play);
        }
        doubtsTold = true;
        List<PlannedCanvas> canvases = new ArrayList<>();
        for (int k = 0; k < prepared.size(); k++) {
            if (prepared.get(k).kernel().isPresent()) {
                Kernel kernel = prepared.get(k).kernel().get();
                canvases.add(planned(play, kernel, geometry().areas().get(k), kernels.brush(k, frames, freshBrush)));
            }
        }
        layoutDoubts.warn(play, geometry());
        return new PlannedCue.CanvasSet(
                List.copyOf(canvases), geometry().members(), geometry().isOverlapping());
    }

    /**
     * The canvases of plays that differ in nothing but their starts; nothing where they differ in more, or something is
     * wrong with them.
     *
     * @param ends when the plays would end if they were not cut
     */
    Optional<List<PlannedPlays.EvenCanvas>> compileEvenly(EvenPlays plays, EvenInstants ends) {
        List<SharedKernels.Prepared> prepared = effect.usesChance() || heardBeats.isPresent()
                ? List.of()
                : prepared(plays.first().randomKey());
        if (prepared.isEmpty()
                || !prepared.stream().allMatch(each -> each.kernel().isPresent())) {
            return Optional.empty();
        }
        List<EvenInstants> starts = geometry().areas().stream()
                .flatMap(area -> plays.starts().later(area.lag()).stream())
                .toList();
        if (starts.size() < prepared.size()) {
            return Optional.empty();
        }
        if (!doubtsTold) {
            warnOfDoubts(plays.first());
        }
        doubtsTold = true;
        List<PlannedPlays.EvenCanvas> canvases = new ArrayList<>();
        for (int k = 0; k < prepared.size(); k++) {
            Kernel kernel = prepared.get(k).kernel().orElseThrow();
            PixelRuns runs = geometry().areas().get(k).runs();
            canvases.add(new PlannedPlays.EvenCanvas(kernel, runs, starts.get(k), brushes(k, plays, ends)));
        }
        layoutDoubts.warn(plays.first(), geometry());
        return Optional.of(canvases);
    }

    private int[] brushes(int canvas, EvenPlays plays, EvenInstants ends) {
        return PlannedPlays.brushes(
                plays, ends, show.timeline().rate(), frames -> kernels.brush(canvas, frames, freshBrush));
    }

    /** Finds what is wrong with a cue that will not be played. */
    void check(Cue unsound) {
        report(prepared(unsound.randomKey()), unsound);
    }

    private PlannedCanvas planned(Cue play, Kernel kernel, CueGeometry.Area area, int brush) {
        FrameRate rate = show.timeline().rate();
        ExactTime start = play.at().plus(area.lag());
        return new PlannedCanvas(
                kernel,
                area.runs(),
                new FrameClock(rate, start),
                beats.map(music -> music.from(start)).orElse(MusicClock.NONE),
                rate.firstFrameAtOrAfter(start),
                brush);
    }

    private void report(List<SharedKernels.Prepared> prepared, Cue play) {
        for (SharedKernels.Prepared each : prepared) {
            if (each.refusal().isPresent()) {
                report(each.refusal().get(), play);
            }
        }
    }

    private void report(SettingException refusal, Cue play) {
        if (refusal.inFile().isEmpty()) {
            String message = effect.name() + FirstFaults.in(play) + ": " + refusal.getMessage();
            faults.error(play, place(play, refusal.setting()), message, refusal.hint());
        }
        refusal.inFile().forEach(fault -> problems.error(fault.location(), fault.message(), fault.hint()));
    }

    private void warnOfDoubts(Cue play) {
        try {
            effect.doubts(settings)
                    .forEach(doubt -> problems.warn(
                            place(play, doubt.setting()), effect.name() + ": " + doubt.message(), doubt.hint()));
        } catch (SettingException impossible) {
            throw new IllegalStateException(effect.name() + " was prepared with these settings", impossible);
        }
    }

    private static Location place(Cue play, String setting) {
        return Stream.concat(play.with().stream(), play.changes().stream())
                .filter(field -> field.name().equals(setting))
                .findFirst()
                .map(field -> field.value().location())
                .orElse(play.effect().location());
    }
}

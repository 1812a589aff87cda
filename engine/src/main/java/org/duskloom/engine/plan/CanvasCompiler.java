package org.duskloom.engine.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntSupplier;
import java.util.stream.Stream;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.Kernel;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.show.Show;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.FrameSpan;
import org.duskloom.engine.timeline.Cue;

/**
 * Lays an effect with its settings over the canvases of a cue, for each of the cue's plays. Plays share the geometry, and the
 * kernels too unless the effect uses chance, for then each play draws anew.
 */
final class CanvasCompiler {
    private final Show show;
    private final Effect effect;
    private final Settings settings;
    private final CueGeometry geometry;
    private final Problems problems;
    private final IntSupplier freshBrush;
    private final List<BrushNumbers> brushes;
    /** Of each canvas, if plays share them and the first has been compiled. */
    private List<Optional<Kernel>> kernels = List.of();

    /**
     * A compiler.
     *
     * @param freshBrush numbers the brushes of the plan
     */
    CanvasCompiler(
            Show show,
            Effect effect,
            Settings settings,
            CueGeometry geometry,
            Problems problems,
            IntSupplier freshBrush) {
        this.show = show;
        this.effect = effect;
        this.settings = settings;
        this.geometry = geometry;
        this.problems = problems;
        this.freshBrush = freshBrush;
        brushes = geometry.areas().stream().map(area -> new BrushNumbers()).toList();
    }

    /**
     * The canvases of a play.
     *
     * @param frames in which it is seen
     * @throws ArithmeticException if the start of a member cannot be counted exactly
     */
    PlannedCue.CanvasSet compile(Cue play, FrameSpan frames) {
        if (kernels.isEmpty() || effect.usesChance()) {
            boolean first = kernels.isEmpty();
            kernels = kernels(play);
            if (first && kernels.stream().allMatch(Optional::isPresent)) {
                warnOfDoubts(play);
            }
        }
        List<PlannedCanvas> canvases = new ArrayList<>();
        for (int k = 0; k < kernels.size(); k++) {
            if (kernels.get(k).isPresent()) {
                canvases.add(planned(play, k, brushes.get(k).take(frames, freshBrush)));
            }
        }
        warnOfLateMembers(play);
        return new PlannedCue.CanvasSet(canvases, geometry.overlapping());
    }

    /** Finds what is wrong with a cue that will not be played. */
    void check(Cue unsound) {
        kernels(unsound);
    }

    private PlannedCanvas planned(Cue play, int k, int brush) {
        CueGeometry.Area area = geometry.areas().get(k);
        FrameRate rate = show.timeline().rate();
        ExactTime start = play.at().plus(area.lag());
        return new PlannedCanvas(
                kernels.get(k).orElseThrow(),
                area.runs(),
                new FrameClock(rate, start),
                rate.firstFrameAtOrAfter(start),
                brush);
    }

    private List<Optional<Kernel>> kernels(Cue play) {
        CanvasKeys keys = new CanvasKeys(show, play.randomKey());
        return geometry.areas().stream()
                .map(area -> kernel(
                        play,
                        effect.usesChance()
                                ? keys.on(area.built(), area.names())
                                : area.built().canvas()))
                .toList();
    }

    private Optional<Kernel> kernel(Cue play, Canvas canvas) {
        try {
            return Optional.of(effect.prepare(settings, canvas));
        } catch (SettingException e) {
            if (!e.inFile().isEmpty()) {
                e.inFile().forEach(fault -> problems.error(fault.location(), fault.message(), fault.hint()));
                return Optional.empty();
            }
            problems.error(place(play, e.setting()), effect.name() + ": " + e.getMessage(), e.hint());
            return Optional.empty();
        }
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

    private void warnOfLateMembers(Cue play) {
        List<String> late = geometry.areas().stream()
                .filter(area -> area.lag().compareTo(play.length()) >= 0)
                .flatMap(area -> area.names().stream())
                .toList();
        if (!late.isEmpty()) {
            problems.warn(
                    play.layout().stagger().orElseThrow().location(),
                    late.size() + " of the members would start after the cue has ended: " + Quoted.few(late),
                    "shorten \"stagger\" or lengthen the cue");
        }
    }
}

package org.duskloom.engine.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.Kernel;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.group.Member;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.timeline.Cue;

/** Lays the effect of a cue over its members: makes the canvases and has the effect compile a kernel for each. */
final class CanvasCompiler {
    private final Show show;
    private final Cue cue;
    private final Effect effect;
    private final Settings settings;
    private final Problems problems;

    CanvasCompiler(Show show, Cue cue, Effect effect, Settings settings, Problems problems) {
        this.show = show;
        this.cue = cue;
        this.effect = effect;
        this.settings = settings;
        this.problems = problems;
    }

    /**
     * The canvases of the cue; {@code firstIndex} is the number of the first within the plan.
     *
     * @throws ArithmeticException if the start of a member cannot be counted exactly
     */
    PlannedCue.CanvasSet compile(List<Member> members, int firstIndex) {
        CanvasFrames frames = new CanvasFrames(show.map(), cue.layout(), members);
        CanvasBuilder builder = new CanvasBuilder(show, cue, frames);
        List<ExactTime> lags = StaggerPlan.lags(cue.layout(), frames);
        PaintOrder order = PaintOrder.of(frames, lags, show.map().pixelCount());
        List<PlannedCanvas> canvases = new ArrayList<>();
        for (PaintOrder.Together together : order.canvases()) {
            planned(builder, together, firstIndex + canvases.size()).ifPresent(canvases::add);
        }
        warnOfLateMembers(lags);
        return new PlannedCue.CanvasSet(canvases, order.isOverlapping());
    }

    private Optional<PlannedCanvas> planned(CanvasBuilder builder, PaintOrder.Together together, int index) {
        CanvasBuilder.Built built = builder.build(together.frames());
        return kernel(built.canvas()).map(kernel -> {
            FrameRate rate = show.timeline().rate();
            ExactTime start = cue.at().plus(together.lag());
            return new PlannedCanvas(
                    kernel,
                    new PixelRuns(built.stagePixels(), show.map().pixelCount()),
                    new FrameClock(rate, start),
                    rate.firstFrameAtOrAfter(start),
                    index);
        });
    }

    private Optional<Kernel> kernel(Canvas canvas) {
        try {
            return Optional.of(effect.prepare(settings, canvas));
        } catch (SettingException e) {
            problems.error(place(e.setting()), effect.name() + ": " + e.getMessage(), e.hint());
            return Optional.empty();
        }
    }

    private Location place(String setting) {
        return cue.with().stream()
                .filter(field -> field.name().equals(setting))
                .findFirst()
                .map(Field::value)
                .map(value -> value.location())
                .orElse(cue.effect().location());
    }

    private void warnOfLateMembers(List<ExactTime> lags) {
        long late =
                lags.stream().filter(lag -> lag.compareTo(cue.length()) >= 0).count();
        if (late > 0) {
            problems.warn(
                    cue.layout().stagger().orElseThrow().location(),
                    late + " of the members would start after the cue has ended",
                    "shorten \"stagger\" or lengthen the cue");
        }
    }
}

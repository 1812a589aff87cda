package org.duskloom.engine.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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

    /** The canvases of the cue; {@code firstIndex} is the number of the first within the plan. */
    PlannedCue.CanvasSet compile(List<Member> members, int firstIndex) {
        CanvasFrames frames = new CanvasFrames(show.map(), cue.layout(), members);
        CanvasBuilder builder = new CanvasBuilder(show, cue, frames);
        List<PlannedCanvas> canvases = new ArrayList<>();
        boolean overlapping = false;
        Map<ExactTime, List<Integer>> byLag =
                StaggerPlan.of(cue.layout(), frames).membersByLag();
        for (Map.Entry<ExactTime, List<Integer>> start : byLag.entrySet()) {
            List<List<Integer>> disjoint = frames.disjoint(start.getValue());
            overlapping |= disjoint.size() > 1;
            for (List<Integer> together : disjoint) {
                planned(builder, together, start.getKey(), firstIndex + canvases.size())
                        .ifPresent(canvases::add);
            }
        }
        warnOfLateMembers(byLag);
        return new PlannedCue.CanvasSet(canvases, overlapping || byLag.size() > 1 && frames.disjointAll() > 1);
    }

    private Optional<PlannedCanvas> planned(CanvasBuilder builder, List<Integer> members, ExactTime lag, int index) {
        CanvasBuilder.Built built = builder.build(members);
        return kernel(built.canvas()).map(kernel -> {
            FrameRate rate = show.timeline().rate();
            ExactTime start = cue.at().plus(lag);
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

    private void warnOfLateMembers(Map<ExactTime, List<Integer>> byLag) {
        long late = byLag.entrySet().stream()
                .filter(start -> start.getKey().compareTo(cue.length()) >= 0)
                .mapToLong(start -> start.getValue().size())
                .sum();
        if (late > 0) {
            problems.warn(
                    cue.layout().stagger().orElseThrow().location(),
                    late + " of the members would start after the cue has ended",
                    "shorten \"stagger\" or lengthen the cue");
        }
    }
}

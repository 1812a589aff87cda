package org.duskloom.engine.plan;

import java.util.List;
import org.duskloom.engine.group.Member;
import org.duskloom.engine.show.Show;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.timeline.Layout;

/**
 * Where a cue is painted: the same for all its plays.
 *
 * @param lags how much later than the cue each member starts
 * @param areas its canvases, in the order of painting
 * @param overlapping whether a pixel is in more than one of them
 */
record CueGeometry(List<ExactTime> lags, List<Area> areas, boolean overlapping) {
    /**
     * A canvas with its place on the stage.
     *
     * @param built the canvas, without random keys
     * @param runs where its pixels lie
     * @param names of its members
     * @param lag how much later than the cue it starts
     */
    record Area(CanvasBuilder.Built built, PixelRuns runs, List<String> names, ExactTime lag) {}

    /**
     * The geometry of some members.
     *
     * @throws ArithmeticException if the start of a member cannot be counted exactly
     */
    static CueGeometry of(Show show, Layout layout, List<Member> members) {
        CanvasFrames frames = new CanvasFrames(show.map(), layout, members);
        CanvasBuilder builder = new CanvasBuilder(show, layout, frames);
        List<ExactTime> lags = StaggerPlan.lags(layout, frames);
        PaintOrder order = PaintOrder.of(frames, lags, show.map().pixelCount());
        List<Area> areas = order.canvases().stream()
                .map(together -> {
                    CanvasBuilder.Built built = builder.build(together.frames());
                    return new Area(
                            built,
                            new PixelRuns(built.stagePixels(), show.map().pixelCount()),
                            together.frames().stream().map(frames::name).toList(),
                            together.lag());
                })
                .toList();
        return new CueGeometry(lags, areas, order.isOverlapping());
    }
}

package org.duskloom.engine.render;

import java.util.List;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.plan.Plan;

/** The frames of a plan, rendered when they are asked for. */
public final class FrameRenderer implements FrameSource {
    private final Plan plan;
    private final RunInfo info;
    /** Null until somebody reads. */
    private List<ActiveCues> activeCues;

    /**
     * Frames of a show.
     *
     * @param plan what is rendered
     * @param title what it is called; may be empty
     * @param pixels as many as the plan has
     */
    public FrameRenderer(Plan plan, String title, FramePixels pixels) {
        if (pixels.count() != plan.pixelCount()) {
            throw new IllegalArgumentException(pixels.count() + " pixels, and " + plan.pixelCount() + " in the plan");
        }
        this.plan = plan;
        this.info = RunInfo.ofWhole(title, plan.rate(), plan.frameCount(), pixels);
    }

    /** Frames of which nothing is known but the plan. */
    public FrameRenderer(Plan plan) {
        this(plan, "", FramePixels.unnamed(plan.pixelCount()));
    }

    @Override
    public RunInfo info() {
        return info;
    }

    @Override
    public FrameReader reader() {
        return painter()::render;
    }

    @Override
    public FrameReader reader(int firstPixel, int endPixel) {
        FramePainter painter = painter();
        painter.keepTo(CueExtent.between(firstPixel, endPixel, plan.pixelCount()));
        return (frame, rgb, offset) -> painter.render(frame, rgb, offset - 3 * firstPixel);
    }

    private FramePainter painter() {
        return new FramePainter(plan, activeCues().stream().map(ActiveCues::new).toList());
    }

    /** Worked out once for all threads. */
    private synchronized List<ActiveCues> activeCues() {
        if (activeCues == null) {
            activeCues = FramePainter.activeCues(plan);
        }
        return activeCues;
    }
}

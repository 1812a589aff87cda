package org.duskloom.engine.render;

import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.PlannedCanvas;
import org.duskloom.engine.plan.PlannedCue;
import org.duskloom.engine.plan.PlannedLayer;

/** A play of a cue, in its place among the layers. */
record LayeredCue(Plan plan, int layerIndex, PlannedCue cue) {
    private PlannedLayer layer() {
        return plan.layers().get(layerIndex);
    }

    /** Whether its brightness gates what is under it: it stands in a mask, or in a scene that is one. */
    boolean isMask() {
        boolean mask = layer().mask();
        for (int i = 0; i < cue.groupCount(); i++) {
            mask |= cue.group(i).mask();
        }
        return mask;
    }

    /** How much is seen of one of its canvases, with all that it stands in. */
    float opacityAt(PlannedCanvas canvas, long frame) {
        float opacity = cue.opacityAt(canvas, frame) * layer().opacity();
        for (int i = 0; i < cue.groupCount(); i++) {
            opacity *= cue.group(i).opacityAt(frame);
        }
        return opacity;
    }

    long frameCount() {
        return Math.max(0, cue.endFrameExclusive() - cue.firstFrame());
    }
}

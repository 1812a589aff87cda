package org.duskloom.engine.plan;

import java.util.List;
import org.duskloom.engine.color.BlendMode;

/**
 * A layer as it runs.
 *
 * @param blend how it is mixed with what is under it
 * @param opacity 0 to 1
 * @param mask whether its brightness gates what is under it, where and while it has cues
 * @param cues in the order of painting, once for every play
 */
public record PlannedLayer(BlendMode blend, float opacity, boolean mask, List<PlannedCue> cues) {
    public PlannedLayer {
        cues = PlannedCues.of(cues);
    }

    /** The same cues, those plays as one that differ in nothing but their starts. */
    public List<PlannedItem> items() {
        return ((PlannedCues) cues).items();
    }
}

package org.duskloom.engine.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.PlannedCue;
import org.duskloom.engine.preview.CueCaption;
import org.duskloom.engine.timeline.Timeline;

/**
 * Which cues play at a moment.
 *
 * @param timeline the show as written
 * @param plan the same as compiled
 */
public record PlayingCues(Timeline timeline, Plan plan) {
    /** What the cues are called that are seen in a frame, each once, from the bottom layer up. */
    public List<String> at(long frame) {
        Set<String> captions = new LinkedHashSet<>();
        for (int i = 0; i < plan.layers().size(); i++) {
            String layer = timeline.layers().get(i).name();
            for (PlannedCue cue : plan.layers().get(i).cues()) {
                if (cue.firstFrame() <= frame && frame < cue.endFrameExclusive()) {
                    captions.add(CueCaption.of(layer, cue));
                }
            }
        }
        return new ArrayList<>(captions);
    }
}

package org.duskloom.engine.preview;

import org.duskloom.engine.plan.PlannedCue;
import org.duskloom.engine.timeline.Cue;

/** What a cue is called where it is shown to people. */
public final class CueCaption {
    private CueCaption() {}

    /**
     * Its name; else its layer, or the scene in which it stands, and its effect.
     *
     * @param layer the name of its layer; may be empty
     */
    public static String of(String layer, PlannedCue planned) {
        Cue cue = planned.cue();
        if (!cue.name().isEmpty()) {
            return cue.name();
        }
        String effect = cue.effect().value();
        int depth = planned.within().size();
        String around =
                depth == 0 ? layer : planned.within().get(depth - 1).scene().value();
        return around.isEmpty() ? effect : around + ": " + effect;
    }
}

package org.duskloom.engine.render;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.PlannedCue;
import org.duskloom.engine.problem.Location;

/** The plays of a plan, by the cues of the file. For one thread. */
final class CueRoles {
    private final Plan plan;
    private final List<List<LayeredCue>> plays = new ArrayList<>();
    private final Map<Role, List<LayeredCue>> ofScenes = new HashMap<>();

    /** A cue of the file: its scene may be played as a mask here, and to give light there. */
    private record Role(Location location, boolean mask) {}

    CueRoles(Plan plan) {
        this.plan = plan;
        for (int layer = 0; layer < plan.layers().size(); layer++) {
            for (PlannedCue cue : plan.layers().get(layer).cues()) {
                LayeredCue play = new LayeredCue(plan, layer, cue);
                if (play.frameCount() > 0) {
                    add(play);
                }
            }
        }
    }

    /** All plays that are seen in some frame, those of a cue together, in the order of the plan. */
    List<List<LayeredCue>> plays() {
        return plays;
    }

    private void add(LayeredCue play) {
        if (!play.cue().within().isEmpty()) {
            Role role = new Role(play.cue().cue().location(), play.isMask());
            ofScenes.computeIfAbsent(role, unused -> begun()).add(play);
        } else if (goesOn(play)) {
            plays.get(plays.size() - 1).add(play);
        } else {
            begun().add(play);
        }
    }

    private List<LayeredCue> begun() {
        List<LayeredCue> begun = new ArrayList<>(1);
        plays.add(begun);
        return begun;
    }

    /** Whether it is of the same cue as the one before: the plays of a cue of the show itself follow each other. */
    private boolean goesOn(LayeredCue play) {
        if (plays.isEmpty()) {
            return false;
        }
        LayeredCue before = plays.get(plays.size() - 1).get(0);
        return before.cue().within().isEmpty()
                && before.cue().cue().location().equals(play.cue().cue().location());
    }
}

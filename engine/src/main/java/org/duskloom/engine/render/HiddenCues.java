package org.duskloom.engine.render;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.PlannedCue;

/** Tells whether a cue is seen in a frame, by rendering them with it and without it. For one thread. */
final class HiddenCues {
    /** The least difference of codes that counts; one alone may be rounding, but for a light that is off without it. */
    private static final int LEAST = 2;

    private final Plan plan;
    private final FramePainter painter;
    private final byte[] with;
    private final byte[] without;

    HiddenCues(Plan plan) {
        this.plan = plan;
        painter = new FramePainter(plan);
        with = new byte[3 * plan.pixelCount()];
        without = new byte[3 * plan.pixelCount()];
    }

    /** Whether a frame looks another way because of the cue. */
    boolean isSeen(PlannedCue cue, long frame) {
        return isSeen(cue, frame, Set.of());
    }

    /** Whether the frame would look another way because of the cue if nothing were painted over it. */
    boolean isSeenUncovered(LayeredCue play, long frame) {
        return isSeen(play.cue(), frame, above(play, frame));
    }

    /** The cue that covers another one, if it does so alone. */
    Optional<PlannedCue> coveredBy(LayeredCue play, long frame) {
        Set<PlannedCue> above = above(play, frame);
        return above.stream()
                .filter(cover -> {
                    Set<PlannedCue> others = new HashSet<>(above);
                    others.remove(cover);
                    return !isSeen(play.cue(), frame, others);
                })
                .findFirst();
    }

    /** The cues that are painted over a play in one of its frames, in the order of painting. */
    private Set<PlannedCue> above(LayeredCue play, long frame) {
        List<PlannedCue> beside = new ArrayList<>();
        painter.addSeen(play.layerIndex(), frame, beside);
        List<PlannedCue> above = new ArrayList<>(beside.subList(beside.indexOf(play.cue()) + 1, beside.size()));
        for (int layer = play.layerIndex() + 1; layer < plan.layers().size(); layer++) {
            painter.addSeen(layer, frame, above);
        }
        return new LinkedHashSet<>(above);
    }

    private boolean isSeen(PlannedCue cue, long frame, Set<PlannedCue> taken) {
        painter.leaveOut(taken);
        painter.render(frame, with, 0);
        Set<PlannedCue> more = new HashSet<>(taken);
        more.add(cue);
        painter.leaveOut(more);
        painter.render(frame, without, 0);
        for (int i = 0; i < with.length; i++) {
            if (with[i] != without[i] && differ(with[i] & 255, without[i] & 255)) {
                return true;
            }
        }
        return false;
    }

    private static boolean differ(int code, int other) {
        return Math.abs(code - other) >= LEAST || code == 0 || other == 0;
    }
}

package org.duskloom.engine.render;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.PlannedCue;

/**
 * Tells whether a cue is seen in a frame, by rendering them with it and without it. Where hundreds of cues are seen at
 * once that takes long: so much of it is allowed for a whole show, and what is not looked at for that is taken for
 * seen. Half of it is there for all cues, and half in equal parts, so that it does not go to the first ones alone. What
 * counts is work, not time: the same is told of a show on every machine. For one thread.
 */
final class HiddenCues {
    /** The least difference of codes that counts; one alone may be rounding, but for a light that is off without it. */
    private static final int LEAST = 2;

    /** Some seconds of the work of {@link FramePainter#work}. */
    static final long MOST_WORK = 200_000_000;

    private final Plan plan;
    private final long mostWork;
    private long allowed;
    private long spent;
    private long spentBeforeLast;
    private boolean passedOver;
    private final FramePainter painter;
    private final byte[] with;
    private final byte[] without;

    /**
     * @param mostWork how much of {@link FramePainter#work} is allowed
     */
    HiddenCues(Plan plan, long mostWork) {
        this(plan, mostWork, new FramePainter(plan));
    }

    private HiddenCues(Plan plan, long mostWork, FramePainter painter) {
        this.plan = plan;
        this.mostWork = mostWork;
        this.allowed = mostWork;
        this.painter = painter;
        with = new byte[3 * plan.pixelCount()];
        without = new byte[3 * plan.pixelCount()];
    }

    /** The same for another thread. */
    HiddenCues beside() {
        return new HiddenCues(plan, mostWork, painter.beside());
    }

    /** How much of what is allowed is used up. */
    long spent() {
        return spent;
    }

    /** How much of it was when it was last asked whether a cue is seen, since the last turn to one. */
    long spentBeforeLast() {
        return spentBeforeLast;
    }

    /** Goes on as if so much were used up. */
    void hasSpent(long work) {
        spent = work;
        spentBeforeLast = work;
    }

    /** Turns to one of so many cues, counted from 0. */
    void turnTo(int number, int count) {
        passedOver = false;
        allowed = mostWork / 2 + (long) ((double) mostWork / 2 * (number + 1) / count);
    }

    /** Whether no more may be looked at. */
    boolean isExhausted() {
        return spent >= allowed;
    }

    /** Whether a frame looks another way because of the cue, or no more may be looked at. */
    boolean isSeen(PlannedCue cue, long frame) {
        spentBeforeLast = spent;
        passedOver |= isExhausted();
        return isExhausted() || isSeen(cue, frame, Set.of());
    }

    /** Whether the cue that was turned to last was taken for seen without a look at all that was asked for. */
    boolean hasPassedOver() {
        return passedOver;
    }

    /** Whether the frame would look another way because of the cue if nothing were painted over it. */
    boolean isSeenUncovered(LayeredCue play, long frame) {
        return isSeen(play.cue(), frame, above(play, frame));
    }

    /** The cue that covers another one, if it does so alone and as long as there may be looked for it. */
    Optional<PlannedCue> coveredBy(LayeredCue play, long frame) {
        Set<PlannedCue> above = above(play, frame);
        return above.stream()
                .takeWhile(cover -> !isExhausted())
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
        long before = painter.work();
        CueExtent extent = CueExtent.of(cue, plan.pixelCount());
        painter.askFor(extent);
        painter.leaveOut(taken);
        painter.render(frame, with, 0);
        painter.renderWithout(cue, frame, without, 0);
        spent += painter.work() - before;
        for (int tile = 0; tile < extent.tileCount(); tile++) {
            if (differ(3 * extent.firstPixel(tile), 3 * extent.endPixel(tile))) {
                return true;
            }
        }
        return false;
    }

    private boolean differ(int from, int to) {
        for (int i = from; i < to; i++) {
            if (with[i] != without[i] && differByLight(with[i] & 255, without[i] & 255)) {
                return true;
            }
        }
        return false;
    }

    private static boolean differByLight(int code, int other) {
        return Math.abs(code - other) >= LEAST || code == 0 || other == 0;
    }
}

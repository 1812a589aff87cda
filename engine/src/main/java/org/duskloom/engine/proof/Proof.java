package org.duskloom.engine.proof;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.find.FindRun;
import org.duskloom.engine.group.GroupTree;
import org.duskloom.engine.time.FrameRate;

/** Steps that are played on site: to prove a display, or to let a camera find its pixels. Immutable. */
public final class Proof {
    /** Frames per second of a proof: slow outputs can follow it. */
    public static final FrameRate RATE = FrameRate.of(20);

    private final int pixelCount;
    private final List<ProofStep> steps;

    private Proof(int pixelCount, List<ProofStep> steps) {
        this.pixelCount = pixelCount;
        this.steps = List.copyOf(steps);
    }

    /**
     * The proof of a display or a map: first pixels, running index, the stage's up against each shape's own, every
     * prop, every part and every group in turn, and the colours.
     */
    public static Proof of(GroupTree groups) {
        return new Proof(groups.map().pixelCount(), DisplaySteps.of(groups));
    }

    /**
     * The run by which pixels tell a camera their numbers.
     *
     * @param run which pixel is lit when
     * @param holdFrames for how many frames a step is held; even
     * @param light how bright white is, as a share of the light, above 0 and at most 1
     * @throws IllegalArgumentException if a step cannot be held that long, or the light is out of range
     */
    public static Proof ofFinding(FindRun run, int holdFrames, double light) {
        if (holdFrames < 2 || holdFrames % 2 != 0 || !(light > 0 && light <= 1)) {
            throw new IllegalArgumentException(holdFrames + " frames at light " + light);
        }
        return new Proof(run.code().pixelCount(), FindSteps.of(run, holdFrames, light));
    }

    /** One of its steps alone, so that it can be held as long as it is needed; nothing if no step has that caption. */
    public Optional<Proof> step(String caption) {
        List<ProofStep> held = steps.stream()
                .filter(step -> step.caption().equalsIgnoreCase(caption))
                .toList();
        return held.isEmpty() ? Optional.empty() : Optional.of(new Proof(pixelCount, held));
    }

    /**
     * The same with all other pixels dark, and without the steps that light none of these.
     *
     * @param pixels by their place in wiring order, from 0
     */
    public Proof only(int[] pixels) {
        BitSet kept = new BitSet();
        Arrays.stream(pixels).forEach(kept::set);
        return new Proof(
                pixelCount,
                steps.stream()
                        .map(step -> step.only(kept))
                        .filter(step -> step.isSeen(pixelCount))
                        .toList());
    }

    /** The steps in order. */
    public List<ProofStep> steps() {
        return steps;
    }

    /** How many frames all steps have together. */
    public long frameCount() {
        return steps.stream().mapToLong(ProofStep::frames).sum();
    }
}

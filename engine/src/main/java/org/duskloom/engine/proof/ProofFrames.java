package org.duskloom.engine.proof;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.frame.RunStep;
import org.duskloom.engine.time.FrameSpan;

/** The frames of a proof, painted when they are asked for. */
public final class ProofFrames implements FrameSource {
    private final List<ProofStep> steps;
    private final long[] firstFrames;
    private final RunInfo info;

    /**
     * All steps of a proof.
     *
     * @param proof what is shown
     * @param title what it is called
     * @param pixels those of the display that is proved
     */
    public ProofFrames(Proof proof, String title, FramePixels pixels) {
        steps = proof.steps();
        firstFrames = new long[steps.size()];
        List<RunStep> captions = new ArrayList<>();
        long next = 0;
        for (int i = 0; i < firstFrames.length; i++) {
            ProofStep step = steps.get(i);
            firstFrames[i] = next;
            captions.add(new RunStep(next, step.frames(), step.caption(), step.sight()));
            next += step.frames();
        }
        FrameList all = FrameList.of(new FrameSpan(0, next));
        info = new RunInfo(title, Proof.RATE, all, next, pixels, captions);
    }

    @Override
    public RunInfo info() {
        return info;
    }

    @Override
    public FrameReader reader() {
        return (frame, rgb, offset) -> {
            int step = stepAt(frame);
            int frameOfStep = (int) (frame - firstFrames[step]);
            steps.get(step).paint(frameOfStep, rgb, offset, offset + info.frameBytes());
        };
    }

    private int stepAt(long frame) {
        int found = Arrays.binarySearch(firstFrames, frame);
        // What is not found itself lies in the step before the place where it would be put in.
        return found >= 0 ? found : -found - 2;
    }
}

package org.duskloom.engine.proof;

import java.util.List;
import java.util.stream.Stream;
import org.duskloom.engine.color.SrgbEncoder;
import org.duskloom.engine.find.FindRun;
import org.duskloom.engine.find.FindStep;

/** The steps of a run by which pixels tell a camera their numbers, with what a person sees in each. */
final class FindSteps {
    private final FindRun run;
    private final int holdFrames;
    private final int white;

    private FindSteps(FindRun run, int holdFrames, double light) {
        this.run = run;
        this.holdFrames = holdFrames;
        this.white = SrgbEncoder.code((float) light) * 0x010101;
    }

    static List<ProofStep> of(FindRun run, int holdFrames, double light) {
        FindSteps steps = new FindSteps(run, holdFrames, light);
        return run.steps().stream().map(steps::step).toList();
    }

    private ProofStep step(FindStep step) {
        return new ProofStep(
                run.name(step), sight(step), step.halves() * holdFrames / 2, (share, light) -> paint(step, light));
    }

    private void paint(FindStep step, ProofLight light) {
        for (int pixel = 0; pixel < run.code().pixelCount(); pixel++) {
            if (run.isLit(step, pixel)) {
                light.set(pixel, white);
            }
        }
    }

    private String sight(FindStep step) {
        int picture = run.pictures().indexOf(step) + 1;
        return switch (step.kind()) {
            case BLINK -> "all pixels blink, for films; no photo";
            case PAUSE -> "all is dark for a moment; no photo";
            case DARK -> "picture " + picture + ": all is dark";
            case LIT -> "picture " + picture + ": " + lit(step.round()) + " lit";
            case ONES -> "picture " + picture + ": some are lit, by a bit of their numbers";
            case ZEROS ->
                "picture " + picture + ": those that were dark in picture " + (picture - 1) + ", and no others";
        };
    }

    private String lit(int round) {
        if (run.apart() == 1) {
            return "all pixels are";
        }
        // Counted within the whole wiring order, which is what the rounds go by.
        List<String> first = Stream.iterate(round + 1, pixel -> pixel + run.apart())
                .limit(2)
                .filter(pixel -> pixel <= run.code().pixelCount())
                .map(pixel -> Integer.toString(pixel))
                .toList();
        return "in wiring order pixel " + String.join(", ", first) + " and so on are";
    }
}

package org.duskloom.engine.proof;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.frame.RunStep;
import org.duskloom.engine.preview.TimeLabel;

/**
 * The text on the steps of a proof, with how much light each of them makes at once: who plays a proof wants to know
 * beforehand whether wire, fuses and supplies bear it.
 */
final class StepsText {
    private static final int FULL_CODE = 255;
    private static final String MOST_CURRENT =
            "          * The next step draws the most current of all: watch wire, plugs and"
                    + " supplies, and switch off if anything gets\n            warm or smells. What may be connected to the mains, and how it is fused,"
                    + " is a matter of local codes and licensed practice.\n";

    private final RunInfo run;
    private final Optional<String> guide;
    private final List<RunStep> steps;
    private final int[] mostLit;
    private final long[] mostLight;
    private int at;

    /** The text on a run; nothing flashes in it unless a guide says so. */
    StepsText(RunInfo run, Optional<String> guide) {
        this.run = run;
        this.guide = guide;
        this.steps = run.steps();
        this.mostLit = new int[steps.size()];
        this.mostLight = new long[steps.size()];
    }

    /** Counts the light of the next frames, in order. */
    void count(FrameBatch frames) {
        for (int i = 0; i < frames.count(); i++) {
            while (at + 1 < steps.size() && frames.frame(i) >= steps.get(at + 1).firstFrame()) {
                at++;
            }
            count(frames.rgb(), frames.offset(i));
        }
    }

    private void count(byte[] rgb, int offset) {
        int lit = 0;
        long light = 0;
        for (int pixel = offset; pixel < offset + run.frameBytes(); pixel += 3) {
            int sum = (rgb[pixel] & 0xFF) + (rgb[pixel + 1] & 0xFF) + (rgb[pixel + 2] & 0xFF);
            lit += sum > 0 ? 1 : 0;
            light += sum;
        }
        mostLit[at] = Math.max(mostLit[at], lit);
        mostLight[at] = Math.max(mostLight[at], light);
    }

    /** The text, once all frames are counted. */
    String lines() {
        int brightest = 0;
        for (int i = 1; i < steps.size(); i++) {
            brightest = mostLight[i] > mostLight[brightest] ? i : brightest;
        }
        StringBuilder lines = new StringBuilder();
        guide.ifPresent(lines::append);
        lines.append((guide.isPresent() ? "What is seen" : "What the proof shows") + ", at " + run.rate()
                + " frames a second.\n");
        lines.append("The times are those at which the steps begin");
        lines.append(
                run.pixels().places().isPresent()
                        ? ", here and in strip.png, which shows the middle of each.\n"
                        : ".\n");
        lines.append(
                "Behind them stands what is lit at once: how many pixels at most, and their light as a share of all "
                        + run.pixelCount() + " pixels white,\nwhere a receiver takes the codes for the duty.\n");
        lines.append(String.format(
                Locale.ROOT,
                "The most is %s of that, in \"%s\": wire, fuses and supplies must bear it.%s\n\n",
                share(brightest),
                steps.get(brightest).caption(),
                guide.isPresent() ? "" : " Nothing flashes."));
        for (int i = 0; i < steps.size(); i++) {
            RunStep step = steps.get(i);
            if (i == brightest) {
                lines.append(MOST_CURRENT);
            }
            String time = TimeLabel.of(run.rate().secondsOf(step.firstFrame()));
            lines.append(String.format(
                    Locale.ROOT, "%8s  %-30s %6d %6s  %s\n", time, step.caption(), mostLit[i], share(i), step.sight()));
        }
        return lines.toString();
    }

    /** In hundredths, rounded up: who reads it sizes a fuse by it. */
    private String share(int step) {
        long full = 3L * FULL_CODE * run.pixelCount();
        return (100 * mostLight[step] + full - 1) / full + " %";
    }
}

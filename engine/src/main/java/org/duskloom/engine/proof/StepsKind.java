package org.duskloom.engine.proof;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.format.StreamKind;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.frame.RunStep;
import org.duskloom.engine.preview.TimeLabel;

/** {@code steps.txt}: what a person should see in each step of a proof, and when. */
public final class StepsKind implements StreamKind {
    /** There is nothing to choose. */
    public StepsKind() {}

    @Override
    public String word() {
        return "steps";
    }

    @Override
    public String help() {
        return "what to see in each step of a proof, and when";
    }

    @Override
    public String file() {
        return "steps.txt";
    }

    @Override
    public boolean holdsFrames() {
        return false;
    }

    @Override
    public FrameSink into(StagedFile file) {
        return new FrameSink() {
            @Override
            public void begin(RunInfo run) throws IOException {
                byte[] lines = lines(run).getBytes(StandardCharsets.UTF_8);
                file.write(lines, 0, lines.length);
            }

            @Override
            public void take(FrameBatch frames) {
                // The text speaks of what is known beforehand.
            }

            @Override
            public void finish() throws IOException {
                file.finish();
            }

            @Override
            public void close() {
                file.close();
            }
        };
    }

    private static String lines(RunInfo run) {
        StringBuilder lines = new StringBuilder(
                "What the proof shows, at " + run.rate() + " frames a second.\n"
                        + "The times are those at which the steps begin, here and in strip.png, which shows the middle of each.\n\n");
        for (RunStep step : run.steps()) {
            String time = TimeLabel.of(run.rate().secondsOf(step.firstFrame()));
            lines.append(String.format(Locale.ROOT, "%8s  %-30s %s%n", time, step.caption(), step.sight()));
        }
        return lines.toString();
    }
}

package org.duskloom.engine.proof;

import java.io.IOException;
import java.util.Optional;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.find.FindRun;
import org.duskloom.engine.format.StreamKind;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.RunInfo;

/** {@code steps.txt}: what a person should see in each step of a proof, when, and how much it lights. */
public final class StepsKind implements StreamKind {
    private final Optional<String> guide;

    /** That of a proof. */
    public StepsKind() {
        this(Optional.empty());
    }

    /** That of a run by which pixels tell a camera their numbers, with what to do. */
    public StepsKind(FindRun run) {
        this(Optional.of(FindGuide.of(run)));
    }

    private StepsKind(Optional<String> guide) {
        this.guide = guide;
    }

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
            private StepsText text;

            @Override
            public void begin(RunInfo run) {
                text = new StepsText(run, guide);
            }

            @Override
            public void take(FrameBatch frames) {
                text.count(frames);
            }

            @Override
            public void finish() throws IOException {
                file.writeWhole(text.lines());
            }

            @Override
            public void close() {
                file.close();
            }
        };
    }
}

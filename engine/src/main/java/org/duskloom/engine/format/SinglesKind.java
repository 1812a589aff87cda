package org.duskloom.engine.format;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.RunInfo;

/** {@code frames/00000000.rgb} and so on: a file for each frame, named by its number in the show. */
public final class SinglesKind implements OutputKind {
    private static final String FOLDER = "frames/";
    private static final Pattern MEMBERS = Pattern.compile("[0-9]{8,}\\.rgb");

    /** There is nothing to choose. */
    public SinglesKind() {}

    @Override
    public String word() {
        return "singles";
    }

    @Override
    public String help() {
        return "a file for each frame, 00000000.rgb and so on, each like a piece of frames.rgb";
    }

    @Override
    public List<String> files() {
        return List.of(FOLDER);
    }

    @Override
    public long bytes(RunInfo run) {
        return Math.multiplyExact(run.frames().count(), (long) run.frameBytes());
    }

    @Override
    public Optional<Seam> seam(String name) {
        return name.equals(FOLDER) ? Optional.of(new Seam.Singles(SinglesSink::fileName, MEMBERS)) : Optional.empty();
    }

    @Override
    public FrameSink open(OutputFolder folder) throws IOException {
        return new SinglesSink(folder.openFolder(FOLDER, MEMBERS), FOLDER);
    }
}

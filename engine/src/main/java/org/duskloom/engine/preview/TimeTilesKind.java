package org.duskloom.engine.preview;

import java.io.IOException;
import java.util.List;
import java.util.regex.Pattern;
import org.duskloom.engine.format.OutputFolder;
import org.duskloom.engine.format.OutputKind;
import org.duskloom.engine.frame.FrameSink;

/** {@code time/}: {@link TimeTiles} of a run, which are drawn when it is over. */
public final class TimeTilesKind implements OutputKind {
    private static final String FOLDER = "time/";
    private static final Pattern MEMBERS = Pattern.compile("[0-9]+-[0-9]+\\.png");

    /** There is nothing to choose. */
    public TimeTilesKind() {}

    @Override
    public String word() {
        return "tiles";
    }

    @Override
    public String help() {
        return "pictures with a row for every pixel and a column for each frame";
    }

    @Override
    public List<String> files() {
        return List.of(FOLDER);
    }

    @Override
    public boolean holdsFrames() {
        return false;
    }

    /** {@inheritDoc} As a whole, so that no picture is left of pixels that are there no more. */
    @Override
    public FrameSink open(OutputFolder folder) throws IOException {
        return new TimeTiles(folder.openFolder(FOLDER, MEMBERS));
    }
}

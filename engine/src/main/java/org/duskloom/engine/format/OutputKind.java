package org.duskloom.engine.format;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.RunInfo;

/**
 * One kind of output that a run can make: a word by which it is asked for, the files it writes, and how its sink is
 * made. The commands know kinds only by these; what a kind needs beyond the frames it gets when it is made, or when its
 * sink begins.
 */
public interface OutputKind {
    /** The word by which it is asked for. */
    String word();

    /** What it is, in a sentence for the help. */
    String help();

    /** The names of its files in the folder, where they are known before a run; a folder of files ends with a slash. */
    List<String> files();

    /**
     * Whether it holds the light of all frames, so that a player or another program can go on from it; pictures do not.
     */
    default boolean holdsFrames() {
        return true;
    }

    /** Whether it can only be written of a display that says which prop hangs on which port. */
    default boolean needsPorts() {
        return false;
    }

    /**
     * How many bytes its files take, so that a disk that is too small is found out before; 0 where that is little or
     * not known.
     */
    default long bytes(RunInfo run) {
        return 0;
    }

    /**
     * How one of its files is put together from those of runs that follow each other.
     *
     * @param file its name as a manifest has it
     * @return nothing if it is not of this kind, or cannot be put together
     */
    default Optional<Seam> seam(String file) {
        return Optional.empty();
    }

    /**
     * Makes its sink, and begins the files whose names are known.
     *
     * @throws IOException if a file cannot be begun
     */
    FrameSink open(OutputFolder folder) throws IOException;
}

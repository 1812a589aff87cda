package org.duskloom.cli;

import java.nio.file.Path;
import org.duskloom.engine.file.IfExists;

/** What the options that name outputs mean, for every command alike. */
final class OutputNames {
    private static final Path STANDARD_OUTPUT = Path.of("-");

    private OutputNames() {}

    /** Whether a file is the sign for the standard output. */
    static boolean isStandardOutput(Path file) {
        return file.equals(STANDARD_OUTPUT);
    }

    /** What {@code --force} says about files that stand there already. */
    static IfExists ifExists(boolean force) {
        return force ? IfExists.REPLACE : IfExists.REFUSE;
    }

    /**
     * Refuses the sign for the standard output, which is no folder.
     *
     * @param option how the folder is asked for
     * @throws MisuseException if the folder is that sign
     */
    static void requireFolder(String option, Path folder) {
        if (isStandardOutput(folder)) {
            throw new MisuseException(
                    option + ": - is the standard output, and several files are written; name a folder"
                            + " (./- is one called -)");
        }
    }
}

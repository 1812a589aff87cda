package org.duskloom.cli;

import java.nio.file.Path;

/** The folder that a command writes several files into. */
final class FolderOutput {
    private static final Path STANDARD_OUTPUT = Path.of("-");

    private FolderOutput() {}

    /**
     * Refuses the sign for the standard output, which is no folder.
     *
     * @param option how the folder is asked for
     * @throws MisuseException if the folder is that sign
     */
    static void require(String option, Path folder) {
        if (folder.equals(STANDARD_OUTPUT)) {
            throw new MisuseException(
                    option + ": - is the standard output, and several files are written; name a folder"
                            + " (./- is one called -)");
        }
    }
}

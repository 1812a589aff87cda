package org.duskloom.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.duskloom.engine.file.IfExists;

/** What the options that name outputs mean, for every command alike. */
final class OutputNames {
    private static final Path STANDARD_OUTPUT = Path.of("-");

    /**
     * With an ending of what commands write, or of a page for printing. Folders called {@code garden.2} and the like
     * have none of these.
     */
    private static final Pattern NAME_OF_FILE =
            Pattern.compile("(.*[^/\\\\])\\.(?i:csv|json|html|rgb|npy|pcap|bin|png|svg|txt|y4m|pdf)");

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
     * Refuses the sign for the standard output, which is no folder, and the name of a file: nobody wants a folder
     * called {@code show.rgb} with another file in it. One that stands there is meant.
     *
     * @param option how the folder is asked for
     * @throws MisuseException if the folder is that sign, or called like a file
     */
    static void requireFolder(String option, Path folder) {
        if (isStandardOutput(folder)) {
            throw new MisuseException(
                    option + ": - is the standard output, and several files are written; name a folder"
                            + " (./- is one called -)");
        }
        requireNoFile(option, folder, "");
    }

    /**
     * Refuses the name of a file where a folder is needed, unless there is such a folder.
     *
     * @param otherwise how a file may be had, with what stands before it; else empty
     */
    static void requireNoFile(String option, Path folder, String otherwise) {
        Matcher file = NAME_OF_FILE.matcher(folder.toString());
        if (file.matches() && !Files.isDirectory(folder)) {
            throw new MisuseException(option + " takes a folder, for several files, and " + folder
                    + " is called like one file; name a folder, such as " + file.group(1) + otherwise
                    + " (if a folder shall be called so, make it before)");
        }
    }
}

package org.duskloom.cli;

import java.nio.file.Path;
import java.util.Optional;
import org.duskloom.engine.problem.Problems;
import picocli.CommandLine.Parameters;

/** The display that a command works on. */
final class DisplayOperand {
    @Parameters(paramLabel = "DISPLAY.json", description = "The display.")
    private Path file;

    DisplayOperand() {}

    /** As the user named it. */
    Path file() {
        return file;
    }

    /** Reads the display, and lists all problems; nothing if one of them is an error. */
    Optional<LoadedDisplay> load(Streams streams) {
        Problems problems = new Problems();
        Optional<LoadedDisplay> display = LoadedDisplay.load(file, problems);
        ProblemPrinter.print(problems, streams);
        return display;
    }
}

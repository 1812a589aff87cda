package org.duskloom.cli;

import java.nio.file.Path;
import java.util.Optional;
import org.duskloom.engine.problem.Problems;
import picocli.CommandLine.Parameters;

/** The show that a command works on. */
final class ShowOperand {
    @Parameters(paramLabel = "SHOW.json", description = "The timeline; it names the file of the pixels.")
    private Path file;

    ShowOperand() {}

    Path file() {
        return file;
    }

    /** Reads and compiles the show, and lists all problems; nothing if one of them is an error. */
    Optional<LoadedShow> load(Streams streams) {
        Problems problems = new Problems();
        Optional<LoadedShow> show = LoadedShow.load(file, problems);
        ProblemPrinter.print(problems, streams);
        return show;
    }
}

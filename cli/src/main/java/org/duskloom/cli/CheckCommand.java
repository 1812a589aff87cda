package org.duskloom.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.duskloom.engine.problem.Problems;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code duskloom check}. */
@Command(
        name = "check",
        sortOptions = false,
        sortSynopsis = false,
        header = "Read a show or a display and list everything that is wrong with it.",
        description = {
            "",
            "Lists all problems of the timeline and of the pixels, each with its line and column, and warns of what"
                    + " mostly is a slip, such as two props in one place. A file without errors is summed up; nothing"
                    + " is rendered.",
            ""
        },
        footer = {"", "Examples:", "  duskloom check garden/show.json", "  duskloom check garden/display.json"})
final class CheckCommand implements Callable<Integer> {
    private final Streams streams;

    @Parameters(paramLabel = "FILE.json", description = "A timeline or a display.")
    private Path file;

    @Mixin
    private HelpOptions helpOptions;

    CheckCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() throws IOException {
        Problems problems = new Problems();
        Optional<String> summary = CheckedFile.summary(file, problems);
        ProblemPrinter.print(problems, streams);
        if (summary.isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        streams.print(summary.get());
        return ExitCode.DONE;
    }
}

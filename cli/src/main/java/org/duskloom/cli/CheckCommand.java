package org.duskloom.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.render.DarkSearch;
import org.duskloom.engine.text.Quoted;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code duskloom check}. */
@Command(
        name = "check",
        sortOptions = false,
        sortSynopsis = false,
        header = "Read shows and displays and list everything that is wrong with them.",
        description = {
            "",
            "Lists all problems of the timeline and of the pixels, each with its line and column, and warns of what"
                    + " mostly is a slip, such as two props in one place. A file without errors is summed up. Given with"
                    + " the shows that are played on it, a display is checked for groups that none of them uses, too.",
            "",
            "Some frames of every cue are rendered, to tell what stays dark: cues that paint nothing, are hidden or"
                    + " change nothing, members that a cue never lights, and pixels that no cue lights.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  duskloom check garden/show.json",
            "  duskloom check garden/display.json",
            "  duskloom check garden/display.json garden/show.json",
            "  duskloom check garden/show.json --times",
            "      Where every cue begins and ends."
        })
final class CheckCommand implements Callable<Integer> {
    private final Streams streams;

    @Parameters(arity = "1..*", paramLabel = "FILE.json", description = "A timeline or a display.")
    private List<Path> files;

    @Option(names = "--fast", description = "Render nothing, and so do not tell what stays dark.")
    private boolean fast;

    @Option(
            names = "--times",
            description =
                    "List where every cue of the shows begins and ends, instead of the sums; with --fast at once, without telling"
                            + " what stays dark.")
    private boolean times;

    @Option(names = "--json", description = "With --times: the same as JSON, for programs.")
    private boolean json;

    @Mixin
    private HelpOptions helpOptions;

    CheckCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() throws IOException {
        if (json && !times) {
            throw new MisuseException("--json goes with --times");
        }
        Problems problems = new Problems();
        List<CheckedFile> checked = new ArrayList<>();
        files.forEach(file -> CheckedFile.read(file, problems).ifPresent(checked::add));
        UnusedGroups.warn(checked, problems);
        if (!fast && !problems.hasErrors()) {
            warnOfDarkness(checked, problems);
        }
        ProblemPrinter.print(problems, streams);
        if (problems.hasErrors()) {
            return ExitCode.BAD_INPUT;
        }
        if (times) {
            refuseTimesOfDisplays(checked);
            printTimes(checked);
            return ExitCode.DONE;
        }
        streams.print(checked.stream().map(this::summary).collect(Collectors.joining(System.lineSeparator())));
        return ExitCode.DONE;
    }

    private void warnOfDarkness(List<CheckedFile> checked, Problems problems) throws IOException {
        for (CheckedFile file : checked) {
            if (file.show().isPresent()) {
                LoadedShow loaded = file.show().get();
                ProgressBar.during(streams, progress -> {
                    DarkSearch.warn(
                            loaded.plan(),
                            loaded.show().map(),
                            loaded.show().timeline().pixels().file().location(),
                            problems,
                            progress);
                    return true;
                });
            }
        }
    }

    private void refuseTimesOfDisplays(List<CheckedFile> checked) {
        if (checked.stream().noneMatch(file -> file.show().isPresent())) {
            throw new MisuseException("--times lists the cues of shows, and "
                    + Quoted.plain(files.get(0).toString())
                    + (files.size() == 1 ? " is a display, which has none" : " and the others are displays"));
        }
    }

    private void printTimes(List<CheckedFile> checked) throws IOException {
        CueTimesReport report = new CueTimesReport(
                checked.stream().flatMap(file -> file.show().stream()).toList());
        if (json) {
            streams.print(report.json(), StandardCharsets.UTF_8);
        } else {
            streams.print(report.table());
        }
    }

    private String summary(CheckedFile file) {
        String heading = files.size() == 1 ? "" : Quoted.plain(file.path().toString()) + ":" + System.lineSeparator();
        return heading + file.summary();
    }
}

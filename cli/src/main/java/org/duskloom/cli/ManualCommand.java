package org.duskloom.cli;

import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code duskloom manual}. */
@Command(
        name = "manual",
        sortOptions = false,
        sortSynopsis = false,
        header = "Write the help of all commands as a page of the manual.",
        description = {"", "The page is for the program man, which shows it, prints it and looks for words in it.", ""},
        footer = {
            "",
            "Examples:",
            "  duskloom manual | man -l -",
            "      Read it.",
            "  duskloom manual -o ~/.local/share/man/man1/duskloom.1",
            "      Put it where man finds it, on most systems: man duskloom."
        })
final class ManualCommand implements Callable<Integer> {
    private final Streams streams;

    @Mixin
    private TextOutput output;

    @Mixin
    private HelpOptions helpOptions;

    ManualCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() throws IOException {
        output.write(ManualPage.of(new Program(streams).whole(), Version.number()), "the page of the manual", streams);
        return ExitCode.DONE;
    }
}

package org.duskloom.cli;

import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code duskloom completion}. */
@Command(
        name = "completion",
        sortOptions = false,
        sortSynopsis = false,
        header = "Write what a shell needs to complete commands and options.",
        description = {
            "",
            "The script is for bash and zsh: read into the shell, it has the key Tab complete the commands of duskloom, their"
                    + " options, names of effects and of kinds of files. It is made for the version that writes it; write it"
                    + " anew after an update.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  duskloom completion -o ~/.local/share/bash-completion/completions/duskloom",
            "      For bash with the package bash-completion, from the next window on.",
            "  duskloom completion -o ~/.duskloom-completion",
            "      For zsh, and for bash without that package; then put the line",
            "      'source ~/.duskloom-completion' at the end of ~/.zshrc or ~/.bashrc."
        })
final class CompletionCommand implements Callable<Integer> {
    private final Streams streams;

    @Mixin
    private TextOutput output;

    @Mixin
    private HelpOptions helpOptions;

    CompletionCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() throws IOException {
        String script = AutoComplete.bash("duskloom", new Program(streams).whole());
        output.write(script, "completion for bash and zsh", streams);
        return ExitCode.DONE;
    }
}

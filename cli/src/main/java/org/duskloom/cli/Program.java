package org.duskloom.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The program: the list of commands, and what it does without one. */
@Command(
        name = "duskloom",
        sortOptions = false,
        synopsisSubcommandLabel = "COMMAND",
        description = "Turns a map of pixels and a timeline of cues into frames of light.",
        versionProvider = Version.class,
        commandListHeading = "%nCommands:%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "Examples:",
            "  duskloom check garden/show.json",
            "  duskloom render garden/show.json -o out --strip",
            "  duskloom effects sweep",
            "",
            "'duskloom COMMAND --help' says more about a command.",
            "",
            "Exit codes: 0 done, 1 failed, 2 wrong use, 3 wrong input."
        })
final class Program implements Runnable {
    private final Streams streams;

    @Option(
            names = {"-V", "--version"},
            versionHelp = true,
            description = "Show the version.")
    private boolean version;

    @Mixin
    private HelpOptions helpOptions;

    Program(Streams streams) {
        this.streams = streams;
    }

    /**
     * Does what the arguments say.
     *
     * @return the exit code
     */
    int run(String... args) {
        try {
            StringWriter helpText = new StringWriter();
            int code = commandLine().setOut(new PrintWriter(helpText)).execute(args);
            streams.print(helpText.toString());
            return code;
        } catch (OutputLostException lost) {
            return FaultReport.lost(lost, streams);
        } catch (OutOfMemoryError tooMuch) {
            return FaultReport.outOfMemory(streams);
        }
    }

    /** Without a command there is nothing to do. */
    @Override
    public void run() {
        throw new MisuseException("no command was given");
    }

    private CommandLine commandLine() {
        Ansi ansi = streams.traits().outColored() ? Ansi.ON : Ansi.OFF;
        return new CommandLine(this)
                .addSubcommand(new RenderCommand(streams))
                .addSubcommand(new StripCommand(streams))
                .addSubcommand(new CheckCommand(streams))
                .addSubcommand(new EffectsCommand(streams))
                .addSubcommand(new MapCommand(streams))
                .addSubcommand(new ProofCommand(streams))
                .addSubcommand(new SheetCommand(streams))
                .setColorScheme(Help.defaultColorScheme(ansi))
                .setParameterExceptionHandler(new UsageReport(streams))
                .setExecutionExceptionHandler(new FaultReport(streams));
    }
}

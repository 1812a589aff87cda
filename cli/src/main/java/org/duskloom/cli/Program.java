package org.duskloom.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
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
            "  duskloom new garden",
            "  duskloom check garden/show.json",
            "  duskloom render garden/show.json -o out --strip",
            "  duskloom effects sweep",
            "",
            "'duskloom COMMAND --help' says more about a command.",
            "",
            "Exit codes: 0 done, 1 failed, 2 wrong use, 3 wrong input."
        })
final class Program implements Runnable {
    private static final String SHORT_VERSION = "-V";
    private static final String LONG_VERSION = "--version";

    private final Streams streams;

    @Option(
            names = {SHORT_VERSION, LONG_VERSION},
            versionHelp = true,
            description = "Show the version.")
    private boolean version;

    @Mixin
    private HelpOptions helpOptions;

    Program(Streams streams) {
        this.streams = streams;
    }

    /**
     * The commands in the order of the help. Reading one by reflection takes a while, so only those needed are made.
     */
    private static Map<String, Function<Streams, Object>> commands() {
        Map<String, Function<Streams, Object>> commands = new LinkedHashMap<>();
        commands.put("new", NewCommand::new);
        commands.put("render", RenderCommand::new);
        commands.put("strip", StripCommand::new);
        commands.put("film", FilmCommand::new);
        commands.put("watch", WatchCommand::new);
        commands.put("check", CheckCommand::new);
        commands.put("effects", EffectsCommand::new);
        commands.put("schema", SchemaCommand::new);
        commands.put("map", MapCommand::new);
        commands.put("proof", ProofCommand::new);
        commands.put("locate", LocateCommand::new);
        commands.put("sheet", SheetCommand::new);
        commands.put("report", ReportCommand::new);
        commands.put("survey", SurveyCommand::new);
        commands.put("listen", ListenCommand::new);
        commands.put("send", SendCommand::new);
        commands.put("join", JoinCommand::new);
        commands.put("diff", DiffCommand::new);
        commands.put("completion", CompletionCommand::new);
        commands.put("manual", ManualCommand::new);
        return commands;
    }

    /**
     * Does what the arguments say.
     *
     * @return the exit code
     */
    int run(String... args) {
        String[] asked = withHelpAsOption(args);
        try {
            StringWriter helpText = new StringWriter();
            int code = commandLine(asked).setOut(new PrintWriter(helpText)).execute(asked);
            streams.print(helpText.toString());
            return code;
        } catch (OutputLostException lost) {
            return FaultReport.lost(lost, streams);
        } catch (OutOfMemoryError tooMuch) {
            return FaultReport.outOfMemory(streams);
        }
    }

    /**
     * {@code help} and {@code help COMMAND} mean {@code --help} and {@code COMMAND --help}; of no other word there is
     * help.
     */
    private static String[] withHelpAsOption(String[] args) {
        if (args.length == 0 || !args[0].equals("help")) {
            return args;
        }
        List<String> words = Arrays.stream(args)
                .skip(1)
                .filter(word -> !word.equals("--help"))
                .toList();
        if (!words.isEmpty() && !commands().containsKey(words.get(0))) {
            return words.toArray(String[]::new);
        }
        return Stream.concat(words.stream(), Stream.of("--help")).toArray(String[]::new);
    }

    /** Without a command there is nothing to do. */
    @Override
    public void run() {
        throw new MisuseException("no command was given");
    }

    /** The program with all its commands, for who describes it. */
    CommandLine whole() {
        return commandLine(new String[0]);
    }

    private CommandLine commandLine(String[] args) {
        Ansi ansi = streams.traits().outColored() ? Ansi.ON : Ansi.OFF;
        CommandLine program = new CommandLine(this);
        wanted(args).forEach(program::addSubcommand);
        TypedNumber.in(program);
        program.registerConverter(Path.class, new TypedPath());
        return program.setColorScheme(Help.defaultColorScheme(ansi))
                .setParameterExceptionHandler(new UsageReport(streams))
                .setExecutionExceptionHandler(new FaultReport(streams));
    }

    /** The command that is called; all of them where none is, for help and for what may have been meant. */
    private List<Object> wanted(String[] args) {
        if (args.length == 1 && (args[0].equals(SHORT_VERSION) || args[0].equals(LONG_VERSION))) {
            return List.of();
        }
        Map<String, Function<Streams, Object>> commands = commands();
        if (args.length > 0 && commands.containsKey(args[0])) {
            return List.of(commands.get(args[0]).apply(streams));
        }
        return commands.values().stream().map(command -> command.apply(streams)).toList();
    }
}

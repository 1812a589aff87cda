package org.duskloom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.duskloom.engine.problem.NearestName;
import org.duskloom.engine.text.Quoted;
import picocli.CommandLine;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says what is wrong with the command line, what may have been meant, and where to read on. */
final class UsageReport implements IParameterExceptionHandler {
    private final Streams streams;

    UsageReport(Streams streams) {
        this.streams = streams;
    }

    @Override
    public int handleParseException(ParameterException fault, String[] args) {
        return tell(fault.getCommandLine(), message(fault, fault.getCommandLine(), List.of(args)), streams);
    }

    /** The same for what only the command itself could find out. */
    static int tell(CommandLine command, String message, Streams streams) {
        String name = command.getCommandSpec().qualifiedName();
        streams.tell(name + ": " + message);
        streams.tell("'" + name + " --help' shows what it takes.");
        return ExitCode.USAGE;
    }

    private static String message(ParameterException fault, CommandLine command, List<String> args) {
        if (fault instanceof UnmatchedArgumentException unmatched) {
            Optional<String> joined = withoutBlank(unmatched, args);
            if (joined.isPresent()) {
                return "there is a blank after a comma; write " + joined.get();
            }
            return unmatched(unmatched, command)
                    + nearest(unmatched)
                            .map(name -> "did you mean " + name + "?")
                            .or(() -> oneAtATime(unmatched, command, args))
                            .map(hint -> "; " + hint)
                            .orElse("");
        }
        if (fault instanceof OverwrittenOptionException again && again.getOverwritten() instanceof OptionSpec option) {
            return twice(option, args);
        }
        String message = fault.getMessage();
        if (message.contains(TypedPath.UNKNOWN_LETTERS)) {
            return message.substring(message.indexOf(TypedPath.UNKNOWN_LETTERS));
        }
        if (fault.getArgSpec() instanceof OptionSpec option && message.endsWith("is not a boolean")) {
            return option.longestName() + " takes no value: write it alone, or leave it out";
        }
        return message.substring(0, 1).toLowerCase(Locale.ROOT) + message.substring(1);
    }

    private static String twice(OptionSpec option, List<String> args) {
        List<String> values = new ArrayList<>();
        for (int i = 0; i < args.size(); i++) {
            valueAt(option, args, i).ifPresent(values::add);
        }
        String name = option.longestName();
        if (option.arity().max() == 0 || values.size() < 2) {
            return name + " stands twice; once is enough";
        }
        return name + " stands twice, with " + Quoted.plain(values.get(0)) + " and with " + Quoted.plain(values.get(1))
                + "; which of them is meant?";
    }

    /** The value that the word at a place gives the option: behind a blank or an =, or close behind a short name. */
    private static Optional<String> valueAt(OptionSpec option, List<String> args, int place) {
        String word = args.get(place);
        for (String name : option.names()) {
            if (word.equals(name)) {
                return place + 1 < args.size() ? Optional.of(args.get(place + 1)) : Optional.empty();
            }
            if (word.startsWith(name + "=")) {
                return Optional.of(word.substring(name.length() + 1));
            }
            if (!name.startsWith("--") && word.startsWith(name)) {
                return Optional.of(word.substring(name.length()));
            }
        }
        return Optional.empty();
    }

    /** Of what the parser holds for likely the nearest, if it is near; else all of it. */
    private static Optional<String> nearest(UnmatchedArgumentException fault) {
        List<String> likely = fault.getSuggestions();
        return NearestName.of(fault.getUnmatched().get(0), likely)
                .or(() -> Optional.of(String.join(" or ", likely)).filter(names -> !names.isEmpty()));
    }

    /** A list that has fallen apart at a blank after a comma, put together. */
    private static Optional<String> withoutBlank(UnmatchedArgumentException fault, List<String> args) {
        int place = args.indexOf(fault.getUnmatched().get(0));
        if (place < 1 || !args.get(place - 1).endsWith(",")) {
            return Optional.empty();
        }
        int end = place + 1;
        while (end < args.size() && args.get(end - 1).endsWith(",")) {
            end++;
        }
        return Optional.of(String.join("", args.subList(place - 1, end)));
    }

    /** What to do with several values behind an option that may be given several times, with one each. */
    private static Optional<String> oneAtATime(
            UnmatchedArgumentException fault, CommandLine command, List<String> args) {
        int place = args.indexOf(fault.getUnmatched().get(0));
        int before = place - 1;
        while (before >= 0 && !args.get(before).startsWith("-")) {
            before--;
        }
        if (before < 0 || before == place - 1) {
            return Optional.empty();
        }
        return Optional.ofNullable(command.getCommandSpec().findOption(args.get(before)))
                .filter(OptionSpec::isMultiValue)
                .map(option -> option.longestName()
                        + " takes one at a time: type it before each, and put a name with blanks in quotes");
    }

    private static String unmatched(UnmatchedArgumentException fault, CommandLine command) {
        String first = fault.getUnmatched().get(0);
        if (first.startsWith("-")) {
            return "there is no option " + first;
        }
        return command.getSubcommands().isEmpty() ? "'" + first + "' is one too many" : "there is no command " + first;
    }
}

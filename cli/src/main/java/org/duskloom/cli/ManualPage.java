package org.duskloom.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * The page of the manual, in the macros of man(7): everything that the help of all commands says, from the same
 * declarations. There is no date in it, so it is the same in every build.
 */
final class ManualPage {
    private final StringBuilder roff = new StringBuilder();
    private final CommandLine program;

    private ManualPage(CommandLine program) {
        this.program = program;
    }

    /** The page of a program with all its commands. */
    static String of(CommandLine program, String version) {
        return new ManualPage(program).page(version);
    }

    private String page(String version) {
        CommandSpec spec = program.getCommandSpec();
        String name = spec.name();
        line(".TH " + name.toUpperCase(Locale.ROOT) + " 1 \"\" \"" + escaped(name + " " + version)
                + "\" \"User Commands\"");
        // Texts are ragged, and words are not divided: names of files and options stand in them.
        line(".ad l");
        line(".nh");
        section("NAME");
        text(name + " - " + String.join(" ", spec.usageMessage().description()));
        section("SYNOPSIS");
        synopsis(program);
        section("OPTIONS");
        options(spec);
        section("COMMANDS");
        program.getSubcommands().values().forEach(this::command);
        closing(spec);
        return roff.toString();
    }

    private void command(CommandLine command) {
        CommandSpec spec = command.getCommandSpec();
        line(".SS \"" + escaped(spec.name()) + "\"");
        text(String.join(" ", spec.usageMessage().header()));
        line(".PP");
        synopsis(command);
        description(spec.usageMessage().description());
        spec.positionalParameters().stream()
                .filter(each -> !each.hidden())
                .forEach(each -> item(label(each), each.description()));
        options(spec);
        paragraphs(spec.usageMessage().footer());
    }

    /** What the help ends with: a line with a colon is a heading here. */
    private void closing(CommandSpec spec) {
        List<String> examples = new ArrayList<>();
        for (String footer : spec.usageMessage().footer()) {
            if (footer.startsWith("Exit codes: ")) {
                section("EXIT STATUS");
                text(footer);
            } else {
                examples.add(footer);
            }
        }
        section("EXAMPLES");
        paragraphs(
                examples.stream().filter(each -> !each.startsWith("Examples:")).toArray(String[]::new));
    }

    private void synopsis(CommandLine command) {
        String synopsis = new Help(command.getCommandSpec(), Help.defaultColorScheme(Ansi.OFF))
                .synopsis(0)
                .strip()
                .replaceAll("\\s+", " ");
        line(".B " + escaped(command.getCommandSpec().qualifiedName()));
        line(escaped(synopsis.substring(command.getCommandSpec().qualifiedName().length())
                .strip()));
    }

    private void options(CommandSpec spec) {
        spec.options().stream().filter(each -> !each.hidden()).forEach(each -> item(label(each), each.description()));
    }

    private static String label(OptionSpec option) {
        String names = Arrays.stream(option.names())
                .map(name -> "\\fB" + escaped(name) + "\\fR")
                .collect(Collectors.joining(", "));
        boolean takesValue = option.arity().max() > 0;
        String value = takesValue ? "\\fI" + escaped(option.paramLabel()) + "\\fR" : "";
        return names + (value.isEmpty() ? "" : option.arity().min() == 0 ? "[=" + value + "]" : "=" + value);
    }

    private static String label(PositionalParamSpec parameter) {
        return "\\fI" + escaped(parameter.paramLabel()) + "\\fR";
    }

    private void item(String label, String[] description) {
        line(".TP");
        line(label);
        text(String.join(" ", description));
    }

    /** Lines that are set in are rows of a table, and stand as they are. */
    private void description(String... lines) {
        boolean table = false;
        for (String each : lines) {
            if (each.startsWith("  ") != table) {
                table = !table;
                line(table ? ".PP\n.RS 4\n.nf" : ".fi\n.RE\n.PP");
            }
            if (table) {
                line(escaped(plain(each).substring(2)));
            } else {
                paragraphs(each);
            }
        }
        if (table) {
            line(".fi\n.RE");
        }
    }

    /** Lines of the help: an empty one ends a paragraph, one that is set in is typed as it stands. */
    private void paragraphs(String... lines) {
        for (String each : lines) {
            if (each.isBlank()) {
                line(".PP");
            } else if (each.startsWith("      ")) {
                line(".RS 8");
                text(each.strip());
                line(".RE");
            } else if (each.startsWith("  ")) {
                line(".PP");
                line(".RS 4");
                line(".B \"" + escaped(plain(each.strip())).replace("\"", "\\(dq") + "\"");
                line(".RE");
            } else {
                text(each);
            }
        }
    }

    private void section(String title) {
        line(".SH " + title);
    }

    private void text(String text) {
        line(escaped(plain(text)));
    }

    /** Texts of the help are formats: two signs of per cent are one. */
    private static String plain(String text) {
        return String.format(Locale.ROOT, text);
    }

    /** What would be a request or an escape is neither; ASCII alone, as pages are read in any locale. */
    private static String escaped(String text) {
        StringBuilder escaped = new StringBuilder(text.startsWith(".") || text.startsWith("'") ? "\\&" : "");
        text.codePoints().forEach(point -> {
            switch (point) {
                case '\\' -> escaped.append("\\e");
                case '-' -> escaped.append("\\-");
                case '\'' -> escaped.append("\\(aq");
                case '^' -> escaped.append("\\(ha");
                case '~' -> escaped.append("\\(ti");
                case '`' -> escaped.append("\\(ga");
                default ->
                    escaped.append(
                            point < 0x7F ? Character.toString(point) : String.format(Locale.ROOT, "\\[u%04X]", point));
            }
        });
        return escaped.toString();
    }

    private void line(String line) {
        roff.append(line).append('\n');
    }
}

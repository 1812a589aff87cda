package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** The page of the manual says what the help says, and the programs that show such pages have nothing against it. */
class ManualCommandTest {
    @TempDir
    private Path folder;

    /** The sections that man-pages(7) of the Linux man-pages project names for a command, in its order. */
    @Test
    void hasTheUsualSections() {
        List<String> sections = Ran.with("manual")
                .out()
                .lines()
                .filter(line -> line.startsWith(".SH "))
                .map(line -> line.substring(4))
                .toList();
        assertThat(sections).containsExactly("NAME", "SYNOPSIS", "OPTIONS", "COMMANDS", "EXIT STATUS", "EXAMPLES");
        assertThat(Ran.with("manual").out())
                .startsWith(".TH DUSKLOOM 1 \"\" \"duskloom ")
                .isASCII();
    }

    /** Every line is a request of man(7) or of groff that is meant, or text. */
    @Test
    void usesNoRequestByAccident() {
        assertThat(Ran.with("manual").out().lines().filter(line -> line.startsWith(".") || line.startsWith("'")))
                .allMatch(line -> line.matches("\\.(TH|SH|SS|PP|TP|RS|RE|B|ad|nh|nf|fi)( .*)?"));
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void saysAllThatTheHelpSays() throws Exception {
        String page = shown(Ran.with("manual").out());
        Map<String, CommandLine> commands =
                new Program(Streams.ofProcess()).whole().getSubcommands();
        assertThat(commands).hasSizeGreaterThan(15);
        for (CommandLine command : commands.values()) {
            CommandSpec spec = command.getCommandSpec();
            assertThat(page).as(spec.name()).contains(words(spec.usageMessage().header()));
            for (OptionSpec option : spec.options()) {
                assertThat(page).as(spec.name()).contains(option.longestName()).contains(words(option.description()));
            }
            Stream.concat(
                            Arrays.stream(spec.usageMessage().description()),
                            Arrays.stream(spec.usageMessage().footer()))
                    .forEach(line -> assertThat(page).as(spec.name()).contains(words(line)));
        }
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void groffHasNothingAgainstIt() throws Exception {
        Installed.require("groff", "--version");
        Path page = Files.writeString(
                folder.resolve("duskloom.1"), Ran.with("manual").out());
        assertThat(run("groff", "-ww", "-z", "-man", "-Tutf8", page.toString())).isEmpty();
    }

    /** Dots, quotes and backslashes that would be requests or escapes are shown as they stand. */
    @Test
    @DisabledOnOs(OS.WINDOWS)
    void whatLooksLikeARequestIsText() throws Exception {
        CommandSpec spec = CommandSpec.create().name("x");
        spec.usageMessage()
                .description(".html 'quoted' \\n 100 %% ~/^`a` \u00fcber")
                .footer("  .so /etc/passwd \"it\" \\fB");
        String page = shown(ManualPage.of(new CommandLine(spec), "1"));
        assertThat(page).contains(".html 'quoted' \\n 100 % ~/^`a` \u00fcber").contains(".so /etc/passwd \"it\" \\fB");
    }

    @Test
    void writesTheSameToAFile() throws IOException {
        Path file = folder.resolve("man1/duskloom.1");
        assertThat(Ran.with("manual", "-o", file)).isEqualTo(new Ran(0, "", file + ": the page of the manual\n"));
        assertThat(Files.readString(file)).isEqualTo(Ran.with("manual").out());
        assertThat(Ran.with("manual", "-o", file).code()).isEqualTo(1);
    }

    /** As man shows it, on lines of any length, with single blanks. */
    private String shown(String roff) throws Exception {
        Installed.require("man", "--version");
        Path page = Files.writeString(folder.resolve("page.1"), roff);
        ProcessBuilder man = new ProcessBuilder("man", "-P", "cat", "-l", page.toString());
        man.environment().putAll(Map.of("MANWIDTH", "2000", "LC_ALL", "C.UTF-8", "MAN_KEEP_FORMATTING", ""));
        return run(man).replaceAll(".\b", "")
                .replaceAll("\u001b\\[[0-9;]*m", "")
                .replaceAll("\\s+", " ");
    }

    private static String words(String... text) {
        return String.format(String.join(" ", text)).replaceAll("\\s+", " ").strip();
    }

    private static String run(String... command) throws Exception {
        return run(new ProcessBuilder(command));
    }

    private static String run(ProcessBuilder builder) throws Exception {
        Process process = builder.redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(said).isZero();
        return said;
    }
}

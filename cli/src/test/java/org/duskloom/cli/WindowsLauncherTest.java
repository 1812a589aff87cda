package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * The text of the launcher for Windows, where no test runs: what is known to break there does not stand in it. The
 * rules are those of {@code cmd /?}, {@code set /?} and {@code for /?}; what breaks with other line ends and with
 * exclamation marks is common practice, no source.
 */
class WindowsLauncherTest {
    /** Expansions that give a path; {@code %*} and {@code %errorlevel%} do not. */
    private static final Pattern PATH = Pattern.compile("%~(dp)?0|%[A-Z_]+%|%%~\\$PATH:J");

    private final String text = read("duskloom.cmd");
    private final List<String> commands = text.lines()
            .filter(line -> !line.isBlank() && !line.startsWith("rem "))
            .toList();

    /** Labels may be missed where lines end otherwise, and letters beyond ASCII change with the code page. */
    @Test
    void isPlainTextOfWindows() {
        assertThat(text.replace("\r\n", "")).doesNotContain("\n", "\r").matches("[ -~]*");
        assertThat(text).endsWith("\r\n");
    }

    /** Exclamation marks in a path are only safe while they mean nothing, also where the registry says otherwise. */
    @Test
    void delaysNoExpansion() {
        assertThat(commands.subList(0, 2)).containsExactly("@echo off", "setlocal DisableDelayedExpansion");
        assertThat(text).doesNotContain("!").doesNotContainIgnoringCase("EnableDelayedExpansion");
    }

    /** Blanks and ampersands in a path end it outside of quotes. */
    @Test
    void quotesEveryPath() {
        int paths = 0;
        for (String line : commands) {
            boolean quoted = false;
            for (int i = 0; i < line.length(); i++) {
                quoted ^= line.charAt(i) == '"';
                if (PATH.matcher(line).region(i, line.length()).lookingAt()) {
                    assertThat(quoted).as(line).isTrue();
                    paths++;
                    i = skip(line, i);
                }
            }
            assertThat(quoted).as("quotes of %s", line).isFalse();
        }
        assertThat(paths).isGreaterThan(8);
    }

    /** A closing bracket in a path, as in Program Files (x86), ends a block; call expands what it is given twice. */
    @Test
    void expandsNoPathInABlockOrTwice() {
        assertThat(commands).noneMatch(line -> line.endsWith("(") || line.startsWith(")"));
        assertThat(commands.stream()
                        .filter(line -> line.matches("(?i).*\\bcall\\b.*"))
                        .toList())
                .containsExactly("call mvn -q -B -DskipTests -pl cli -am package 1>&2");
    }

    /** Every label that is gone to is there, and ends what stands before it. */
    @Test
    void goesToLabelsThatAreThere() {
        List<String> labels = commands.stream()
                .filter(line -> line.startsWith(":"))
                .map(line -> line.substring(1))
                .toList();
        assertThat(Pattern.compile("goto (\\w+)")
                        .matcher(text)
                        .results()
                        .map(found -> found.group(1))
                        .collect(Collectors.toSet()))
                .containsExactlyInAnyOrderElementsOf(labels);
        for (String label : labels.subList(1, labels.size())) {
            assertThat(commands.get(commands.indexOf(":" + label) - 1)).startsWith("exit /b ");
        }
    }

    /** The jar of a download is beside the launcher, and only a project is built; Java is called as elsewhere. */
    @Test
    void buildsOnlyAmongTheSources() {
        assertThat(commands)
                .containsSubsequence(
                        "set \"JAR=%~dp0duskloom.jar\"",
                        "if exist \"%~dp0pom.xml\" set \"JAR=%~dp0target\\duskloom.jar\"",
                        "if exist \"%JAR%\" goto run",
                        "if not exist \"%~dp0pom.xml\" goto nojar",
                        "call mvn -q -B -DskipTests -pl cli -am package 1>&2",
                        "\"%JAVA%\" " + optionsElsewhere() + " \"-Dduskloom.command=%~0\" -jar \"%JAR%\" %*",
                        "exit /b %errorlevel%");
    }

    /** What the launcher of the other systems gives Java in any case. */
    private static String optionsElsewhere() {
        var found = Pattern.compile("\nexec \"\\$java\" ([^\"]*) \"-Dduskloom").matcher(read("duskloom"));
        assertThat(found.find()).isTrue();
        return found.group(1).replaceAll("\\\\\n *", "").strip();
    }

    private static int skip(String line, int at) {
        var found = PATH.matcher(line).region(at, line.length());
        return found.lookingAt() ? found.end() - 1 : at;
    }

    private static String read(String launcher) {
        try {
            return Files.readString(Path.of(launcher), StandardCharsets.ISO_8859_1);
        } catch (IOException fault) {
            throw new AssertionError(fault);
        }
    }
}

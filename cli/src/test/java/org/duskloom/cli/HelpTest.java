package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every help text is held against a file that was read and approved by eye. */
class HelpTest {
    @Test
    void ofTheProgram() throws IOException {
        Ran ran = Ran.with("--help");
        assertThat(ran).isEqualTo(new Ran(0, approved("duskloom"), ""));
        assertThat(Ran.with("-h")).isEqualTo(ran);
        assertThat(Ran.with("help")).isEqualTo(ran);
        assertThat(Ran.with("help", "--help")).isEqualTo(ran);
    }

    @Test
    void ofWhatIsNoCommand() {
        Ran ran = Ran.with("help", "rendre");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("rendre").contains("render");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "new",
                "render",
                "strip",
                "film",
                "watch",
                "check",
                "effects",
                "schema",
                "map",
                "proof",
                "sheet",
                "report",
                "survey",
                "listen",
                "send",
                "join",
                "diff",
                "completion",
                "manual"
            })
    void ofACommand(String command) throws IOException {
        Ran ran = Ran.with(command, "--help");
        assertThat(ran).isEqualTo(new Ran(0, approved(command), ""));
        assertThat(Ran.with(command, "-h")).isEqualTo(ran);
        assertThat(Ran.with("help", command)).isEqualTo(ran);
    }

    /** Only where the output takes colour does the help have some. */
    @Test
    void colorsFollowTheOutput() {
        assertThat(Ran.with("--help").out()).doesNotContain("\u001b");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Ran.into(out, new TerminalTraits(true, false, false), "--help");
        assertThat(out.toString(StandardCharsets.UTF_8)).contains("\u001b[");
    }

    /** The version is that of the build, which this module's pom.xml names. */
    @Test
    void versionIsThatOfTheBuild() throws IOException {
        Matcher version = Pattern.compile("<version>([^<]+)</version>").matcher(Files.readString(Path.of("pom.xml")));
        assertThat(version.find()).isTrue();
        Ran expected = new Ran(0, "duskloom " + version.group(1) + "\n", "");
        assertThat(Ran.with("--version")).isEqualTo(expected);
        assertThat(Ran.with("-V")).isEqualTo(expected);
    }

    private static String approved(String command) throws IOException {
        try (InputStream file = HelpTest.class.getResourceAsStream("help-" + command + ".txt")) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}

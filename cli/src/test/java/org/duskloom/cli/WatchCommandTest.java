package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.HttpURLConnection;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the command says, and how it ends. */
class WatchCommandTest {
    private static final String ADDRESS = "http://127\\.0\\.0\\.1:(\\d+)/[A-Za-z0-9_-]{22}/";

    @TempDir
    private Path folder;

    private Path show;

    @BeforeEach
    void write() throws IOException {
        show = Garden.in(folder);
    }

    @Test
    void aShowThatIsNotThereWasNotMeant() {
        Ran ran = Ran.with("watch", folder.resolve("shaw.json")).without(folder);
        assertThat(ran)
                .isEqualTo(new Ran(
                        3, "", "shaw.json: error: there is no such file; did you mean \"show.json\"?\n1 error\n"));
        assertThat(Ran.with("watch", folder).code()).isEqualTo(3);
    }

    /** A show that is half written may become one, these will not. */
    @Test
    void whatIsNoShowWasNotMeant() throws IOException {
        Path display = Path.of("..", "demos", "garden", "display.json");
        Ran ran = Ran.with("watch", display);
        assertThat(ran.err())
                .isEqualTo(display + ":4:15: error: this is a display, not a timeline; give a timeline that names it:"
                        + " \"display\": \"display.json\"\n1 error\n");
        assertThat(ran.code()).isEqualTo(3);
        Path map = Files.writeString(folder.resolve("fence.csv"), "index,x,y\n0,1,2\n");
        assertThat(Ran.with("watch", map).without(folder))
                .isEqualTo(new Ran(
                        3,
                        "",
                        "fence.csv:1:1: error: this is a table, not a timeline or a display; a timeline or a display"
                                + " starts with {\n1 error\n"));
    }

    @ParameterizedTest
    @CsvSource({
        "0, --port is 0; allowed: 1 to 65535",
        "65536, --port is 65536; allowed: 1 to 65535",
        "-1, --port is -1; allowed: 1 to 65535",
        "http, 'http' is not a whole number",
        "99999999999, '99999999999' is too large"
    })
    void aPortThatThereIsNotIsRefused(String port, String said) {
        Ran ran = Ran.with("watch", show, "--port", port);
        assertThat(ran.err()).contains(said);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
    }

    @Test
    void aPortThatIsTakenIsRefused() throws IOException {
        try (ServerSocket other = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"))) {
            Ran ran = Ran.with("watch", show, "--port", other.getLocalPort());
            assertThat(ran.err())
                    .contains("--port " + other.getLocalPort() + " cannot be had: Address already in use; by whom it is"
                            + " taken says  ")
                    .contains(":" + other.getLocalPort() + "'  and without --port any free one is taken\n");
            assertThat(ran.code()).isEqualTo(2);
            assertThat(ran.out()).isEmpty();
        }
    }

    @Test
    void whatIsNotThereCannotBeSeen() {
        Ran ran = Ran.with("watch", show, "--on", "daisey-1");
        assertThat(ran).isEqualTo(new Ran(2, "", """
                        duskloom watch: --on: there is no prop and no group "daisey-1"; did you mean "daisy-1"?
                        'duskloom watch --help' shows what it takes.
                        """));
    }

    @Test
    void twoShowsAreOneTooMany() {
        assertThat(Ran.with("watch", show, show).code()).isEqualTo(2);
        assertThat(Ran.with("watch").code()).isEqualTo(2);
    }

    /** A signal is how one ends it; so it has not failed. */
    @ParameterizedTest
    @EnabledOnOs(OS.LINUX)
    @ValueSource(strings = {"INT", "TERM", "HUP"})
    void printsItsAddressOnceAndEndsAtOnce(String signal) throws Exception {
        Process run = ProgramProcess.of("watch", show).start();
        assumeThat(signal.equals("INT") && ProcessTest.ignores(run, 2)
                        || signal.equals("HUP") && ProcessTest.ignores(run, 1))
                .as("started in the background")
                .isFalse();
        try (BufferedReader out = run.inputReader(StandardCharsets.UTF_8)) {
            String address = out.readLine();
            assertThat(address).matches(ADDRESS);
            assertThat(code(address)).isEqualTo(200);
            new ProcessBuilder("kill", "-" + signal, Long.toString(run.pid()))
                    .start()
                    .waitFor();
            assertThat(run.waitFor(20, TimeUnit.SECONDS)).isTrue();
            assertThat(run.exitValue()).isZero();
            assertThat(out.readLine()).isNull();
            assertThat(new String(run.getErrorStream().readAllBytes(), StandardCharsets.UTF_8))
                    .isEqualTo("open this address in a browser; Ctrl-C ends it\n");
        } finally {
            run.destroyForcibly();
        }
    }

    /** It can be mended while it is watched. */
    @Test
    void aShowWithErrorsIsServedAllTheSame() throws Exception {
        Files.writeString(show, Files.readString(show).replace("\"sweep\"", "\"sweap\""));
        int port = freePort();
        Process run = ProgramProcess.of("watch", show, "--port", port).start();
        try (BufferedReader out = run.inputReader(StandardCharsets.UTF_8);
                BufferedReader err = run.errorReader(StandardCharsets.UTF_8)) {
            String address = out.readLine();
            assertThat(address).matches(ADDRESS).contains(":" + port + "/");
            assertThat(err.readLine()).contains("show.json:11:").contains("did you mean \"sweep\"?");
            assertThat(err.readLine()).isEqualTo("1 error");
            assertThat(code(address)).isEqualTo(200);
        } finally {
            run.destroyForcibly();
        }
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        }
    }

    private static int code(String address) throws IOException {
        return ((HttpURLConnection) URI.create(address).toURL().openConnection()).getResponseCode();
    }
}

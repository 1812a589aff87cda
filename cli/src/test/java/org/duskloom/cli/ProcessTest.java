package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.duskloom.engine.link.Links;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What only a process of its own can show: its exit code, its real streams, and what a signal leaves behind. */
@EnabledOnOs(OS.LINUX)
class ProcessTest {
    private static final int SIGINT = 2;

    @TempDir
    private Path folder;

    @Test
    void runs() throws Exception {
        Process run = ProgramProcess.of("check", Garden.in(folder.resolve("the garden")))
                .start();
        assertThat(said(run)).startsWith("title    Longest day\n");
        assertThat(run.waitFor()).isZero();
    }

    @Test
    void endsWithItsExitCode() throws Exception {
        assertThat(ProgramProcess.of("rendr").redirectErrorStream(true).start().waitFor())
                .isEqualTo(2);
    }

    /** POSIX, Base Definitions, 7.2: the locale C need not know more characters than those of the portable set. */
    @Test
    void saysThatTheLocaleCannotExpressAName() throws Exception {
        ProcessBuilder builder = ProgramProcess.of("check", "näh.json");
        builder.environment().put("LC_ALL", "C");
        Process run = builder.start();
        String said = new String(run.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(run.waitFor()).isEqualTo(2);
        assertThat(said)
                .startsWith("duskloom check: the locale of this terminal cannot express the file name 'n")
                .contains("; set LC_ALL=C.UTF-8 and try again\n")
                .doesNotContain("java");
    }

    /** full(4): "Writes to the /dev/full device fail with an ENOSPC error." */
    @Test
    void tellsOfAFullDisk() throws Exception {
        Process run = ProgramProcess.of("effects")
                .redirectErrorStream(false)
                .redirectOutput(new File("/dev/full"))
                .start();
        assertThat(new String(run.getErrorStream().readAllBytes(), StandardCharsets.UTF_8))
                .isEqualTo("duskloom: cannot write the standard output: No space left on device\n");
        assertThat(run.waitFor()).isEqualTo(1);
    }

    /** One of two outputs fails: it is named, and the other, which was all right, is not kept. */
    @Test
    void aFullDiskUnderOneOutputSpoilsTheRun() throws Exception {
        Path out = Files.createDirectory(folder.resolve("out"));
        Path full = Links.symbolic(out.resolve("frames.npy"), Path.of("/dev/full"));
        Process run = ProgramProcess.of("render", Garden.in(folder), "-o", out, "--as", "rgb,npy")
                .start();
        assertThat(new String(run.getErrorStream().readAllBytes(), StandardCharsets.UTF_8))
                .isEqualTo("duskloom: cannot write " + full + ": No space left on device\n");
        assertThat(run.waitFor()).isEqualTo(1);
        assertThat(namesIn(out)).containsExactly("frames.npy");
    }

    /** Nothing but frames comes out of the standard output, whatever there is to say of them. */
    @Test
    void poursFramesIntoTheStandardOutput() throws Exception {
        Path show = Garden.in(folder);
        assertThat(poured(show, "7..60")).matches("flashing: [^\n]*; no guarantee for anyone\n");
    }

    @Test
    void poursFramesOfPortsAndSaysTheirFiguresBeside() throws Exception {
        Path show = WiredGarden.show(folder, 100, 40, "{\"name\": \"left\", \"chain\": [\"fence\"]}");
        assertThat(poured(show, "0..5").lines().map(line -> line.replaceAll(":.*", "")))
                .containsExactly("power", "data", "flashing", "caution");
    }

    /** What is said beside frames that are the same in a pipe and in a folder. */
    private String poured(Path show, String frames) throws Exception {
        assertThat(Ran.with("render", show, "-o", folder.resolve("out"), "--frames", frames)
                        .code())
                .isZero();
        File poured = folder.resolve("poured").toFile();
        Process run = ProgramProcess.of("render", show, "-o", "-", "--frames", frames)
                .redirectOutput(poured)
                .start();
        String said = new String(run.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(run.waitFor()).isZero();
        assertThat(poured)
                .hasSameBinaryContentAs(folder.resolve("out/frames.rgb").toFile());
        return said;
    }

    /** More than a pipe and the buffers before it hold, so that writing meets the closed end. */
    @ParameterizedTest
    @ValueSource(strings = {"rgb", "npy"})
    void endsQuietlyWhenTheReaderOfFramesHasSeenEnough(String kind) throws Exception {
        Process run = ProgramProcess.of("render", Garden.in(folder, "24:00:00"), "-o", "-", "--as", kind)
                .start();
        assertThat(run.getInputStream().readNBytes(60)).hasSize(60);
        run.getInputStream().close();
        assertThat(run.getErrorStream().readAllBytes()).isEmpty();
        assertThat(run.waitFor()).isEqualTo(141);
    }

    @Test
    void isQuietWhenItsReaderHasGone() throws Exception {
        Process run = ProgramProcess.of("effects").start();
        run.getInputStream().close();
        assertThat(run.getErrorStream().readAllBytes()).isEmpty();
        assertThat(run.waitFor()).isEqualTo(141);
    }

    @Test
    void refusesOtherArithmetic() throws Exception {
        Process run = ProgramProcess.of(List.of("-Djoml.fastmath=true"), "--version")
                .redirectErrorStream(true)
                .start();
        assertThat(said(run))
                .isEqualTo("duskloom: the Java property joml.fastmath would change the frames; leave it out\n");
        assertThat(run.waitFor()).isEqualTo(2);
    }

    /** signal(7): SIGTERM is 15; a JVM that it ends gives 128 and that. */
    @Test
    void aTerminatedRunLeavesNothing() throws Exception {
        Process run = startLongRun(folder.resolve("out"));
        signal(run, "TERM");
        assertThat(said(run)).isEmpty();
        assertThat(run.waitFor()).isEqualTo(143);
        assertThat(folder.resolve("out")).doesNotExist();
    }

    /** The same for Ctrl-C, and with files that are about to be replaced. */
    @Test
    void anInterruptedRunLeavesWhatWasThere() throws Exception {
        Path out = Files.createDirectory(folder.resolve("out"));
        Files.writeString(out.resolve("frames.rgb"), "old");
        Process run = startLongRun(out);
        assumeThat(ignores(run, SIGINT)).as("started in the background").isFalse();
        signal(run, "INT");
        assertThat(said(run)).isEmpty();
        assertThat(run.waitFor()).isEqualTo(130);
        assertThat(out.resolve("frames.rgb")).hasContent("old");
        assertThat(namesIn(out)).containsExactly("frames.rgb");
    }

    /** What stands there stays, and nothing is left beside it. */
    @ParameterizedTest
    @CsvSource({
        "film.html, INT, 130", "film.png, INT, 130", "film.y4m, INT, 130",
        "film.html, TERM, 143", "film.png, TERM, 143", "film.y4m, TERM, 143"
    })
    void aFilmThatIsStoppedLeavesWhatWasThere(String name, String signal, int code) throws Exception {
        Path out = Files.createDirectory(folder.resolve("out"));
        Path film = Files.writeString(out.resolve(name), "old");
        boolean isPage = name.endsWith(".html");
        Path show = Garden.in(folder.resolve("garden"), isPage ? "24:00:00" : "1:00:00");
        List<Object> command = new ArrayList<>(List.of("film", show, "-o", film, "--force"));
        if (!isPage) {
            command.addAll(List.of("--size", "32x24"));
        }
        Process run =
                ProgramProcess.of(command.toArray()).redirectErrorStream(true).start();
        while (!isWriting(out, name)) {
            assertThat(run.waitFor(10, TimeUnit.MILLISECONDS)).isFalse();
        }
        assumeThat(signal.equals("INT") && ignores(run, SIGINT))
                .as("started in the background")
                .isFalse();
        signal(run, signal);
        assertThat(said(run)).isEmpty();
        assertThat(run.waitFor()).isEqualTo(code);
        assertThat(film).hasContent("old");
        assertThat(namesIn(out)).containsExactly(name);
    }

    /** SIGKILL cannot be caught, so the next run finds what the first was writing. */
    @Test
    void oneRunAtATimeWritesIntoAFolder() throws Exception {
        Path out = folder.resolve("out");
        Process run = startLongRun(out);
        Path show = Garden.in(folder.resolve("short"));
        Process second = ProgramProcess.of("render", show, "-o", out, "--force")
                .redirectErrorStream(true)
                .start();
        assertThat(said(second))
                .isEqualTo("duskloom: " + out.resolve("frames.rgb") + " is in use by process " + run.pid()
                        + "; wait for its end, or write somewhere else\n");
        assertThat(second.waitFor()).isEqualTo(1);
        assertThat(run.isAlive()).isTrue();
        run.destroyForcibly().waitFor();
        Process third = ProgramProcess.of("render", show, "-o", out).start();
        assertThat(third.waitFor()).isZero();
        assertThat(namesIn(out)).containsExactly("frames.json", "frames.rgb");
    }

    /** A day at 100 frames per second: it goes on until it is stopped. Returns when frames are being written. */
    private Process startLongRun(Path out) throws Exception {
        Path show = Garden.in(folder.resolve("garden"), "24:00:00");
        Files.writeString(show, Files.readString(show).replace("\"rate\": 40", "\"rate\": 100"));
        Process run = ProgramProcess.of("render", show, "-o", out, "--force", "--threads", "1")
                .redirectErrorStream(true)
                .start();
        while (!isWriting(out, "frames.rgb")) {
            assertThat(run.waitFor(10, TimeUnit.MILLISECONDS)).isFalse();
        }
        return run;
    }

    private static boolean isWriting(Path out, String name) throws IOException {
        Path frames = out.resolve("." + name + ".part/new");
        return Files.exists(frames) && Files.size(frames) > 0;
    }

    /** Not {@link Process#destroy}: it would take the streams away too. */
    private static void signal(Process run, String name) throws Exception {
        int code = new ProcessBuilder("kill", "-" + name, Long.toString(run.pid()))
                .start()
                .waitFor();
        assertThat(code).isZero();
    }

    /** proc_pid_status(5): SigIgn is a mask in hexadecimal, signal 1 in its lowest bit. */
    static boolean ignores(Process run, int signal) throws IOException {
        for (String line : Files.readAllLines(Path.of("/proc/" + run.pid() + "/status"))) {
            if (line.startsWith("SigIgn:")) {
                return (Long.parseUnsignedLong(line.substring(7).strip(), 16) >> (signal - 1) & 1) != 0;
            }
        }
        return true;
    }

    private static String said(Process run) throws IOException {
        return new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }

    private static List<String> namesIn(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.map(entry -> entry.getFileName().toString()).sorted().toList();
        }
    }
}

package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Faults that meet {@code send} and {@code watch}, which write no files, and must leave none changed. */
@Tag("faults")
@EnabledOnOs(OS.LINUX)
class LiveFaultsTest {
    private static final String PORT = "{\"name\": \"left\", \"chain\": [\"fence\"]}";

    @TempDir
    private Path folder;

    private Path show;
    private Path packets;
    private Map<String, String> before;

    @BeforeEach
    void inputs() throws IOException {
        StracedProgram.require();
        show = WiredGarden.show(folder.resolve("garden"), 20, 40, PORT);
        packets = folder.resolve("garden/out");
        Ran ran = Ran.with("render", show, "-o", packets, "--as", "packets");
        assertThat(ran.code()).as(ran.err()).isZero();
        before = WritingCase.contents(folder.resolve("garden"));
    }

    /** The network refuses all packets: nothing was sent, and that is what is said. */
    @Test
    void sayThatNothingCouldBeSent() throws Exception {
        for (Path what : List.of(show, packets)) {
            Ran ran = traced("sendto", "sendto:error=ENETUNREACH", List.of("send", what.toString()));
            assertThat(ran.err())
                    .contains("duskloom: ")
                    .endsWith("Network is unreachable\n")
                    .doesNotContain(" sent, ");
            assertThat(ran.code()).isEqualTo(ExitCode.FAILED);
        }
        untouched();
    }

    /** It refuses some of them: the stream goes on, and they are counted. */
    @Test
    void countWhatCouldNotBeSent() throws Exception {
        for (Path what : List.of(show, packets)) {
            Ran ran = traced("sendto", "sendto:error=ENOBUFS:when=5+10", List.of("send", what.toString()));
            assertThat(ran.err()).containsPattern("\\n[0-9]+ packets? could not be sent: No buffer space available\\n");
            assertThat(ran.err()).containsPattern(" frames? sent, ");
            assertThat(ran.code()).isEqualTo(ExitCode.DONE);
        }
        untouched();
    }

    /** The disk does not give what is to be sent. */
    @Test
    void tellThatAPacketCannotBeRead() throws Exception {
        Path file = packets.resolve("packets.pcap").toRealPath();
        Ran ran = traced(
                "pread64,read",
                "pread64,read:error=EIO:when=6+",
                List.of("send", packets.toString()),
                "-P",
                file.toString());
        assertThat(ran.err()).contains("Input/output error").doesNotContain(" sent, ");
        assertThat(ran.code()).isEqualTo(ExitCode.FAILED);
        untouched();
    }

    @Test
    void aKillChangesNoFile() throws Exception {
        for (List<Object> words : List.<List<Object>>of(
                List.of("send", show), List.of("send", packets, "--loop", "9"), List.of("watch", show))) {
            Path said = folder.resolve("said");
            Process run = ProgramProcess.of(List.of("-XX:TieredStopAtLevel=1"), words.toArray())
                    .redirectErrorStream(true)
                    .redirectOutput(said.toFile())
                    .start();
            for (int tries = 0; tries < 600 && Files.size(said) == 0; tries++) {
                Thread.sleep(100);
            }
            assertThat(run.waitFor(300, TimeUnit.MILLISECONDS))
                    .as(Files.readString(said))
                    .isFalse();
            run.destroyForcibly().waitFor();
            untouched();
        }
    }

    /** Whoever starts it gets its address from the standard output. */
    @Test
    void watchEndsWhereItsAddressCannotBeTold() throws Exception {
        ProcessBuilder watch = ProgramProcess.of(List.of("-XX:TieredStopAtLevel=1"), "watch", show);
        Process run = watch.redirectOutput(Path.of("/dev/full").toFile())
                .redirectError(folder.resolve("errors").toFile())
                .start();
        assertThat(run.waitFor(2, TimeUnit.MINUTES)).isTrue();
        assertThat(folder.resolve("errors"))
                .hasContent("duskloom: cannot write the standard output: No space left on device");
        assertThat(run.exitValue()).isEqualTo(ExitCode.FAILED);
        untouched();
    }

    private Ran traced(String calls, String inject, List<String> words, String... more)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of("strace", "-D", "-f", "--seccomp-bpf", "-s", "0"));
        command.addAll(List.of(
                "-o",
                folder.resolve("log").toString(),
                "-e",
                "trace=" + calls + StracedProgram.FIRST_OF_A_THREAD,
                "-e",
                "inject=" + inject));
        command.addAll(List.of(more));
        ProcessBuilder program = ProgramProcess.of(List.of("-XX:TieredStopAtLevel=1"), words.toArray());
        program.command().addAll(0, command);
        int code = program.redirectOutput(folder.resolve("said").toFile())
                .redirectError(folder.resolve("errors").toFile())
                .start()
                .waitFor();
        assertThat(Files.readString(folder.resolve("log"), StandardCharsets.ISO_8859_1))
                .contains("(INJECTED)");
        return new Ran(code, Files.readString(folder.resolve("said")), Files.readString(folder.resolve("errors")));
    }

    private void untouched() throws IOException {
        assertThat(WritingCase.contents(folder.resolve("garden"))).isEqualTo(before);
        assertThat(WritingCase.leftovers(folder.resolve("garden"))).isEmpty();
    }
}

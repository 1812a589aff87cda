package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Results that do not arrive are a fault, except that a reader may leave when it has seen enough. */
class LostOutputTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({"--version", "--help", "effects", "effects --json", "effects sweep", "check SHOW", "render --help"})
    void aFullDiskIsTold(String line) throws IOException {
        Ran ran = run("No space left on device", line);
        assertThat(ran.err()).isEqualTo("duskloom: cannot write the standard output: No space left on device\n");
        assertThat(ran.code()).isEqualTo(1);
    }

    /** As Linux and Windows word it. 141 is 128 and 13, the number of SIGPIPE in POSIX. */
    @ParameterizedTest
    @CsvSource({"Broken pipe, effects", "The pipe is being closed, check SHOW", "Broken pipe, --help"})
    void aClosedPipeIsQuiet(String reason, String line) throws IOException {
        assertThat(run(reason, line)).isEqualTo(new Ran(141, "", ""));
    }

    private Ran run(String reason, String line) throws IOException {
        Object[] arguments = line.replace("SHOW", Garden.in(folder).toString()).split(" ");
        return Ran.into(Ran.failing(reason), TerminalTraits.PLAIN, arguments);
    }
}

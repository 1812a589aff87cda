package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import org.duskloom.engine.file.OutputRefusedException;
import org.duskloom.engine.file.ReaderGoneException;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

class FaultReportTest {
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private final Streams streams = new Streams(
            OutputStream.nullOutputStream(),
            StandardCharsets.UTF_8,
            new PrintStream(err, true, StandardCharsets.UTF_8),
            TerminalTraits.PLAIN);

    @Test
    void aFaultOfTheDiskIsToldInItsWords() {
        assertThat(told(new IOException("cannot write out/frames.rgb: No space left on device")))
                .isEqualTo("duskloom: cannot write out/frames.rgb: No space left on device\n");
        assertThat(told(new OutputRefusedException("out is a folder; give the name of a file")))
                .isEqualTo("duskloom: out is a folder; give the name of a file\n");
    }

    /** Whatever a file is called, and whatever stands in the message of the system. */
    @Test
    void aFileMayHaveAPipeInItsName() {
        assertThat(told(new OutputRefusedException("pipe is a folder; give the name of a file")))
                .isEqualTo("duskloom: pipe is a folder; give the name of a file\n");
        assertThat(told(new IOException("cannot write bagpipe/frames.rgb: No space left on device")))
                .isEqualTo("duskloom: cannot write bagpipe/frames.rgb: No space left on device\n");
        assertThat(told(new IOException(
                        "cannot write pipe/frames.rgb: permission denied",
                        new AccessDeniedException("pipe/frames.rgb"))))
                .isEqualTo("duskloom: cannot write pipe/frames.rgb: permission denied\n");
        assertThat(told(new IOException(
                        "cannot write a: ?",
                        new FileSystemException("pipe/frames.rgb", null, "Read-only file system"))))
                .isEqualTo("duskloom: cannot write a: ?\n");
    }

    @Test
    void aReaderThatHasGoneIsNoFault() {
        Exception gone = new IllegalStateException(new ReaderGoneException(new IOException("Broken pipe")));
        CommandLine command = new CommandLine(new Program(streams));
        assertThat(new FaultReport(streams).handleExecutionException(gone, command, command.parseArgs()))
                .isEqualTo(141);
        assertThat(err.size()).isZero();
    }

    @Test
    void aFaultOfTheProgramIsCalledOne() {
        Exception fault =
                new IllegalStateException("a frame could not be rendered", new ArithmeticException("/ by zero"));
        assertThat(told(fault))
                .isEqualTo(
                        "duskloom: fault in the program: java.lang.ArithmeticException: / by zero; --debug shows where\n");
        assertThat(told(new IOException()))
                .isEqualTo("duskloom: fault in the program: java.io.IOException; --debug shows where\n");
    }

    @Test
    void debugShowsWhere() {
        String told = told(new IllegalStateException("odd"), "--debug");
        assertThat(told)
                .startsWith("duskloom: fault in the program: java.lang.IllegalStateException: odd\n")
                .contains("org.duskloom.cli.FaultReportTest.debugShowsWhere(");
    }

    /** Also where it happened on one of the rendering threads. */
    @Test
    void tooLittleMemoryIsTold() {
        String told = told(new IllegalStateException("a frame could not be rendered", new OutOfMemoryError("heap")));
        assertThat(told)
                .matches("duskloom: not enough memory: Java may use \\d+ MB; give it more with"
                        + " JAVA_TOOL_OPTIONS=-Xmx4g, or use fewer --threads\n");
    }

    private String told(Exception fault, String... options) {
        CommandLine command = new CommandLine(new Program(streams));
        int code = new FaultReport(streams).handleExecutionException(fault, command, command.parseArgs(options));
        assertThat(code).isEqualTo(1);
        String told = err.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
        err.reset();
        return told;
    }
}

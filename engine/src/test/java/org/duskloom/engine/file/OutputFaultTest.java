package org.duskloom.engine.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.EOFException;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What people read when a disk is full, a right is missing or a reader has gone. */
class OutputFaultTest {
    private static final Path FILE = Path.of("frames.rgb");

    @Test
    void saysWhatFailedWhereAndWhy() {
        assertTold(new AccessDeniedException("frames.rgb"), "permission denied");
        Path gone = Path.of("gone", "frames.rgb");
        IOException noFolder = new NoSuchFileException("gone/frames.rgb");
        assertThat(OutputFault.of("cannot write", gone, noFolder))
                .hasMessage("cannot write " + gone + ": its folder does not exist");
        assertTold(new FileAlreadyExistsException("frames.rgb"), "a file of that name stands in the way");
        assertTold(new FileSystemException("x", null, "Read-only file system"), "Read-only file system");
        assertTold(new IOException("No space left on device"), "No space left on device");
    }

    /** Linux says so of what is made in /proc. */
    @Test
    void doesNotSayOfAFolderThatIsThereThatItIsNot() {
        assertTold(
                new NoSuchFileException("frames.rgb"),
                "no file can be made in " + Path.of("").toAbsolutePath() + "; name another folder");
    }

    /** Some faults have nothing but a name: better that than "null". */
    @Test
    void neverSaysNull() {
        assertTold(new EOFException(), "EOFException");
        assertTold(new FileSystemException("x"), "x");
    }

    /** What was refused is told in its own words already, and stays what it is. */
    @Test
    void whatWasRefusedStaysSo() {
        OutputRefusedException refused = OutputRefusedException.ofExisting(FILE);
        assertThat(OutputFault.of("cannot write", FILE, refused)).isSameAs(refused);
        assertThat(refused.isReplaceable()).isTrue();
        assertThat(refused).hasMessage("frames.rgb exists already");
        assertThat(new OutputRefusedException("too large").isReplaceable()).isFalse();
    }

    private static void assertTold(IOException cause, String reason) {
        assertThat(OutputFault.of("cannot write", FILE, cause))
                .hasMessage("cannot write frames.rgb: " + reason)
                .hasCause(cause);
    }

    /** EPIPE as glibc words it, and Windows' ERROR_BROKEN_PIPE and ERROR_NO_DATA as its documentation does. */
    @ParameterizedTest
    @ValueSource(strings = {"Broken pipe", "The pipe has been ended", "The pipe is being closed"})
    void knowsThatAReaderHasGone(String message) {
        IOException fault = new IOException(message);
        assertThat(ReaderGoneException.tells(fault)).isTrue();
        assertThat(new ReaderGoneException(fault))
                .hasMessage("the reader has gone: " + message)
                .hasCause(fault);
    }

    @ParameterizedTest
    @CsvSource({"No space left on device", "Input/output error", "''"})
    void otherFaultsAreFaults(String message) {
        assertThat(ReaderGoneException.tells(new IOException(message))).isFalse();
        assertThat(ReaderGoneException.tells(new IOException((String) null))).isFalse();
    }

    /** A file that is called so is no pipe. */
    @Test
    void theNameOfAFileSaysNothing() {
        assertThat(ReaderGoneException.tells(new NoSuchFileException("pipes/frames.rgb")))
                .isFalse();
    }
}

package org.duskloom.engine.file;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.util.Locale;

/** Whoever read a pipe, or the standard output, has seen enough and gone. That is no fault. */
public final class ReaderGoneException extends IOException {
    private static final long serialVersionUID = 1L;

    /** @param cause what the system said */
    public ReaderGoneException(IOException cause) {
        super("the reader has gone: " + cause.getMessage(), cause);
    }

    /**
     * Whether a fault in writing to an open stream says so. The wording is the system's, but nearly all have the word
     * "pipe" in it.
     *
     * @param fault as the stream threw it, without the name of a file
     */
    public static boolean tells(IOException fault) {
        String reason = String.valueOf(fault.getMessage());
        return !(fault instanceof FileSystemException)
                && reason.toLowerCase(Locale.ROOT).contains("pipe");
    }
}

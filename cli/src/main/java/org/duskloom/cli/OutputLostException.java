package org.duskloom.cli;

import java.io.IOException;
import java.util.Locale;

/** The standard output cannot be written. */
final class OutputLostException extends IOException {
    private static final long serialVersionUID = 1L;

    OutputLostException(IOException cause) {
        super("cannot write the standard output: " + cause.getMessage(), cause);
    }

    /** Whether its reader has gone, which is not a fault: the wording is the system's, the word is in most of them. */
    boolean isClosedPipe() {
        String reason = String.valueOf(getCause().getMessage());
        return reason.toLowerCase(Locale.ROOT).contains("pipe");
    }
}

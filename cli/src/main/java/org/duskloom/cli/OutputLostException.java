package org.duskloom.cli;

import java.io.IOException;

/** The standard output cannot be written. */
final class OutputLostException extends IOException {
    private static final long serialVersionUID = 1L;

    OutputLostException(IOException cause) {
        super("cannot write the standard output: " + cause.getMessage(), cause);
    }
}

package org.duskloom.cli;

import java.io.IOException;
import org.duskloom.engine.file.ReaderGoneException;

/** The standard output cannot be written. */
final class OutputLostException extends IOException {
    private static final long serialVersionUID = 1L;

    OutputLostException(IOException cause) {
        super(
                "cannot write the standard output: " + cause.getMessage(),
                ReaderGoneException.tells(cause) ? new ReaderGoneException(cause) : cause);
    }
}

package org.duskloom.cli;

/** The command line asks for something that there is not: told as a fault of the command line, exit code 2. */
final class MisuseException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** @param message what is wrong, and what is allowed; goes on behind a colon */
    MisuseException(String message) {
        super(message);
    }
}

package org.duskloom.cli;

/** What the program tells its caller. A run that is stopped by a signal ends with the JVM's 130 or 143. */
final class ExitCode {
    /** All is done. */
    static final int DONE = 0;

    /** It could not be done: an output exists or cannot be written, or there is a fault in the program. */
    static final int FAILED = 1;

    /** What was compared is not the same: as comparing programs end by POSIX. */
    static final int DIFFERENT = 1;

    /** The command line asks for something that there is not. */
    static final int USAGE = 2;

    /** An input file is missing or wrong. */
    static final int BAD_INPUT = 3;

    /** Whoever read the standard output has gone: what a shell gives for a program that SIGPIPE ended. */
    static final int PIPE_CLOSED = 141;

    private ExitCode() {}
}

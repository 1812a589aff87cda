package org.duskloom.cli;

import picocli.CommandLine.Option;

/** What every command takes. */
final class HelpOptions {
    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Show this help.")
    private boolean help;

    @Option(names = "--debug", description = "When the program fails, show where in the program.")
    private boolean debug;

    HelpOptions() {}

    boolean debug() {
        return debug;
    }
}

package org.duskloom.cli;

import java.io.Console;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.UnaryOperator;

/**
 * What the standard streams lead to.
 *
 * @param outColored whether text on the standard output may be coloured
 * @param errColored whether text on the standard error stream may be coloured
 * @param errLive whether a line on the standard error stream can be written over: it is a terminal
 */
record TerminalTraits(boolean outColored, boolean errColored, boolean errLive) {
    /** Files or pipes. */
    static final TerminalTraits PLAIN = new TerminalTraits(false, false, false);

    /** Set by the POSIX launcher to those of {@code out} and {@code err} that are terminals: a shell knows exactly. */
    private static final String TOLD = "duskloom.terminals";

    static TerminalTraits ofProcess() {
        boolean windows = System.getProperty("os.name").toLowerCase(Locale.ROOT).startsWith("windows");
        return of(Optional.ofNullable(System.getProperty(TOLD)), TerminalTraits::hasConsole, windows, System::getenv);
    }

    /**
     * @param told which streams are terminals, if the launcher has said so
     * @param hasConsole whether they seem to be, otherwise
     * @param windows whether this is Windows
     * @param environment its variables; null for those that are not set
     */
    static TerminalTraits of(
            Optional<String> told, BooleanSupplier hasConsole, boolean windows, UnaryOperator<String> environment) {
        String terminals = told.orElseGet(() -> hasConsole.getAsBoolean() ? "out,err" : "");
        boolean out = terminals.contains("out");
        boolean err = terminals.contains("err");
        boolean dumb = "dumb".equals(environment.apply("TERM"));
        // The older console of Windows shows colour codes as letters.
        boolean shows = !windows || isSet(environment, "WT_SESSION") || isSet(environment, "TERM");
        boolean colored = shows && !dumb && !isSet(environment, "NO_COLOR");
        return new TerminalTraits(out && colored, err && colored, err && !dumb);
    }

    /**
     * Whether input and output are a terminal, from which follows that the error stream probably is one too. Up to Java
     * 21 there is no console otherwise; from 22 on there always is one, which has to be asked.
     */
    private static boolean hasConsole() {
        Console console = System.console();
        if (console == null) {
            return false;
        }
        try {
            return (Boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (ReflectiveOperationException before22) {
            return true;
        }
    }

    private static boolean isSet(UnaryOperator<String> environment, String variable) {
        String value = environment.apply(variable);
        return value != null && !value.isEmpty();
    }
}

package org.duskloom.cli;

import java.io.Console;
import java.util.Locale;

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
        String told = System.getProperty(TOLD);
        boolean out = told == null ? hasConsole() : told.contains("out");
        boolean err = told == null ? hasConsole() : told.contains("err");
        boolean dumb = "dumb".equals(System.getenv("TERM"));
        boolean colored = !dumb && !isSet("NO_COLOR") && takesColor();
        return new TerminalTraits(out && colored, err && colored, err && !dumb);
    }

    /**
     * Whether input and output are a terminal, from which follows that the error stream probably is one too. Up to Java 21
     * there is no console otherwise; from 22 on there always is one, which has to be asked.
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

    /** The older console of Windows shows colour codes as letters. */
    private static boolean takesColor() {
        boolean windows = System.getProperty("os.name").toLowerCase(Locale.ROOT).startsWith("windows");
        return !windows || isSet("WT_SESSION") || isSet("TERM");
    }

    private static boolean isSet(String variable) {
        String value = System.getenv(variable);
        return value != null && !value.isEmpty();
    }
}

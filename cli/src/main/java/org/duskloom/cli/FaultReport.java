package org.duskloom.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.stream.Stream;
import org.duskloom.engine.file.OutputRefusedException;
import org.duskloom.engine.file.ReaderGoneException;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/** Says why a command failed. Where in the program that was is shown with {@code --debug} only. */
final class FaultReport implements IExecutionExceptionHandler {
    private final Streams streams;

    FaultReport(Streams streams) {
        this.streams = streams;
    }

    @Override
    public int handleExecutionException(Exception fault, CommandLine command, ParseResult parsed) {
        if (fault instanceof MisuseException misuse) {
            return UsageReport.tell(command, misuse.getMessage(), streams);
        }
        if (readerHasGone(fault)) {
            return ExitCode.PIPE_CLOSED;
        }
        if (isStopping()) {
            // A signal has taken the output away; the fault is only what follows from that.
            return ExitCode.FAILED;
        }
        if (root(fault) instanceof OutOfMemoryError) {
            return outOfMemory(streams);
        }
        boolean debug = command.getParseResult().hasMatchedOption("--debug") || parsed.hasMatchedOption("--debug");
        streams.tell("duskloom: " + text(fault, debug));
        if (debug) {
            trace(fault).forEach(streams::tell);
        }
        return ExitCode.FAILED;
    }

    private static Stream<String> trace(Exception fault) {
        StringWriter text = new StringWriter();
        fault.printStackTrace(new PrintWriter(text, true));
        return text.toString().lines().map(line -> line.replace("\t", "    "));
    }

    /** The standard output did not take the help. */
    static int lost(OutputLostException fault, Streams streams) {
        if (readerHasGone(fault)) {
            return ExitCode.PIPE_CLOSED;
        }
        streams.tell("duskloom: " + fault.getMessage());
        return ExitCode.FAILED;
    }

    /** There is no room for what the command needs. */
    static int outOfMemory(Streams streams) {
        long megabytes = Runtime.getRuntime().maxMemory() >> 20;
        streams.tell("duskloom: not enough memory: Java may use " + megabytes
                + " MB; give it more with JAVA_TOOL_OPTIONS=-Xmx4g, or use fewer --threads");
        return ExitCode.FAILED;
    }

    private static String text(Exception fault, boolean debug) {
        if (fault instanceof OutputRefusedException refused && refused.isReplaceable()) {
            return refused.getMessage() + "; use --force to replace it";
        }
        if (fault instanceof IOException && fault.getMessage() != null) {
            return fault.getMessage();
        }
        return "fault in the program: " + root(fault) + (debug ? "" : "; --debug shows where");
    }

    /**
     * Which is not a fault. Only those who write to an open stream know: a message may have the name of any file in it.
     */
    private static boolean readerHasGone(Throwable fault) {
        for (Throwable step = fault; step != null; step = step.getCause()) {
            if (step instanceof ReaderGoneException) {
                return true;
            }
        }
        return false;
    }

    private static Throwable root(Throwable fault) {
        Throwable root = fault;
        while (root.getCause() != null) {
            root = root.getCause();
        }
        return root;
    }

    /** The JVM refuses to change its shutdown hooks once it has begun to stop, and does not tell in any other way. */
    private static boolean isStopping() {
        try {
            Runtime.getRuntime().removeShutdownHook(new Thread());
            return false;
        } catch (IllegalStateException stopping) {
            return true;
        }
    }
}

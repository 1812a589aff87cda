package org.duskloom.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.util.function.LongSupplier;
import org.duskloom.engine.frame.Progress;

/**
 * One line on a terminal that shows how far a rendering is, how fast it goes and how long it will still take. Written
 * over several times a second, and wiped away at the end, so that nothing of it stays among the messages.
 */
final class ProgressBar implements Progress, AutoCloseable {
    private static final int CELLS = 30;
    private static final long NANOS_PER_REDRAW = 100_000_000;

    /** Most renderings are done before this: a bar would only flicker. */
    private static final long NANOS_BEFORE_FIRST = 400_000_000;

    private final PrintStream terminal;
    private final String thing;
    private final LongSupplier nanoClock;
    private final long start;
    private long nextRedraw;
    private int widthShown;
    private boolean closed;

    /**
     * @param terminal where the bar is drawn
     * @param thing the word for one of what is counted
     * @param nanoClock a clock that only runs forward, in nanoseconds
     */
    ProgressBar(PrintStream terminal, String thing, LongSupplier nanoClock) {
        this.terminal = terminal;
        this.thing = thing;
        this.nanoClock = nanoClock;
        this.start = nanoClock.getAsLong();
        this.nextRedraw = start + NANOS_BEFORE_FIRST;
    }

    /**
     * Work that tells how far it is.
     *
     * @param <E> what it may throw beside faults of files
     */
    @FunctionalInterface
    interface Work<E extends Exception> {
        /**
         * Does it.
         *
         * @return whether it is done
         */
        boolean with(Progress progress) throws IOException, E;
    }

    /** Does some work on frames, with a bar where the standard error stream is a terminal. */
    static <E extends Exception> boolean during(Streams streams, Work<E> work) throws IOException, E {
        return during(streams, "frame", work);
    }

    /**
     * Does some work, with a bar where the standard error stream is a terminal.
     *
     * @param thing the word for one of what is counted
     */
    static <E extends Exception> boolean during(Streams streams, String thing, Work<E> work) throws IOException, E {
        if (!streams.traits().errLive()) {
            return work.with(Progress.SILENT);
        }
        try (ProgressBar bar = new ProgressBar(streams.err(), thing, System::nanoTime)) {
            Thread wipe = new Thread(bar::close, "wipe");
            Runtime.getRuntime().addShutdownHook(wipe);
            try {
                return work.with(bar);
            } finally {
                StopRequest.forget(wipe);
            }
        }
    }

    @Override
    public synchronized void at(long framesDone, long framesTotal) {
        long now = nanoClock.getAsLong();
        if (closed || now - nextRedraw < 0) {
            return;
        }
        nextRedraw = now + NANOS_PER_REDRAW;
        show(line(framesDone, framesTotal, thing, (now - start) / 1e9));
    }

    /** Wipes the line. From any thread: a run that is stopped wipes it too. */
    @Override
    public synchronized void close() {
        if (!closed && widthShown > 0) {
            show("");
            terminal.print('\r');
            terminal.flush();
        }
        closed = true;
    }

    /** {@code [########          ] 640/1920 frames, 812 frames/s, 1.6 s left}. */
    static String line(long framesDone, long framesTotal, String thing, double seconds) {
        int filled = (int) (CELLS * framesDone / framesTotal);
        double rate = framesDone / seconds;
        return "[" + "#".repeat(filled) + " ".repeat(CELLS - filled) + "] " + framesDone + "/" + framesTotal
                + " " + thing + "s, " + Math.round(rate) + " " + thing + "s/s, "
                + Words.duration((framesTotal - framesDone) / rate) + " left";
    }

    /** Blanks instead of a code that erases: every terminal has them. */
    private void show(String line) {
        terminal.print('\r' + line + " ".repeat(Math.max(0, widthShown - line.length())));
        terminal.flush();
        widthShown = line.length();
    }
}

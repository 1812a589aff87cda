package org.duskloom.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import picocli.CommandLine;

/** A show that is watched and served in this JVM. */
final class Watching implements AutoCloseable {
    private final ByteArrayOutputStream said = new ByteArrayOutputStream();
    private final NewsBoard board;
    private final WatchServer server;
    private final Thread thread;

    private Watching(Path show, PixelChoice choice) throws IOException {
        board = new NewsBoard(choice);
        server = WatchServer.start(0, board);
        PrintStream err = new PrintStream(said, true, StandardCharsets.UTF_8);
        Streams streams =
                new Streams(OutputStream.nullOutputStream(), StandardCharsets.UTF_8, err, TerminalTraits.PLAIN);
        WatchedShow watched = new WatchedShow(show, choice, board, streams);
        thread = new Thread(() -> follow(watched), "watching");
        thread.start();
    }

    /** @param addresses what is seen of it; all without any */
    static Watching of(Path show, String... addresses) throws IOException {
        PixelChoice choice = new PixelChoice();
        new CommandLine(choice)
                .parseArgs(Arrays.stream(addresses)
                        .map(address -> "--on=" + address)
                        .toArray(String[]::new));
        return new Watching(show, choice);
    }

    private static void follow(WatchedShow watched) {
        try {
            watched.follow();
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }

    String address() {
        return server.address();
    }

    NewsBoard board() {
        return board;
    }

    /** What was written for people. */
    String said() {
        return said.toString(StandardCharsets.UTF_8);
    }

    /** The next news after those of a number; waits for them. */
    NewsBoard.News after(long number) throws InterruptedException {
        return board.after(number, 20_000).orElseThrow(() -> new AssertionError("there is no news after " + number));
    }

    @Override
    public void close() {
        server.close();
        thread.interrupt();
        try {
            thread.join();
        } catch (InterruptedException inHaste) {
            Thread.currentThread().interrupt();
        }
    }
}

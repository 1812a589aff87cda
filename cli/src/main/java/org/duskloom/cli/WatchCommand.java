package org.duskloom.cli;

import java.io.IOException;
import java.net.BindException;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code duskloom watch}. */
@Command(
        name = "watch",
        sortOptions = false,
        sortSynopsis = false,
        header = "See a show in a browser while it is being written.",
        description = {
            "",
            "Prints an address; open it in a browser on this machine. Whenever a file of the show is saved, the page shows"
                    + " what has become of it, at the same time of the show. What is wrong is listed on the page, while"
                    + " the last show without errors plays on. The page is for this machine alone. Ctrl-C ends it.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  duskloom watch garden/show.json",
            "  duskloom watch garden/show.json --on daisy-1",
            "      One prop, as large as the page."
        })
final class WatchCommand implements Callable<Integer> {
    private static final int HIGHEST_PORT = 65535;

    private final Streams streams;

    @Mixin
    private ShowOperand show;

    @Option(
            names = "--port",
            paramLabel = "N",
            description = "The number in the address, 1 to 65535; usually any that is free.")
    private Integer port;

    @Mixin
    private PixelChoice pixels;

    @Mixin
    private HelpOptions helpOptions;

    WatchCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() throws IOException {
        if (port != null && (port < 1 || port > HIGHEST_PORT)) {
            throw new MisuseException("--port is " + port + "; allowed: 1 to " + HIGHEST_PORT);
        }
        NewsBoard board = new NewsBoard(pixels);
        try (WatchServer server = serve(board)) {
            WatchedShow watched = new WatchedShow(show.file(), pixels, board, streams);
            if (!watched.isMeant()) {
                return ExitCode.BAD_INPUT;
            }
            streams.print(server.address() + System.lineSeparator());
            streams.tell("open this address in a browser; Ctrl-C ends it");
            follow(watched);
            return ExitCode.DONE;
        }
    }

    /** Ctrl-C is how one ends this: nothing has failed, and nothing is left to be done. */
    private static void follow(WatchedShow watched) {
        Thread end = new Thread(() -> Runtime.getRuntime().halt(ExitCode.DONE), "end");
        Runtime.getRuntime().addShutdownHook(end);
        try {
            watched.follow();
        } catch (InterruptedException ended) {
            Runtime.getRuntime().removeShutdownHook(end);
        }
    }

    private WatchServer serve(NewsBoard board) throws IOException {
        try {
            return WatchServer.start(port == null ? 0 : port, board);
        } catch (BindException fault) {
            if (port == null) {
                throw fault;
            }
            throw new MisuseException("--port " + port + " cannot be had: " + fault.getMessage()
                    + "; by whom it is taken says  " + whoHas(port) + "  and without --port any free one is taken");
        }
    }

    /** The command that lists who listens. */
    private static String whoHas(int port) {
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        if (system.contains("windows")) {
            return "netstat -ano -p TCP | findstr :" + port;
        }
        return system.contains("linux") ? "ss -ltnp 'sport = :" + port + "'" : "lsof -nP -iTCP:" + port;
    }
}

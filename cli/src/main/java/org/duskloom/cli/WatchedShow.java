package org.duskloom.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.duskloom.engine.document.JsonReader;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.plan.KernelShelf;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.show.DocumentKind;

/** A show that is read again whenever one of its files is saved; what comes of it is put up for the pages. */
final class WatchedShow {
    /**
     * So long files must have stayed as they are, while they are read and after, before a show without errors counts:
     * hardly any that is half written has none, and if one has it is seen for a moment only.
     */
    private static final long QUIET_MILLIS = 15;

    /** A show with errors may be one that is half written: so long nothing is said of it. */
    private static final long DOUBT_MILLIS = 250;

    /** How a text begins in which no object of JSON is begun. */
    private static final Pattern NO_JSON = Pattern.compile("\\s*[^\\s{/]");

    private static final int PRACTICES = 5;
    private static final long MOST_PRACTICE_MILLIS = 2000;

    /** What is written to all the time is seen all the same. */
    private static final int MOST_READINGS = 20;

    /** Long enough for a file to get another stamp if it is written again. */
    private static final long SECOND_LOOK_MILLIS = 3000;

    private final Path file;
    private final PixelChoice choice;
    private final NewsBoard board;
    private final Streams streams;
    private final KernelShelf shelf = new KernelShelf();
    private ShowReading reading;

    /**
     * Reads the show for the first time.
     *
     * @param choice which pixels are seen
     * @throws MisuseException if there are none such
     */
    WatchedShow(Path file, PixelChoice choice, NewsBoard board, Streams streams) {
        this.file = file;
        this.choice = choice;
        this.board = board;
        this.streams = streams;
        this.reading = ShowReading.of(file, choice, shelf);
        reading.misuse().ifPresent(unknown -> {
            throw unknown;
        });
        tell();
    }

    /**
     * Whether the file may be what was meant: a show with errors can be mended while it is watched; a file that is not
     * there, a table or a display will never become one.
     */
    boolean isMeant() {
        if (!Files.isRegularFile(file) || !Files.isReadable(file)) {
            return false;
        }
        Problems unheard = new Problems();
        Optional<SourceText> text = SourceText.read(file, file.toString(), unheard);
        if (text.isEmpty() || text.get().text().isBlank()) {
            return true;
        }
        if (NO_JSON.matcher(text.get().text()).lookingAt()) {
            return false;
        }
        Optional<DocumentKind> kind = JsonReader.read(text.get(), unheard).flatMap(DocumentKind::of);
        return kind.isEmpty() || kind.get() == DocumentKind.TIMELINE;
    }

    /** Goes on until the thread is interrupted. */
    void follow() throws InterruptedException {
        practise();
        boolean isSecondLook = false;
        while (true) {
            FileWatch watch = reading.watch();
            boolean isSure = isSecondLook || !watch.isFreshAt(Instant.now());
            isSecondLook = !watch.changes(isSure ? Long.MAX_VALUE : SECOND_LOOK_MILLIS);
            ShowReading before = reading;
            reading = read();
            if (!reading.isSameAs(before)) {
                tell();
                tellIfMended(before);
            }
        }
    }

    /** Java runs what it has often run much faster: the first save shall be seen as soon as the later ones. */
    private void practise() throws InterruptedException {
        long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(MOST_PRACTICE_MILLIS);
        for (int i = 0;
                i < PRACTICES && System.nanoTime() < end && !reading.watch().changes(0);
                i++) {
            ShowReading.of(file, choice, shelf);
            if (Thread.interrupted()) {
                throw new InterruptedException();
            }
        }
    }

    /** Reads while others may still write, and again if they did. */
    private ShowReading read() throws InterruptedException {
        ShowReading next = null;
        for (int i = 0; i < MOST_READINGS; i++) {
            long start = System.nanoTime();
            next = ShowReading.of(file, choice, shelf);
            long took = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
            if (!next.watch().changes((next.isBroken() ? DOUBT_MILLIS : QUIET_MILLIS) - took)) {
                break;
            }
        }
        return next;
    }

    /** Whoever mends by what the terminal lists would look there for more otherwise. */
    private void tellIfMended(ShowReading before) {
        if (before.isBroken() && !reading.isBroken()) {
            streams.tell(file + " has no errors any more");
        }
    }

    private void tell() {
        try {
            board.put(reading);
        } catch (RuntimeException | OutOfMemoryError fault) {
            reading = ShowReading.failed(file, reading.files(), fault);
            board.put(reading);
        }
        ProblemPrinter.print(reading.problems(), streams);
    }
}

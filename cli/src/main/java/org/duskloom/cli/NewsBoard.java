package org.duskloom.cli;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.duskloom.engine.document.JsonText;
import org.duskloom.engine.problem.Problem;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.problem.Severity;
import org.duskloom.engine.text.Quoted;

/** Where the newest stands that pages should know; safe for use by several threads. */
final class NewsBoard {
    /**
     * What there is to know.
     *
     * @param number counts from 1
     * @param film the last show without errors; nothing if there was none yet
     * @param json for the page, on one line
     */
    record News(long number, Optional<ServedFilm> film, String json) {}

    private final PixelChoice choice;
    private News newest = new News(0, Optional.empty(), "{}");

    /** @param choice which pixels are seen */
    NewsBoard(PixelChoice choice) {
        this.choice = choice;
    }

    /** What was put up last. */
    synchronized News newest() {
        return newest;
    }

    /** Puts up what came of a reading; for one thread. Others go on reading what was put up before, meanwhile. */
    void put(ShowReading reading) {
        News before = newest();
        Optional<ServedFilm> film = reading.show()
                .map(loaded -> new ServedFilm(loaded, choice, before.film()))
                .or(before::film);
        replace(new News(before.number + 1, film, json(film, reading)));
    }

    private synchronized void replace(News news) {
        newest = news;
        notifyAll();
    }

    /**
     * Waits for news.
     *
     * @param number of those that are known
     * @param mostMillis how long at most
     * @return nothing if there were none
     */
    synchronized Optional<News> after(long number, long mostMillis) throws InterruptedException {
        long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(mostMillis);
        while (newest.number <= number) {
            long left = TimeUnit.NANOSECONDS.toMillis(end - System.nanoTime());
            if (left <= 0) {
                return Optional.empty();
            }
            wait(left);
        }
        return Optional.of(newest);
    }

    /**
     * {@code film}: its number, 0 for none; {@code errors} and {@code warnings}: how many; {@code problems}; how many
     * {@code pieces} the film has.
     */
    private static String json(Optional<ServedFilm> film, ShowReading reading) {
        Problems problems = reading.problems();
        String folder = folder(reading.file());
        List<Problem> listed = problems.inFileOrder();
        long errors = count(listed, Severity.ERROR) + problems.omittedErrors();
        long warnings = count(listed, Severity.WARNING) + problems.omittedWarnings();
        Object[] shown = listed.stream().map(problem -> json(problem, folder)).toArray();
        return JsonText.object(
                        "film",
                        film.map(ServedFilm::number).orElse(0L),
                        "errors",
                        errors,
                        "warnings",
                        warnings,
                        "problems",
                        JsonText.list(shown),
                        "pieces",
                        film.map(ServedFilm::pieces).orElse(0))
                .json();
    }

    /** Of the show, as the user named it: on the page, which may be narrow, files are named from there. */
    private static String folder(Path show) {
        String name = Quoted.plain(show.toString());
        return name.substring(0, name.lastIndexOf(File.separatorChar) + 1);
    }

    private static long count(List<Problem> listed, Severity severity) {
        return listed.stream().filter(problem -> problem.severity() == severity).count();
    }

    private static JsonText.Inline json(Problem problem, String folder) {
        String place = problem.location().toString();
        return JsonText.object(
                "place", place.startsWith(folder) ? place.substring(folder.length()) : place,
                "severity", problem.severity().word(),
                "message", problem.message(),
                "hint", problem.hint());
    }
}

package org.duskloom.cli;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.duskloom.engine.show.FileStamp;

/**
 * Waits for files to be saved. The system is asked again and again rather than told to report: that works through
 * links, on drives of the network, and with every way in which editors save, and a show has a few files only.
 */
final class FileWatch {
    /** From one look to the next. */
    private static final long PAUSE_MILLIS = 20;

    /** Looking takes at most a tenth of the time: a drive may be slow. */
    private static final int REST = 9;

    private final Map<Path, FileStamp> known;

    /** @param known the files, each as it was when it was looked into */
    FileWatch(Map<Path, FileStamp> known) {
        this.known = known;
    }

    /**
     * Waits until a file is another than it was.
     *
     * @param mostMillis how long at most; with 0 or less it is looked once
     * @return whether one is
     */
    boolean changes(long mostMillis) throws InterruptedException {
        long start = System.nanoTime();
        while (true) {
            long look = System.nanoTime();
            if (!known.equals(stamps())) {
                return true;
            }
            long left = mostMillis - millisSince(start);
            if (left <= 0) {
                return false;
            }
            Thread.sleep(Math.min(left, Math.max(PAUSE_MILLIS, REST * millisSince(look))));
        }
    }

    /** Whether a file was written so shortly before that it may be written again without anyone noticing. */
    boolean isFreshAt(Instant instant) {
        return known.values().stream().anyMatch(stamp -> stamp.isFreshAt(instant));
    }

    private Map<Path, FileStamp> stamps() {
        return known.keySet().stream().collect(Collectors.toMap(path -> path, FileStamp::of));
    }

    private static long millisSince(long nanoTime) {
        return TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - nanoTime);
    }
}

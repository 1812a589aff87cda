package org.duskloom.engine.document;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;

/** Gets the bytes of an input file, and refuses early what is too large to be meant. */
final class SourceBytes {
    private static final int CHUNK_BYTES = 1 << 16;

    /** So much is taken at once; more only when a file of sane lines has filled it. */
    private static final int LARGEST_FIRST_GUESS = SourceText.MAX_LINE_BYTES * 2;

    private SourceBytes() {}

    /** The bytes of a file that is {@linkplain #isAcceptable acceptable}. */
    static Optional<byte[]> read(Path file, String shownName, Problems problems) {
        Location whole = Location.ofFile(shownName);
        if (Files.isDirectory(file)) {
            problems.error(whole, "is a folder, not a file", "name the file inside it");
            return Optional.empty();
        }
        if (Files.notExists(file)) {
            problems.error(whole, "there is no such file", NearbyFile.hint(file, ""));
            return Optional.empty();
        }
        // Opening a pipe would wait until somebody writes into it.
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            problems.error(whole, "is a pipe or a device, not a file", "save what it gives and name that file");
            return Optional.empty();
        }
        try (InputStream in = Files.newInputStream(file)) {
            return drain(in, Files.size(file), shownName, problems)
                    .filter(bytes -> isAnything(bytes, shownName, problems));
        } catch (AccessDeniedException denied) {
            problems.error(whole, "there is no right to read this file");
        } catch (IOException failed) {
            problems.error(whole, "cannot be read: " + failed.getMessage());
        }
        return Optional.empty();
    }

    /** Whether the size and every line's length are within the limits, and there is anything at all. */
    static boolean isAcceptable(byte[] bytes, String shownName, Problems problems) {
        if (!isAnything(bytes, shownName, problems)) {
            return false;
        }
        if (bytes.length > SourceText.MAX_FILE_BYTES) {
            return tooLarge(shownName, problems);
        }
        return new LineLength(shownName, problems).accepts(bytes, 0, bytes.length);
    }

    private static boolean isAnything(byte[] bytes, String shownName, Problems problems) {
        if (bytes.length == 0) {
            problems.error(new Location(shownName, 1, 1), "the file is empty");
        }
        return bytes.length > 0;
    }

    private static Optional<byte[]> drain(InputStream in, long expectedBytes, String shownName, Problems problems)
            throws IOException {
        LineLength lineLength = new LineLength(shownName, problems);
        int expected = (int) Math.min(expectedBytes, SourceText.MAX_FILE_BYTES);
        byte[] all = new byte[Math.min(expected + 1, LARGEST_FIRST_GUESS)];
        int size = 0;
        for (int count = 0; count >= 0; count = in.read(all, size, Math.min(CHUNK_BYTES, all.length - size))) {
            if (!lineLength.accepts(all, size, count)) {
                return Optional.empty();
            }
            size += count;
            if (size > SourceText.MAX_FILE_BYTES) {
                tooLarge(shownName, problems);
                return Optional.empty();
            }
            all = size < all.length ? all : Arrays.copyOf(all, Math.max(size * 2, expected + 1));
        }
        return Optional.of(size == all.length ? all : Arrays.copyOf(all, size));
    }

    private static boolean tooLarge(String shownName, Problems problems) {
        String limit = String.format(Locale.ROOT, "%d MB", SourceText.MAX_FILE_BYTES >> 20);
        problems.error(Location.ofFile(shownName), "the file is larger than " + limit, "split it into several files");
        return false;
    }

    /** Watches the length of the line across chunks. */
    private static final class LineLength {
        private final String shownName;
        private final Problems problems;
        private long bytesInLine;
        private int line = 1;
        private byte previous;

        LineLength(String shownName, Problems problems) {
            this.shownName = shownName;
            this.problems = problems;
        }

        boolean accepts(byte[] bytes, int from, int count) {
            for (int i = from; i < from + count; i++) {
                byte next = bytes[i];
                if (next == '\n' || next == '\r') {
                    line += next == '\n' && previous == '\r' ? 0 : 1;
                    bytesInLine = 0;
                } else if (++bytesInLine > SourceText.MAX_LINE_BYTES) {
                    report();
                    return false;
                }
                previous = next;
            }
            return true;
        }

        private void report() {
            problems.error(
                    new Location(shownName, line, 1),
                    "the line is longer than " + (SourceText.MAX_LINE_BYTES >> 20) + " MB",
                    "a text file for people has line breaks; is this the right file?");
        }
    }
}

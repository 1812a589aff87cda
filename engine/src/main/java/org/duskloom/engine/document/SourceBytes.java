package org.duskloom.engine.document;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;

/** Gets the bytes of an input file, and refuses early what is too large to be meant. */
final class SourceBytes {
    private static final int CHUNK_BYTES = 1 << 16;

    private SourceBytes() {}

    static Optional<byte[]> read(Path file, String shownName, Problems problems) {
        Location whole = Location.ofFile(shownName);
        if (Files.isDirectory(file)) {
            problems.error(whole, "is a folder, not a file", "name the file inside it");
            return Optional.empty();
        }
        if (Files.notExists(file)) {
            problems.error(
                    whole,
                    "there is no such file",
                    "looked for " + file.toAbsolutePath().normalize());
            return Optional.empty();
        }
        try (InputStream in = Files.newInputStream(file)) {
            return drain(in, shownName, problems);
        } catch (AccessDeniedException denied) {
            problems.error(whole, "there is no right to read this file");
        } catch (IOException failed) {
            problems.error(whole, "cannot be read: " + failed.getMessage());
        }
        return Optional.empty();
    }

    /** Whether the size and every line's length are within the limits, and there is anything at all. */
    static boolean isAcceptable(byte[] bytes, String shownName, Problems problems) {
        if (bytes.length == 0) {
            problems.error(new Location(shownName, 1, 1), "the file is empty");
            return false;
        }
        if (bytes.length > SourceText.MAX_FILE_BYTES) {
            return tooLarge(shownName, problems);
        }
        return new LineLength(shownName, problems).accepts(bytes, bytes.length);
    }

    private static Optional<byte[]> drain(InputStream in, String shownName, Problems problems) throws IOException {
        LineLength lineLength = new LineLength(shownName, problems);
        ByteArrayOutputStream all = new ByteArrayOutputStream(CHUNK_BYTES);
        byte[] chunk = new byte[CHUNK_BYTES];
        for (int count = in.read(chunk); count >= 0; count = in.read(chunk)) {
            if (!lineLength.accepts(chunk, count)) {
                return Optional.empty();
            }
            if (all.size() + count > SourceText.MAX_FILE_BYTES) {
                tooLarge(shownName, problems);
                return Optional.empty();
            }
            all.write(chunk, 0, count);
        }
        return Optional.of(all.toByteArray());
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

        boolean accepts(byte[] chunk, int count) {
            for (int i = 0; i < count; i++) {
                step(chunk[i]);
                if (bytesInLine > SourceText.MAX_LINE_BYTES) {
                    problems.error(
                            new Location(shownName, line, 1),
                            "the line is longer than " + (SourceText.MAX_LINE_BYTES >> 20) + " MB",
                            "a text file for people has line breaks; is this the right file?");
                    return false;
                }
            }
            return true;
        }

        private void step(byte next) {
            boolean ends = next == '\r' || next == '\n' && previous != '\r';
            line += ends ? 1 : 0;
            bytesInLine = ends || next == '\n' ? 0 : bytesInLine + 1;
            previous = next;
        }
    }
}

package org.duskloom.engine.document;

import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;

/**
 * The text of one input file, decoded strictly from UTF-8, with the table that turns an offset into line and column. A
 * byte order mark is accepted and is not part of the text. Immutable, as far as anybody sees.
 */
public final class SourceText {
    /** The largest file that is read, in bytes. */
    public static final int MAX_FILE_BYTES = 64 << 20;

    /** The longest line that is read, in bytes. */
    public static final int MAX_LINE_BYTES = 16 << 20;

    private final String shownName;
    private final String text;
    private final String sha256Hex;
    /** Null until it is asked for: who reads a file from its start to its end counts lines himself. */
    private LineTable lines;

    private SourceText(String shownName, String text, String sha256Hex) {
        this.shownName = shownName;
        this.text = text;
        this.sha256Hex = sha256Hex;
    }

    /**
     * Reads a file. Errors: missing, a folder, unreadable, empty, larger than {@link #MAX_FILE_BYTES}, a line longer
     * than {@link #MAX_LINE_BYTES}, not UTF-8.
     *
     * @param file the file
     * @param shownName its name as the user would type it, used in every location
     * @param problems where errors go
     * @return the text, or nothing if an error was added
     */
    public static Optional<SourceText> read(Path file, String shownName, Problems problems) {
        return SourceBytes.read(file, shownName, problems).flatMap(bytes -> decoded(bytes, shownName, problems));
    }

    /** The same for bytes that are already in memory; they are not changed. */
    public static Optional<SourceText> of(byte[] bytes, String shownName, Problems problems) {
        return SourceBytes.isAcceptable(bytes, shownName, problems)
                ? decoded(bytes, shownName, problems)
                : Optional.empty();
    }

    private static Optional<SourceText> decoded(byte[] bytes, String shownName, Problems problems) {
        return Utf8Text.decode(bytes, shownName, problems)
                .map(text -> new SourceText(shownName, text, sha256Hex(bytes)));
    }

    /** The text without a byte order mark; line ends as in the file. */
    public String text() {
        return text;
    }

    /** The file's name as the user would type it. */
    public String shownName() {
        return shownName;
    }

    /** SHA-256 (FIPS 180-4) of the file's bytes, byte order mark included, as 64 lower-case hexadecimal digits. */
    public String sha256Hex() {
        return sha256Hex;
    }

    /**
     * Line and column of an offset.
     *
     * @param utf16Offset offset into {@link #text()}, 0 to its length; anything else is brought into that range
     */
    public Location locationAt(int utf16Offset) {
        int offset = Math.max(0, Math.min(text.length(), utf16Offset));
        return new Location(shownName, lines().line(offset), lines().column(offset));
    }

    /** Line of an offset, from 1; as in {@link #locationAt}. */
    public int lineAt(int utf16Offset) {
        return lines().line(Math.max(0, Math.min(text.length(), utf16Offset)));
    }

    /** Threads that ask at once get equal ones, each by itself. */
    private LineTable lines() {
        LineTable known = lines;
        if (known == null) {
            known = new LineTable(text);
            lines = known;
        }
        return known;
    }

    /** The place just behind the last character. */
    public Location end() {
        return locationAt(text.length());
    }

    private static String sha256Hex(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }
}

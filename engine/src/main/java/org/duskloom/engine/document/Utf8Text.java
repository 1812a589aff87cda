package org.duskloom.engine.document;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;

/** Decodes UTF-8 (RFC 3629) strictly; where bytes are something else, says what they probably are. */
final class Utf8Text {
    private static final String HOW_TO_SAVE =
            "save it as UTF-8: in a text editor \"save with encoding\", in a spreadsheet the file type \"CSV UTF-8\"";
    private static final int BOM_BYTES = 3;

    private Utf8Text() {}

    static Optional<String> decode(byte[] bytes, String shownName, Problems problems) {
        if (isWorkbook(bytes)) {
            problems.error(
                    new Location(shownName, 1, 1),
                    "this is no text, it looks like the workbook of a spreadsheet or another packed file",
                    "save it in the spreadsheet as CSV, file type \"CSV UTF-8\", and name that file");
            return Optional.empty();
        }
        if (isPicture(bytes)) {
            problems.error(
                    new Location(shownName, 1, 1),
                    "this is no text, it is a picture",
                    "is it the right file? a timeline and a display are JSON, a pixel map and measurements are CSV");
            return Optional.empty();
        }
        Optional<String> other = otherEncoding(bytes);
        if (other.isPresent()) {
            problems.error(
                    new Location(shownName, 1, 1), "the file is not UTF-8, it looks like " + other.get(), HOW_TO_SAVE);
            return Optional.empty();
        }
        int start = hasBom(bytes) ? BOM_BYTES : 0;
        String text = new String(bytes, start, bytes.length - start, StandardCharsets.UTF_8);
        // What is no UTF-8 has become that sign, which may stand in the file as well.
        int bad = text.indexOf('\uFFFD') < 0 ? -1 : firstBadByte(bytes, start);
        if (bad < 0) {
            return Optional.of(text);
        }
        reportBadByte(bytes, start, bad, shownName, problems);
        return Optional.empty();
    }

    /**
     * Whether it begins as today's workbooks do, which are ZIP files (PKWARE, APPNOTE.TXT, section 4.3.7), or as older
     * ones, compound files ([MS-CFB], section 2.2).
     */
    private static boolean isWorkbook(byte[] bytes) {
        return startsWith(bytes, 'P', 'K', 3, 4) || startsWith(bytes, 0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1);
    }

    /** Whether it begins as PNG (W3C, PNG, section 5.2) or as JPEG (ITU-T T.81, annex B). */
    private static boolean isPicture(byte[] bytes) {
        return startsWith(bytes, 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n') || startsWith(bytes, 0xFF, 0xD8, 0xFF);
    }

    private static boolean hasBom(byte[] bytes) {
        return startsWith(bytes, 0xEF, 0xBB, 0xBF);
    }

    private static Optional<String> otherEncoding(byte[] bytes) {
        if (startsWith(bytes, 0xFF, 0xFE, 0, 0) || startsWith(bytes, 0, 0, 0xFE, 0xFF)) {
            return Optional.of("UTF-32");
        }
        if (startsWith(bytes, 0xFF, 0xFE) || bytes.length > 1 && bytes[0] != 0 && bytes[1] == 0) {
            return Optional.of("UTF-16 (little-endian)");
        }
        if (startsWith(bytes, 0xFE, 0xFF) || bytes.length > 1 && bytes[0] == 0 && bytes[1] != 0) {
            return Optional.of("UTF-16 (big-endian)");
        }
        return Optional.empty();
    }

    private static boolean startsWith(byte[] bytes, int... prefix) {
        for (int i = 0; i < prefix.length; i++) {
            if (i >= bytes.length || (bytes[i] & 0xFF) != prefix[i]) {
                return false;
            }
        }
        return true;
    }

    /** Index of the first byte that is not part of well-formed UTF-8, or -1. */
    private static int firstBadByte(byte[] bytes, int start) {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes, start, bytes.length - start);
        CharBuffer out = CharBuffer.allocate(1 << 13);
        CoderResult result;
        do {
            out.clear();
            result = decoder.decode(in, out, true);
        } while (result.isOverflow());
        return result.isError() ? in.position() : -1;
    }

    private static void reportBadByte(byte[] bytes, int start, int bad, String shownName, Problems problems) {
        String before = new String(bytes, start, bad - start, StandardCharsets.UTF_8);
        LineTable lines = new LineTable(before);
        Location place = new Location(shownName, lines.line(before.length()), lines.column(before.length()));
        String shown = String.format(Locale.ROOT, "byte 0x%02X is not UTF-8", bytes[bad] & 0xFF);
        problems.error(place, shown, guess(bytes[bad]) + HOW_TO_SAVE);
    }

    private static String guess(byte bad) {
        String windows = new String(new byte[] {bad}, Charset.forName("windows-1252"));
        boolean letter = Character.isLetter(windows.charAt(0)) || "°²³µ–’‘“”…".contains(windows);
        return letter ? "in Latin-1 or Windows-1252 it would be \"" + windows + "\"; " : "";
    }
}

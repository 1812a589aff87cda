package org.duskloom.cli;

import java.io.EOFException;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Path;
import org.duskloom.engine.locate.JpegMarker;

/**
 * Whether a JPEG (ITU-T T.81, annex B) has its end mark: a decoder fills up with grey what is missing. A small film or
 * a second picture may stand behind the mark, and a small picture with a mark of its own before the scan.
 */
final class JpegEnd {
    /** So much is looked through from the end. */
    private static final long TAIL = 16_000_000;

    /** So much of it is read at once; mostly the mark is in the first piece. */
    private static final int PIECE = 4096;

    private JpegEnd() {}

    static boolean isThere(Path file) throws IOException {
        try (RandomAccessFile in = new RandomAccessFile(file.toFile(), "r")) {
            long scan = startOfScan(in);
            long least = Math.max(scan, in.length() - TAIL);
            byte[] piece = new byte[PIECE + 1];
            int after = 0;
            for (long end = in.length(); end > least; end -= PIECE) {
                int count = (int) Math.min(PIECE, end - least);
                in.seek(end - count);
                in.readFully(piece, 0, count);
                // The byte behind this piece may be the second one of the mark.
                piece[count] = (byte) after;
                for (int at = count - 1; at >= 0; at--) {
                    if ((piece[at] & 0xFF) == 0xFF && (piece[at + 1] & 0xFF) == 0xD9) {
                        return true;
                    }
                }
                after = piece[0];
            }
            return false;
        }
    }

    /** Behind all segments that stand before the picture; the end of the file if there is none. */
    private static long startOfScan(RandomAccessFile in) throws IOException {
        try {
            in.seek(2);
            while (JpegMarker.ofSegment(in) != JpegMarker.NONE) {
                in.seek(in.getFilePointer() + Math.max(2, in.readUnsignedShort()));
            }
            return in.getFilePointer();
        } catch (EOFException cutOff) {
            return in.length();
        }
    }
}

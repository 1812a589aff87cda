package org.duskloom.engine.png;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Arrays;
import java.util.zip.Deflater;

/**
 * Writes a PNG of 8-bit red, green and blue, row by row, so that no more than a row need be in memory. Follows W3C
 * Portable Network Graphics, Third Edition. Rows are filtered with type 2 (Up), which suits drawings and is quick, or
 * with type 1 (Sub); the pixels are lossless and marked as sRGB, the compressed bytes may differ between versions of
 * zlib.
 */
public final class PngWriter implements Closeable {
    /** zlib's fastest level: noisy pictures grow by some 40 % against level 6, and take a quarter of its time. */
    public static final int FAST = 1;

    private static final byte FILTER_SUB = 1;
    private static final byte FILTER_UP = 2;
    private static final int CHUNK_BYTES = 1 << 16;

    /** What the dots of a picture are like. */
    public enum Likeness {
        /** Mostly those over them. */
        UPWARD,
        /** Mostly those to the left of them; but whole rows may be as those over them. */
        SIDEWAYS
    }

    private final ChunkWriter chunks;
    private final Likeness likeness;
    private final Deflater deflater;
    private final byte[] previous;
    private final byte[] filtered;
    private final byte[] compressed = new byte[CHUNK_BYTES];
    private int compressedLength;
    private int rowsLeft;

    /**
     * Writes what comes before the pixels.
     *
     * @param out takes the file; not closed by this writer
     * @param width dots in a row, from 1
     * @param height rows, from 1
     * @param level zlib's, 0 (stored) to 9 (smallest); {@link #FAST} for drawings
     * @throws IOException if {@code out} does
     */
    public PngWriter(OutputStream out, int width, int height, int level) throws IOException {
        this(out, width, height, level, Likeness.UPWARD);
    }

    /** The same for pictures whose dots are like others than those over them: fewer bytes take less time. */
    public PngWriter(OutputStream out, int width, int height, int level, Likeness likeness) throws IOException {
        if (width < 1 || height < 1) {
            throw new IllegalArgumentException("a picture of " + width + " by " + height);
        }
        this.chunks = new ChunkWriter(out);
        this.likeness = likeness;
        this.deflater = new Deflater(level);
        this.previous = new byte[Math.multiplyExact(3, width)];
        this.filtered = new byte[previous.length + 1];
        this.rowsLeft = height;
        chunks.begin(width, height);
    }

    /**
     * Appends the next row.
     *
     * @param rgb holds red, green and blue of each dot from {@code offset} on
     * @throws IOException if {@code out} does
     */
    public void row(byte[] rgb, int offset) throws IOException {
        if (rowsLeft == 0) {
            throw new IllegalStateException("the picture has all its rows");
        }
        rowsLeft--;
        filter(rgb, offset);
        System.arraycopy(rgb, offset, previous, 0, previous.length);
        deflater.setInput(filtered);
        while (!deflater.needsInput()) {
            compress();
        }
    }

    private void filter(byte[] rgb, int offset) {
        int end = offset + previous.length;
        if (likeness == Likeness.SIDEWAYS && !Arrays.equals(rgb, offset, end, previous, 0, previous.length)) {
            filtered[0] = FILTER_SUB;
            System.arraycopy(rgb, offset, filtered, 1, 3);
            for (int i = 3; i < previous.length; i++) {
                filtered[i + 1] = (byte) (rgb[offset + i] - rgb[offset + i - 3]);
            }
            return;
        }
        filtered[0] = FILTER_UP;
        for (int i = 0; i < previous.length; i++) {
            filtered[i + 1] = (byte) (rgb[offset + i] - previous[i]);
        }
    }

    /**
     * Writes what comes after the pixels.
     *
     * @throws IllegalStateException if rows are missing
     * @throws IOException if {@code out} does
     */
    public void finish() throws IOException {
        if (rowsLeft > 0) {
            throw new IllegalStateException(rowsLeft + " rows are missing");
        }
        deflater.finish();
        while (!deflater.finished()) {
            compress();
        }
        chunks.chunk("IDAT", compressed, 0, compressedLength);
        compressedLength = 0;
        chunks.end();
    }

    /** Frees the compressor. */
    @Override
    public void close() {
        deflater.end();
    }

    private void compress() throws IOException {
        compressedLength += deflater.deflate(compressed, compressedLength, CHUNK_BYTES - compressedLength);
        if (compressedLength == CHUNK_BYTES) {
            chunks.chunk("IDAT", compressed, 0, compressedLength);
            compressedLength = 0;
        }
    }
}

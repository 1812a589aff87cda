package org.duskloom.engine.png;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.zip.Deflater;

/**
 * Writes an animated PNG, frame by frame: W3C Portable Network Graphics, Third Edition. The first frame is the picture
 * that programs without animation show; each later one holds only the rectangle in which it differs from the one
 * before, so no more than two frames need be in memory. Rows are filtered with type 2 (Up). The pixels are lossless,
 * the compressed bytes may differ between versions of zlib.
 */
public final class AnimationWriter implements Closeable {
    /** The largest value of either part of a delay. */
    public static final int MOST_DELAY = 65_535;

    private static final byte FILTER_UP = 2;

    /** Dispose and blend operations NONE and SOURCE: what is drawn stays, and replaces what was there. */
    private static final byte STAYS = 0;

    private static final int SEQUENCE_BYTES = 4;

    private final ChunkWriter chunks;
    private final Deflater deflater;
    private final int width;
    private final int height;
    private final byte[] previous;
    private byte[] compressed = new byte[1 << 16];
    private int sequence;
    private int framesLeft;

    /**
     * Writes what comes before the frames.
     *
     * @param out takes the file; not closed by this writer
     * @param width dots in a row, from 1
     * @param height rows, from 1
     * @param frames how many will come, from 1
     * @param plays how often it is played; 0 for ever again
     * @param level zlib's, 0 (stored) to 9 (smallest)
     * @throws IOException if {@code out} does
     */
    public AnimationWriter(OutputStream out, int width, int height, int frames, int plays, int level)
            throws IOException {
        if (width < 1 || height < 1 || frames < 1 || plays < 0) {
            throw new IllegalArgumentException(
                    "an animation of " + frames + " frames of " + width + " by " + height + ", " + plays + " times");
        }
        this.chunks = new ChunkWriter(out);
        this.deflater = new Deflater(level);
        this.width = width;
        this.height = height;
        this.framesLeft = frames;
        this.previous = new byte[Math.multiplyExact(3, Math.multiplyExact(width, height))];
        chunks.begin(width, height);
        chunks.chunk("acTL", ByteBuffer.allocate(8).putInt(frames).putInt(plays).array(), 0, 8);
    }

    /**
     * Appends the next frame.
     *
     * @param rgb red, green and blue of each dot, row after row, from {@code offset} on
     * @param delayNumerator with the next, how many seconds it is shown; 0 to {@value #MOST_DELAY}
     * @param delayDenominator 1 to {@value #MOST_DELAY}
     * @throws IOException if {@code out} does
     */
    public void frame(byte[] rgb, int offset, int delayNumerator, int delayDenominator) throws IOException {
        if (framesLeft == 0) {
            throw new IllegalStateException("the animation has all its frames");
        }
        if (delayNumerator < 0
                || delayNumerator > MOST_DELAY
                || delayDenominator < 1
                || delayDenominator > MOST_DELAY) {
            throw new IllegalArgumentException("a delay of " + delayNumerator + "/" + delayDenominator + " s");
        }
        framesLeft--;
        boolean first = sequence == 0;
        ChangedArea area = first
                ? new ChangedArea(0, 0, width, height)
                : ChangedArea.between(previous, 0, rgb, offset, width, height);
        control(area, delayNumerator, delayDenominator);
        int length = compress(area, rgb, offset);
        if (first) {
            chunks.chunk("IDAT", compressed, SEQUENCE_BYTES, length);
        } else {
            ByteBuffer.wrap(compressed).putInt(sequence++);
            chunks.chunk("fdAT", compressed, 0, SEQUENCE_BYTES + length);
        }
        System.arraycopy(rgb, offset, previous, 0, previous.length);
    }

    private void control(ChangedArea area, int delayNumerator, int delayDenominator) throws IOException {
        ByteBuffer control = ByteBuffer.allocate(26)
                .putInt(sequence++)
                .putInt(area.width())
                .putInt(area.height())
                .putInt(area.left())
                .putInt(area.top())
                .putShort((short) delayNumerator)
                .putShort((short) delayDenominator)
                .put(STAYS)
                .put(STAYS);
        chunks.chunk("fcTL", control.array(), 0, 26);
    }

    /** Leaves room for a sequence number in front. */
    private int compress(ChangedArea area, byte[] rgb, int offset) {
        int rowBytes = 3 * area.width();
        byte[] filtered = new byte[area.height() * (rowBytes + 1)];
        int to = 0;
        for (int row = 0; row < area.height(); row++) {
            int from = offset + 3 * ((area.top() + row) * width + area.left());
            filtered[to++] = FILTER_UP;
            for (int i = 0; i < rowBytes; i++) {
                int above = row == 0 ? 0 : rgb[from + i - 3 * width];
                filtered[to++] = (byte) (rgb[from + i] - above);
            }
        }
        deflater.reset();
        deflater.setInput(filtered);
        deflater.finish();
        int length = 0;
        while (!deflater.finished()) {
            if (SEQUENCE_BYTES + length == compressed.length) {
                compressed = Arrays.copyOf(compressed, 2 * compressed.length);
            }
            length +=
                    deflater.deflate(compressed, SEQUENCE_BYTES + length, compressed.length - SEQUENCE_BYTES - length);
        }
        return length;
    }

    /**
     * Writes what comes after the frames.
     *
     * @throws IllegalStateException if frames are missing
     * @throws IOException if {@code out} does
     */
    public void finish() throws IOException {
        if (framesLeft > 0) {
            throw new IllegalStateException(framesLeft + " frames are missing");
        }
        chunks.end();
    }

    /** Frees the compressor. */
    @Override
    public void close() {
        deflater.end();
    }
}

package org.duskloom.engine.preview;

import java.io.IOException;
import java.io.InterruptedIOException;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.frame.FrameSource;

/**
 * The rows of a time strip without the whole of it in memory: a band of pixels at a time is read from all frames that
 * are shown, so memory does not depend on how many pixels there are. For one thread.
 */
final class BandedField {
    /** So many columns are written at once: one alone would meet another line of the cache at each row. */
    private static final int COLUMNS_AT_ONCE = 16;

    private final FrameSource source;
    private final long[] frames;
    private final int mostRows;
    private final Told told;
    private final byte[] band;
    private final byte[] read;
    private int firstPixel;
    private int endPixel;

    /** Is told of the rows that are read. */
    @FunctionalInterface
    interface Told {
        void rows(int count);
    }

    /**
     * Rows of which none is read yet.
     *
     * @param frames of the columns, rising
     * @param bytes how large a band may be; there is at least a row in it
     */
    BandedField(FrameSource source, long[] frames, int bytes, Told told) {
        this.source = source;
        this.frames = frames;
        this.told = told;
        this.mostRows = rows(frames.length, bytes, source.info().pixelCount());
        this.band = new byte[3 * frames.length * mostRows];
        this.read = new byte[3 * mostRows * COLUMNS_AT_ONCE];
    }

    private static int rows(int columns, int bytes, int pixelCount) {
        return Math.max(1, Math.min(pixelCount, bytes / (3 * columns)));
    }

    /** The rows of the pixels from one up to another. */
    TimeStripDrawing.Field of(int first, int end) {
        return (row, cells) -> {
            int pixel = first + row;
            if (pixel < firstPixel || pixel >= endPixel) {
                read(pixel, Math.min(end, pixel + mostRows));
                told.rows(endPixel - firstPixel);
            }
            System.arraycopy(band, cells.length * (pixel - firstPixel), cells, 0, cells.length);
        };
    }

    private void read(int first, int end) throws IOException {
        firstPixel = first;
        endPixel = end;
        try (FrameReader reader = source.reader(first, end)) {
            for (int column = 0; column < frames.length; column += COLUMNS_AT_ONCE) {
                int count = Math.min(COLUMNS_AT_ONCE, frames.length - column);
                for (int i = 0; i < count; i++) {
                    refuseToGoOnIfStopped();
                    reader.read(frames[column + i], read, 3 * (end - first) * i);
                }
                keep(column, count);
            }
        }
    }

    private void keep(int column, int count) {
        int rows = endPixel - firstPixel;
        for (int row = 0; row < rows; row++) {
            int to = 3 * (row * frames.length + column);
            int from = 3 * row;
            for (int i = 0; i < count; i++, to += 3, from += 3 * rows) {
                band[to] = read[from];
                band[to + 1] = read[from + 1];
                band[to + 2] = read[from + 2];
            }
        }
    }

    private static void refuseToGoOnIfStopped() throws InterruptedIOException {
        if (Thread.currentThread().isInterrupted()) {
            throw new InterruptedIOException("stopped while pictures were drawn");
        }
    }
}

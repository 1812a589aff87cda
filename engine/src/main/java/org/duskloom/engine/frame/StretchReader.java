package org.duskloom.engine.frame;

import java.io.IOException;

/** Reads whole frames and keeps a stretch of their pixels. */
final class StretchReader implements FrameReader {
    private final FrameReader whole;
    private final byte[] frame;
    private final int from;
    private final int count;

    StretchReader(FrameReader whole, int frameBytes, int firstPixel, int endPixel) {
        this.whole = whole;
        this.frame = new byte[frameBytes];
        this.from = 3 * firstPixel;
        this.count = 3 * (endPixel - firstPixel);
    }

    @Override
    public void read(long frameNumber, byte[] rgb, int offset) throws IOException {
        whole.read(frameNumber, frame, 0);
        System.arraycopy(frame, from, rgb, offset, count);
    }

    @Override
    public void close() throws IOException {
        whole.close();
    }
}

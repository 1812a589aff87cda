package org.duskloom.engine.film;

import java.util.zip.CRC32;
import java.util.zip.Deflater;
import org.duskloom.engine.frame.EncodedBytes;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.FrameEncoder;

/**
 * Packs some frames that follow each other into a piece that hangs on nothing before them. Each channel of each pixel
 * is a series: its first value, then what each frame adds to the one before, modulo 256; the series of red come first,
 * those of green next, pixel after pixel in each. All of them are compressed as raw deflate (RFC 1951). In front stand
 * four bytes: the CRC-32 of the series, most significant first.
 */
final class PieceEncoder implements FrameEncoder {
    /** The bytes in front of what is compressed. */
    static final int HEAD_BYTES = 4;

    private static final int LEVEL = 6;

    private final int pixels;
    private byte[] series = new byte[0];

    /** For frames of so many pixels. */
    PieceEncoder(int pixels) {
        this.pixels = pixels;
    }

    @Override
    public void encode(FrameBatch frames, EncodedBytes into) {
        int length = frames.bytes();
        if (series.length < length) {
            series = new byte[length];
        }
        fillSeries(frames);
        CRC32 crc = new CRC32();
        crc.update(series, 0, length);
        int at = into.reserve(HEAD_BYTES);
        for (int i = 0; i < HEAD_BYTES; i++) {
            into.array()[at + i] = (byte) (crc.getValue() >> 24 - 8 * i);
        }
        compress(length, into);
    }

    private void fillSeries(FrameBatch frames) {
        byte[] rgb = frames.rgb();
        int to = 0;
        for (int channel = 0; channel < 3; channel++) {
            for (int pixel = 0; pixel < pixels; pixel++) {
                byte previous = 0;
                for (int i = 0; i < frames.count(); i++) {
                    byte value = rgb[frames.offset(i) + 3 * pixel + channel];
                    series[to++] = (byte) (value - previous);
                    previous = value;
                }
            }
        }
    }

    private void compress(int length, EncodedBytes into) {
        Deflater deflater = new Deflater(LEVEL, true);
        try {
            deflater.setInput(series, 0, length);
            deflater.finish();
            byte[] part = new byte[1 << 16];
            while (!deflater.finished()) {
                into.put(part, 0, deflater.deflate(part));
            }
        } finally {
            deflater.end();
        }
    }
}

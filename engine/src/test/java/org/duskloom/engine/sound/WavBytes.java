package org.duskloom.engine.sound;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.function.DoubleUnaryOperator;

/** Writes WAV files for tests, chunk by chunk, sane or not. */
public final class WavBytes {
    private final ByteArrayOutputStream chunks = new ByteArrayOutputStream();
    private int riffLength = -1;

    /** A file without any chunk. */
    public WavBytes() {}

    /** A file of 16 bits whose channels are all the same function of the time in seconds. */
    public static byte[] of(int rate, int channels, double seconds, DoubleUnaryOperator sample) {
        int frames = (int) Math.round(rate * seconds);
        ByteBuffer data = ByteBuffer.allocate(2 * channels * frames).order(ByteOrder.LITTLE_ENDIAN);
        for (int i = 0; i < frames; i++) {
            short value = (short) Math.round(32767 * sample.applyAsDouble((double) i / rate));
            for (int k = 0; k < channels; k++) {
                data.putShort(value);
            }
        }
        return new WavBytes()
                .format(1, channels, rate, 16)
                .chunk("data", data.array())
                .bytes();
    }

    WavBytes format(int tag, int channels, int rate, int bits) {
        return chunk("fmt ", formatBody(tag, channels, rate, bits).array());
    }

    /** WAVE_FORMAT_EXTENSIBLE: with what the channels are for, and the real tag inside a GUID. */
    WavBytes extensible(int tag, int channels, int rate, int bits, int speakers) {
        ByteBuffer body = ByteBuffer.allocate(40).order(ByteOrder.LITTLE_ENDIAN);
        body.put(formatBody(0xFFFE, channels, rate, bits).array());
        body.putShort((short) 22).putShort((short) bits).putInt(speakers).putShort((short) tag);
        body.put(new byte[] {0, 0, 0, 0, 0x10, 0, (byte) 0x80, 0, 0, (byte) 0xAA, 0, 0x38, (byte) 0x9B, 0x71});
        return chunk("fmt ", body.array());
    }

    static ByteBuffer formatBody(int tag, int channels, int rate, int bits) {
        int block = channels * ((bits + 7) / 8);
        return ByteBuffer.allocate(16)
                .order(ByteOrder.LITTLE_ENDIAN)
                .putShort((short) tag)
                .putShort((short) channels)
                .putInt(rate)
                .putInt(rate * block)
                .putShort((short) block)
                .putShort((short) bits);
    }

    WavBytes chunk(String name, byte... body) {
        return chunk(name, body.length, body);
    }

    /** One that says of itself to be longer or shorter than it is; padded as it says. */
    WavBytes chunk(String name, long saidLength, byte[] body) {
        chunks.writeBytes(name.getBytes(StandardCharsets.US_ASCII));
        chunks.writeBytes(little((int) saidLength));
        chunks.writeBytes(body);
        if (saidLength % 2 == 1 && saidLength == body.length) {
            chunks.write(0);
        }
        return this;
    }

    WavBytes raw(byte... bytes) {
        chunks.writeBytes(bytes);
        return this;
    }

    WavBytes riffLength(int length) {
        riffLength = length;
        return this;
    }

    byte[] bytes() {
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        file.writeBytes("RIFF".getBytes(StandardCharsets.US_ASCII));
        file.writeBytes(little(riffLength == -1 ? chunks.size() + 4 : riffLength));
        file.writeBytes("WAVE".getBytes(StandardCharsets.US_ASCII));
        file.writeBytes(chunks.toByteArray());
        return file.toByteArray();
    }

    private static byte[] little(int value) {
        return ByteBuffer.allocate(4)
                .order(ByteOrder.LITTLE_ENDIAN)
                .putInt(value)
                .array();
    }
}

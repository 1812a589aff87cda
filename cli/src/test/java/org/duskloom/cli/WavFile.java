package org.duskloom.cli;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.function.DoubleUnaryOperator;

/** Sounds for tests: RIFF WAVE (IBM and Microsoft, 1991), 16 bits, one channel, 8 kHz. */
final class WavFile {
    private static final int RATE = 8_000;

    private WavFile() {}

    /** @param sample the code at a time in seconds, from -32768 to 32767 */
    static byte[] of(double seconds, DoubleUnaryOperator sample) {
        int samples = (int) (RATE * seconds);
        ByteBuffer file = ByteBuffer.allocate(44 + 2 * samples).order(ByteOrder.LITTLE_ENDIAN);
        file.put("RIFF".getBytes(StandardCharsets.US_ASCII)).putInt(36 + 2 * samples);
        file.put("WAVEfmt ".getBytes(StandardCharsets.US_ASCII)).putInt(16);
        file.putShort((short) 1).putShort((short) 1).putInt(RATE).putInt(2 * RATE);
        file.putShort((short) 2).putShort((short) 16);
        file.put("data".getBytes(StandardCharsets.US_ASCII)).putInt(2 * samples);
        for (int i = 0; i < samples; i++) {
            file.putShort((short) Math.rint(sample.applyAsDouble((double) i / RATE)));
        }
        return file.array();
    }
}

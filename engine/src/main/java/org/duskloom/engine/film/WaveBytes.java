package org.duskloom.engine.film;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import org.duskloom.engine.sound.SoundFormat;
import org.duskloom.engine.sound.SoundStream;

/**
 * Sound as every browser plays it: WAV of 16 bits (Multimedia Programming Interface and Data Specifications 1.0, IBM
 * and Microsoft, 1991; more than two channels as WAVE_FORMAT_EXTENSIBLE).
 */
final class WaveBytes {
    private static final int BLOCK_FRAMES = 1 << 14;
    private static final int BITS = 16;
    private static final int FULL_SCALE = 1 << BITS - 1;
    private static final short PCM = 1;
    private static final short EXTENSIBLE = (short) 0xFFFE;
    private static final int FORMAT_BYTES = 16;
    private static final int EXTENDED_FORMAT_BYTES = 40;

    /** Of the format PCM, behind its number: KSDATAFORMAT_SUBTYPE_PCM. */
    private static final byte[] SUBTYPE_REST = {
        0, 0, 0, 0, 0x10, 0, (byte) 0x80, 0, 0, (byte) 0xAA, 0, 0x38, (byte) 0x9B, 0x71
    };

    private WaveBytes() {}

    /**
     * Some samples of a sound, as a whole file.
     *
     * @param sound before its first sample
     * @param first the first sample of each channel that is wanted
     * @param end the sample behind the last
     */
    static byte[] of(SoundStream sound, long first, long end) {
        int channels = sound.format().channels();
        double[][] block = new double[channels][BLOCK_FRAMES];
        ByteArrayOutputStream samples = new ByteArrayOutputStream();
        long at = 0;
        for (int read = sound.read(block); read > 0 && at < end; read = sound.read(block)) {
            int from = (int) Math.max(0, Math.min(read, first - at));
            int to = (int) Math.min(read, end - at);
            add(block, from, to, samples);
            at += read;
        }
        ByteBuffer head = head(sound.format(), samples.size());
        byte[] file = new byte[head.position() + samples.size()];
        System.arraycopy(head.array(), 0, file, 0, head.position());
        System.arraycopy(samples.toByteArray(), 0, file, head.position(), samples.size());
        return file;
    }

    private static void add(double[][] block, int from, int to, ByteArrayOutputStream samples) {
        for (int i = from; i < to; i++) {
            for (double[] channel : block) {
                long code = Math.round(channel[i] * FULL_SCALE);
                long clipped = Math.max(-FULL_SCALE, Math.min(FULL_SCALE - 1, code));
                samples.write((int) clipped);
                samples.write((int) (clipped >> Byte.SIZE));
            }
        }
    }

    private static ByteBuffer head(SoundFormat format, int sampleBytes) {
        boolean isExtended = format.channels() > 2;
        int formatBytes = isExtended ? EXTENDED_FORMAT_BYTES : FORMAT_BYTES;
        ByteBuffer head = ByteBuffer.allocate(28 + formatBytes).order(ByteOrder.LITTLE_ENDIAN);
        int rate = (int) Math.round(format.rateHz());
        int frameBytes = format.channels() * BITS / Byte.SIZE;
        word(head, "RIFF").putInt(20 + formatBytes + sampleBytes);
        word(head, "WAVE");
        word(head, "fmt ").putInt(formatBytes);
        head.putShort(isExtended ? EXTENSIBLE : PCM).putShort((short) format.channels());
        head.putInt(rate).putInt(rate * frameBytes);
        head.putShort((short) frameBytes).putShort((short) BITS);
        if (isExtended) {
            head.putShort((short) (EXTENDED_FORMAT_BYTES - FORMAT_BYTES - 2)).putShort((short) BITS);
            head.putInt(format.speakers()).putShort(PCM).put(SUBTYPE_REST);
        }
        word(head, "data").putInt(sampleBytes);
        return head;
    }

    private static ByteBuffer word(ByteBuffer head, String word) {
        return head.put(word.getBytes(StandardCharsets.US_ASCII));
    }
}

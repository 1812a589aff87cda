package org.duskloom.engine.sound;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Map;
import org.duskloom.engine.text.Quoted;

/**
 * Reads what stands before the samples of a WAV file: IBM and Microsoft, Multimedia Programming Interface and Data
 * Specifications 1.0 (1991), WAVE_FORMAT_EXTENSIBLE of 2001, and the 64-bit lengths of EBU Tech 3306 (RF64).
 */
final class WavHeader {
    private static final int PCM = 1;
    private static final int FLOATING = 3;
    private static final int EXTENSIBLE = 0xFFFE;

    /** Numbers of codings that are met, registered in RFC 2361. */
    private static final Map<Integer, String> COMPRESSED =
            Map.of(2, "ADPCM", 6, "A-law", 7, "mu-law", 17, "ADPCM", 0x31, "GSM 6.10", 0x50, "MPEG audio", 0x55, "MP3");

    private static final int SHORTEST_FORMAT = 16;
    private static final int EXTENSIBLE_FORMAT = 40;

    /** No chunk of this kind is longer; what says so is damaged. */
    private static final long LONGEST_FORMAT = 4096;

    private static final long LENGTH_ELSEWHERE = 0xFFFF_FFFFL;

    private final ByteSource source;
    private long longDataBytes = SoundHeader.UNKNOWN;
    private Shape shape;

    private WavHeader(ByteSource source) {
        this.source = source;
    }

    /** What the format chunk says. */
    private record Shape(int channels, double rateHz, SampleCoding coding, int speakers) {}

    static boolean matches(byte[] start) {
        if (start.length < 12 || !ByteSource.word(start, 8).equals("WAVE")) {
            return false;
        }
        String first = ByteSource.word(start, 0);
        return first.equals("RIFF") || first.equals("RF64") || first.equals("BW64");
    }

    /** Takes all up to the first sample. */
    static SoundHeader read(ByteSource source) throws IOException, SoundException {
        source.header(12, "the first header");
        return new WavHeader(source).read();
    }

    private SoundHeader read() throws IOException, SoundException {
        while (true) {
            long at = source.position();
            source.requireChunk(shape == null ? "fmt " : "data");
            ByteBuffer chunk = little(source.header(8, "the header of a chunk"));
            String name = ByteSource.word(chunk.array(), 0);
            long length = chunk.getInt(4) & 0xFFFF_FFFFL;
            if (name.equals("data")) {
                return samples(at, length);
            }
            switch (name) {
                case "fmt " -> format(at, length);
                case "ds64" -> longLengths(length);
                default -> skip(name, length);
            }
            pad(length);
        }
    }

    private SoundHeader samples(long at, long length) throws SoundException {
        if (shape == null) {
            throw new SoundException(
                    at, "the samples come before the chunk \"fmt \" that says how to read them", "save it anew");
        }
        long bytes = length == LENGTH_ELSEWHERE ? longDataBytes : length == 0 ? SoundHeader.UNKNOWN : length;
        return new SoundHeader("WAV", shape.channels, shape.rateHz, shape.coding, shape.speakers, bytes);
    }

    private void format(long at, long length) throws IOException, SoundException {
        if (length < SHORTEST_FORMAT || length > LONGEST_FORMAT) {
            throw new SoundException(
                    at + 4,
                    "the chunk \"fmt \" is said to be " + length + " bytes long",
                    SHORTEST_FORMAT + ", 18 or " + EXTENSIBLE_FORMAT + " are usual; the file is damaged");
        }
        ByteBuffer format = little(source.header((int) length, "the chunk \"fmt \""));
        long start = at + 8;
        int tag = format.getShort(0) & 0xFFFF;
        int channels = format.getShort(2) & 0xFFFF;
        long rate = format.getInt(4) & 0xFFFF_FFFFL;
        int bits = format.getShort(14) & 0xFFFF;
        int speakers = 0;
        if (tag == EXTENSIBLE && length >= EXTENSIBLE_FORMAT) {
            speakers = format.getInt(20);
            tag = format.getShort(24) & 0xFFFF;
        }
        HeaderChecks.channels(start + 2, channels);
        HeaderChecks.rate(start + 4, rate);
        SampleCoding coding = coding(start, tag, bits, (format.getShort(12) & 0xFFFF) / channels);
        shape = new Shape(channels, rate, coding, speakers);
    }

    /** @param container bytes of one sample by the size of a frame, which counts where it holds all bits */
    private static SampleCoding coding(long start, int tag, int bits, int container) throws SoundException {
        if (tag == FLOATING) {
            HeaderChecks.floatingBits(start + 14, bits);
            return new SampleCoding(SampleCoding.Kind.FLOATING, bits / 8, false);
        }
        if (tag != PCM) {
            throw HeaderChecks.compressed(start, COMPRESSED.getOrDefault(tag, "of the kind " + tag));
        }
        HeaderChecks.wholeBits(start + 14, bits);
        int least = (bits + 7) / 8;
        int bytes = container >= least && container <= 4 ? container : least;
        return new SampleCoding(bytes == 1 ? SampleCoding.Kind.UNSIGNED : SampleCoding.Kind.SIGNED, bytes, false);
    }

    private void longLengths(long length) throws IOException, SoundException {
        if (length < 16 || length > LONGEST_FORMAT) {
            throw new SoundException(
                    source.position() - 4,
                    "the chunk \"ds64\" is said to be " + length + " bytes long",
                    "save it anew");
        }
        longDataBytes = Math.max(
                SoundHeader.UNKNOWN,
                little(source.header((int) length, "the chunk \"ds64\"")).getLong(8));
    }

    private void skip(String name, long length) throws IOException, SoundException {
        if (source.skip(length) < length) {
            throw source.endsInside("the chunk " + Quoted.of(name) + ", before the samples");
        }
    }

    /** Chunks begin at even places; some writers forget that, and no name of a chunk begins with a zero. */
    private void pad(long length) throws IOException {
        if (length % 2 == 1) {
            byte[] next = source.peek(1);
            if (next.length == 1 && next[0] == 0) {
                source.skip(1);
            }
        }
    }

    private static ByteBuffer little(byte[] bytes) {
        return ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    }
}

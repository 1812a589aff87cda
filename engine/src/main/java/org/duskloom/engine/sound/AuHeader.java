package org.duskloom.engine.sound;

import java.io.IOException;
import java.nio.ByteBuffer;

/** Reads what stands before the samples of an AU file: Sun, audio file format, six numbers of 32 bits. */
final class AuHeader {
    private static final long UNKNOWN_LENGTH = 0xFFFF_FFFFL;
    private static final int LEAST_OFFSET = 24;
    private static final long MOST_OFFSET = 1 << 20;

    private AuHeader() {}

    static boolean matches(byte[] start) {
        return start.length >= 4 && ByteSource.word(start, 0).equals(".snd");
    }

    /** Takes all up to the first sample. */
    static SoundHeader read(ByteSource source) throws IOException, SoundException {
        ByteBuffer header = ByteBuffer.wrap(source.header(LEAST_OFFSET, "the first header"));
        long offset = header.getInt(4) & UNKNOWN_LENGTH;
        long length = header.getInt(8) & UNKNOWN_LENGTH;
        long rate = header.getInt(16) & UNKNOWN_LENGTH;
        long channels = header.getInt(20) & UNKNOWN_LENGTH;
        if (offset < LEAST_OFFSET || offset > MOST_OFFSET) {
            throw new SoundException(
                    4,
                    "the samples are said to begin at byte " + offset,
                    "24 or a little more is usual; it is damaged");
        }
        SampleCoding coding = coding(header.getInt(12));
        HeaderChecks.rate(16, rate);
        HeaderChecks.channels(20, channels);
        if (source.skip(offset - LEAST_OFFSET) < offset - LEAST_OFFSET) {
            throw source.endsInside("the text before the samples");
        }
        long bytes = length == UNKNOWN_LENGTH || length == 0 ? SoundHeader.UNKNOWN : length;
        return new SoundHeader("AU", (int) channels, rate, coding, 0, bytes);
    }

    private static SampleCoding coding(int number) throws SoundException {
        return switch (number) {
            case 2, 3, 4, 5 -> new SampleCoding(SampleCoding.Kind.SIGNED, number - 1, true);
            case 6 -> new SampleCoding(SampleCoding.Kind.FLOATING, 4, true);
            case 7 -> new SampleCoding(SampleCoding.Kind.FLOATING, 8, true);
            case 1 -> throw HeaderChecks.compressed(12, "mu-law");
            case 27 -> throw HeaderChecks.compressed(12, "A-law");
            default -> throw HeaderChecks.compressed(12, "of the kind " + number);
        };
    }
}

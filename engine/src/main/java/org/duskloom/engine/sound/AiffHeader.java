package org.duskloom.engine.sound;

import java.io.IOException;
import java.nio.ByteBuffer;
import org.duskloom.engine.text.Quoted;

/**
 * Reads what stands before the samples of an AIFF file: Apple, Audio Interchange File Format 1.3 (1989) and AIFF-C
 * (1991). Of the codings of AIFF-C those are read that hold plain numbers.
 */
final class AiffHeader {
    private static final int PLAIN_COMMON = 18;
    private static final int LONGEST_COMMON = 4096;
    private static final int EXPONENT_BIAS = 16383;
    private static final long NO_LENGTH = 0xFFFF_FFFFL;

    private final ByteSource source;
    private final boolean compressible;
    private Shape shape;

    private AiffHeader(ByteSource source, boolean compressible) {
        this.source = source;
        this.compressible = compressible;
    }

    /** What the common chunk says. */
    private record Shape(int channels, double rateHz, SampleCoding coding) {}

    static boolean matches(byte[] start) {
        return start.length >= 12
                && ByteSource.word(start, 0).equals("FORM")
                && (ByteSource.word(start, 8).equals("AIFF")
                        || ByteSource.word(start, 8).equals("AIFC"));
    }

    /** Takes all up to the first sample. */
    static SoundHeader read(ByteSource source) throws IOException, SoundException {
        byte[] form = source.header(12, "the first header");
        return new AiffHeader(source, ByteSource.word(form, 8).equals("AIFC")).read();
    }

    private SoundHeader read() throws IOException, SoundException {
        while (true) {
            long at = source.position();
            source.requireChunk(shape == null ? "COMM" : "SSND");
            byte[] chunk = source.header(8, "the header of a chunk");
            String name = ByteSource.word(chunk, 0);
            long length = ByteBuffer.wrap(chunk).getInt(4) & NO_LENGTH;
            if (name.equals("SSND")) {
                return samples(at, length);
            }
            long padded = length + length % 2;
            if (name.equals("COMM")) {
                common(at, length);
                source.skip(padded - length);
            } else if (source.skip(padded) < length) {
                throw source.endsInside("the chunk " + Quoted.of(name) + ", before the samples");
            }
        }
    }

    private SoundHeader samples(long at, long length) throws IOException, SoundException {
        if (shape == null) {
            throw new SoundException(
                    at,
                    "the samples come before the chunk \"COMM\" that says how to read them",
                    "save it anew as a WAV of 16 or 24 bits");
        }
        long offset = ByteBuffer.wrap(source.header(8, "the chunk \"SSND\"")).getInt(0) & NO_LENGTH;
        if (source.skip(offset) < offset) {
            throw source.endsInside("the chunk \"SSND\"");
        }
        long bytes = length == 0 || length == NO_LENGTH ? SoundHeader.UNKNOWN : Math.max(0, length - 8 - offset);
        return new SoundHeader("AIFF", shape.channels, shape.rateHz, shape.coding, 0, bytes);
    }

    private void common(long at, long length) throws IOException, SoundException {
        if (length < PLAIN_COMMON + (compressible ? 4 : 0) || length > LONGEST_COMMON) {
            throw new SoundException(
                    at + 4, "the chunk \"COMM\" is said to be " + length + " bytes long", "the file is damaged");
        }
        ByteBuffer common = ByteBuffer.wrap(source.header((int) length, "the chunk \"COMM\""));
        long start = at + 8;
        int channels = common.getShort(0) & 0xFFFF;
        int bits = common.getShort(6) & 0xFFFF;
        double rate = extended(common.getShort(8), common.getLong(10));
        HeaderChecks.channels(start, channels);
        HeaderChecks.rate(start + 8, rate);
        String compression = compressible ? ByteSource.word(common.array(), PLAIN_COMMON) : "NONE";
        shape = new Shape(channels, rate, coding(start, compression, bits));
    }

    private static SampleCoding coding(long start, String compression, int bits) throws SoundException {
        return switch (compression) {
            case "NONE", "twos" -> whole(start, bits, true);
            case "sowt" -> whole(start, bits, false);
            case "in24" -> whole(start, 24, true);
            case "in32" -> whole(start, 32, true);
            case "fl32", "FL32" -> new SampleCoding(SampleCoding.Kind.FLOATING, 4, true);
            case "fl64", "FL64" -> new SampleCoding(SampleCoding.Kind.FLOATING, 8, true);
            default -> throw HeaderChecks.compressed(start + PLAIN_COMMON, "of the kind " + Quoted.of(compression));
        };
    }

    private static SampleCoding whole(long start, int bits, boolean bigEndian) throws SoundException {
        HeaderChecks.wholeBits(start + 6, bits);
        return new SampleCoding(SampleCoding.Kind.SIGNED, (bits + 7) / 8, bigEndian);
    }

    /** A floating-point number of 80 bits, of which the mantissa has a leading one of its own (IEEE 754, extended). */
    private static double extended(short signAndExponent, long mantissa) {
        int exponent = (signAndExponent & 0x7FFF) - EXPONENT_BIAS - 63;
        double unsigned = (mantissa >>> 1) * 2.0 + (mantissa & 1);
        double value = StrictMath.scalb(unsigned, exponent);
        return signAndExponent < 0 ? -value : value;
    }
}

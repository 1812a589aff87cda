package org.duskloom.engine.png;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;

/** Writes what every PNG is made of: the signature, and chunks with their CRC. W3C PNG, third edition, section 5. */
final class ChunkWriter {
    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};

    private final OutputStream out;

    ChunkWriter(OutputStream out) {
        this.out = out;
    }

    /** The signature, and the chunks that say what the picture is: 8 bits each of red, green and blue, in sRGB. */
    void begin(int width, int height) throws IOException {
        byte bitDepth = 8;
        byte trueColour = 2;
        ByteBuffer header = ByteBuffer.allocate(13)
                .putInt(width)
                .putInt(height)
                .put(bitDepth)
                .put(trueColour);
        out.write(SIGNATURE);
        chunk("IHDR", header.array(), 0, 13);
        chunk("sRGB", new byte[] {0}, 0, 1);
    }

    void chunk(String type, byte[] data, int offset, int length) throws IOException {
        byte[] name = type.getBytes(StandardCharsets.US_ASCII);
        CRC32 crc = new CRC32();
        crc.update(name);
        crc.update(data, offset, length);
        out.write(bigEndian(length));
        out.write(name);
        out.write(data, offset, length);
        out.write(bigEndian((int) crc.getValue()));
    }

    void end() throws IOException {
        chunk("IEND", new byte[0], 0, 0);
    }

    private static byte[] bigEndian(int value) {
        return ByteBuffer.allocate(Integer.BYTES).putInt(value).array();
    }
}

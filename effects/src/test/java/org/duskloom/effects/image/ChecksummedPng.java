package org.duskloom.effects.image;

import java.nio.ByteBuffer;
import java.util.zip.CRC32;

/** PNG files whose checksums are right whatever was changed: else hardly a change would get past them. */
final class ChecksummedPng {
    private static final int SIGNATURE_BYTES = 8;

    /** Length, type and checksum of a chunk (PNG, third edition, section 5.3). */
    private static final int CHUNK_BYTES = 12;

    private ChecksummedPng() {}

    /** The same file with the right checksum behind each chunk that is whole; anything else as it is. */
    static byte[] of(byte[] file) {
        if (!PngChunks.isPng(file)) {
            return file;
        }
        byte[] right = file.clone();
        ByteBuffer chunks = ByteBuffer.wrap(right);
        int at = SIGNATURE_BYTES;
        while (at + CHUNK_BYTES <= right.length) {
            int length = chunks.getInt(at);
            if (length < 0 || length > right.length - at - CHUNK_BYTES) {
                return right;
            }
            CRC32 checksum = new CRC32();
            checksum.update(right, at + 4, length + 4);
            chunks.putInt(at + 8 + length, (int) checksum.getValue());
            at += CHUNK_BYTES + length;
        }
        return right;
    }
}

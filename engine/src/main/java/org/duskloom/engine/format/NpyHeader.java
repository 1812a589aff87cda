package org.duskloom.engine.format;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import org.duskloom.engine.frame.RunInfo;

/**
 * What stands before the numbers of an array in a file for NumPy: version 1.0 of the format that NumPy Enhancement
 * Proposal 1 describes, padded to a multiple of 64 bytes as NumPy does today.
 */
final class NpyHeader {
    private static final byte[] MAGIC = {(byte) 0x93, 'N', 'U', 'M', 'P', 'Y', 1, 0};
    private static final int ALIGNMENT = 64;

    private NpyHeader() {}

    /** The header of all frames of a run, as bytes without a sign. */
    static byte[] of(RunInfo run) {
        String array = "{'descr': '|u1', 'fortran_order': False, 'shape': ("
                + run.frames().count() + ", " + run.pixelCount() + ", 3), }";
        int before = MAGIC.length + Short.BYTES;
        int whole = roundedUp(before + array.length() + 1);
        String padded = array + " ".repeat(whole - before - array.length() - 1) + "\n";
        return ByteBuffer.allocate(whole)
                .order(ByteOrder.LITTLE_ENDIAN)
                .put(MAGIC)
                .putShort((short) padded.length())
                .put(padded.getBytes(StandardCharsets.US_ASCII))
                .array();
    }

    private static int roundedUp(int bytes) {
        return (bytes + ALIGNMENT - 1) / ALIGNMENT * ALIGNMENT;
    }
}

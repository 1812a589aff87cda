package org.duskloom.effects.image;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.zip.CRC32;

/** The chunks of a PNG file, by W3C Portable Network Graphics, Third Edition, "Datastream structure". */
final class PngChunks {
    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};

    /** The chunks whose contents matter here; only these must have the right checksum. */
    private static final Set<String> READ = Set.of("IHDR", "PLTE", "tRNS", "IDAT", "IEND", "acTL", "fcTL", "fdAT");

    private static final int FRAME_BYTES = 12;

    /** Far more than programs write, and few enough that a file of nothing but empty ones cannot fill the memory. */
    private static final int MOST_CHUNKS = 1 << 18;

    private PngChunks() {}

    /** A chunk of a file, as a range of its bytes. */
    record Chunk(String type, byte[] file, int start, int length) {
        ByteBuffer data() {
            return ByteBuffer.wrap(file, start, length).slice();
        }

        /** The bytes from an offset within the chunk on. */
        InputStream stream(int offset) {
            return new ByteArrayInputStream(file, start + offset, Math.max(0, length - offset));
        }

        void need(int bytes) throws ImageException {
            if (length != bytes) {
                throw ImageException.damaged("its chunk " + type + " has " + length + " bytes, not " + bytes);
            }
        }
    }

    static boolean isPng(byte[] file) {
        return file.length >= SIGNATURE.length
                && Arrays.equals(file, 0, SIGNATURE.length, SIGNATURE, 0, SIGNATURE.length);
    }

    /** The chunks that matter here up to the end mark, of which the first is the header. */
    static List<Chunk> of(byte[] file) throws ImageException {
        List<Chunk> chunks = new ArrayList<>();
        Chunk chunk;
        for (int at = SIGNATURE.length; true; at += chunk.length + FRAME_BYTES) {
            chunk = chunkAt(file, at);
            if (chunks.isEmpty() != chunk.type.equals("IHDR")) {
                throw ImageException.damaged("its header does not stand first, and once");
            }
            if (READ.contains(chunk.type)) {
                chunks.add(chunk);
            }
            if (chunk.type.equals("IEND")) {
                return chunks;
            }
            if (chunks.size() > MOST_CHUNKS) {
                throw new ImageException("has more than " + MOST_CHUNKS + " chunks", "save it anew");
            }
        }
    }

    private static Chunk chunkAt(byte[] file, int at) throws ImageException {
        ByteBuffer rest = ByteBuffer.wrap(file, at, file.length - at);
        if (rest.remaining() < FRAME_BYTES) {
            throw ImageException.damaged("it ends after " + file.length + " bytes, before its end mark");
        }
        int length = rest.getInt();
        String type = new String(file, at + 4, 4, StandardCharsets.ISO_8859_1);
        if (length < 0 || length > rest.remaining() - 8) {
            throw ImageException.damaged("its chunk at byte " + at + " says to have " + (length & 0xFFFFFFFFL)
                    + " bytes, but the file ends before that");
        }
        Chunk chunk = new Chunk(type, file, at + 8, length);
        check(chunk);
        return chunk;
    }

    private static void check(Chunk chunk) throws ImageException {
        boolean critical = (chunk.type.charAt(0) & 32) == 0;
        if (critical && !READ.contains(chunk.type)) {
            throw ImageException.damaged("it has a chunk of a kind that is not known");
        }
        if (!READ.contains(chunk.type)) {
            return;
        }
        CRC32 crc = new CRC32();
        crc.update(chunk.file, chunk.start - 4, chunk.length + 4);
        int written = ByteBuffer.wrap(chunk.file).getInt(chunk.start + chunk.length);
        if (written != (int) crc.getValue()) {
            throw ImageException.damaged(
                    "the checksum of its chunk " + chunk.type + " at byte " + (chunk.start - 8) + " does not fit");
        }
    }

    /** The compressed bytes of chunks, one after the other, each from an offset on. */
    static InputStream joined(List<Chunk> chunks, int offset) {
        return new SequenceInputStream(Collections.enumeration(
                chunks.stream().map(chunk -> chunk.stream(offset)).toList()));
    }
}

package org.duskloom.engine.png;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.zip.CRC32;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * Takes a PNG apart as W3C Portable Network Graphics, Third Edition, section 5 says, with the JDK's CRC and inflater,
 * which checks the Adler-32.
 *
 * @param chunks all chunks in order
 */
public record PngChunks(List<Chunk> chunks) {
    /** The signature of section 5.2. */
    private static final String SIGNATURE = "89504e470d0a1a0a";

    public record Chunk(String type, byte[] data, String hex) {}

    public static PngChunks of(byte[] file) {
        ByteBuffer in = ByteBuffer.wrap(file);
        byte[] signature = new byte[8];
        in.get(signature);
        assertThat(HexFormat.of().formatHex(signature)).isEqualTo(SIGNATURE);
        List<Chunk> chunks = new ArrayList<>();
        while (in.hasRemaining()) {
            chunks.add(chunk(file, in));
        }
        return new PngChunks(chunks);
    }

    private static Chunk chunk(byte[] file, ByteBuffer in) {
        int start = in.position();
        byte[] data = new byte[in.getInt()];
        byte[] type = new byte[4];
        in.get(type).get(data);
        CRC32 crc = new CRC32();
        crc.update(file, start + 4, 4 + data.length);
        assertThat(in.getInt()).isEqualTo((int) crc.getValue());
        return new Chunk(
                new String(type, StandardCharsets.US_ASCII),
                data,
                HexFormat.of().formatHex(file, start, in.position()));
    }

    List<String> types() {
        return chunks.stream().map(Chunk::type).toList();
    }

    public String hex(String type) {
        return chunks.stream()
                .filter(chunk -> chunk.type().equals(type))
                .findFirst()
                .orElseThrow()
                .hex();
    }

    /** The filtered rows, each with its filter byte. */
    public byte[] inflated() throws DataFormatException {
        ByteArrayOutputStream joined = new ByteArrayOutputStream();
        chunks.stream().filter(chunk -> chunk.type().equals("IDAT")).forEach(chunk -> joined.writeBytes(chunk.data()));
        Inflater inflater = new Inflater();
        inflater.setInput(joined.toByteArray());
        ByteArrayOutputStream rows = new ByteArrayOutputStream();
        byte[] piece = new byte[4096];
        while (!inflater.finished()) {
            rows.write(piece, 0, inflater.inflate(piece));
        }
        assertThat(inflater.getRemaining()).isZero();
        inflater.end();
        return rows.toByteArray();
    }
}

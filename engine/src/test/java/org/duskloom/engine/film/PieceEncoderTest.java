package org.duskloom.engine.film;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.zip.CRC32;
import java.util.zip.Inflater;
import java.util.zip.InflaterInputStream;
import org.duskloom.engine.frame.EncodedBytes;
import org.duskloom.engine.frame.FrameBatch;
import org.junit.jupiter.api.Test;

class PieceEncoderTest {
    /** One frame: its red ones, its green ones, its blue ones, by the JDK's inflater (RFC 1951). */
    @Test
    void channelsStandByThemselves() throws IOException {
        byte[] frame = {1, 2, 3, 11, 12, 13};
        EncodedBytes packed = new EncodedBytes();
        new PieceEncoder(2).encode(FrameBatch.of(5, frame), packed);
        byte[] series = inflated(packed);
        assertThat(series).containsExactly(1, 11, 2, 12, 3, 13);
        CRC32 crc = new CRC32();
        crc.update(series);
        assertThat(ByteBuffer.wrap(packed.array()).getInt()).isEqualTo((int) crc.getValue());
    }

    private static byte[] inflated(EncodedBytes packed) throws IOException {
        ByteArrayInputStream in = new ByteArrayInputStream(
                packed.array(), PieceEncoder.HEAD_BYTES, packed.length() - PieceEncoder.HEAD_BYTES);
        try (InflaterInputStream series = new InflaterInputStream(in, new Inflater(true))) {
            return series.readAllBytes();
        }
    }
}

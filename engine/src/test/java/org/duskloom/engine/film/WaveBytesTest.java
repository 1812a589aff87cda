package org.duskloom.engine.film;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.HexFormat;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.sound.SoundStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sound for a page, byte by byte. */
class WaveBytesTest {
    /** Samples 0, 1, 32767 and -32768 at 44,100 Hz, as the wave module of Python 3.11 writes them. */
    private static final byte[] PYTHON = HexFormat.of()
            .parseHex("524946462c00000057415645666d7420100000000100010044ac0000885801000200100064617461080000000000"
                    + "0100ff7f0080");

    @Test
    void areThoseOfAnotherWriter() throws IOException {
        assertThat(cut(PYTHON, 0, 4)).isEqualTo(PYTHON);
        assertThat(cut(PYTHON, 0, Long.MAX_VALUE)).isEqualTo(PYTHON);
    }

    /** Two samples of four bytes less: lengths at 4 and at 40. */
    @Test
    void aPartHasItsOwnLength() throws IOException {
        byte[] part = cut(PYTHON, 1, 3);
        assertThat(samples(part, 44)).containsExactly(1, 32_767);
        assertThat(part[4]).isEqualTo((byte) 40);
        assertThat(part[40]).isEqualTo((byte) 4);
        assertThat(Arrays.copyOfRange(part, 8, 40)).isEqualTo(Arrays.copyOfRange(PYTHON, 8, 40));
        assertThat(cut(PYTHON, 9, 12)).hasSize(44);
        assertThat(cut(PYTHON, 2, 2)).hasSize(44);
    }

    /**
     * Samples of 24 bits are rounded to the nearest of 16, halves up: 127, 128, -128 and -129 of 256; the largest would
     * become 32,768, which 16 bits do not have.
     */
    @ParameterizedTest
    @CsvSource({"127, 0", "128, 1", "-128, 0", "-129, -1", "8388607, 32767", "-8388608, -32768", "8388480, 32767"})
    void finerSamplesAreRounded(int fine, int coarse) throws IOException {
        ByteBuffer bytes = wave(1, 24, 3);
        bytes.put((byte) fine).put((byte) (fine >> 8)).put((byte) (fine >> 16));
        assertThat(samples(cut(bytes.array(), 0, 1), 44)).containsExactly(coarse);
    }

    /** Blocks have 16,384 samples; the part lies over the joint of the first two. */
    @Test
    void nothingIsLostAtTheJointOfBlocks() throws IOException {
        ByteBuffer bytes = wave(1, 16, 2 * 40_000);
        for (int i = 0; i < 40_000; i++) {
            bytes.putShort((short) i);
        }
        assertThat(samples(cut(bytes.array(), 16_382, 16_387), 44))
                .containsExactly(16_382, 16_383, 16_384, 16_385, 16_386);
        assertThat(samples(cut(bytes.array(), 32_768, 32_769), 44)).containsExactly((short) 32_768);
    }

    /**
     * More than two channels are WAVE_FORMAT_EXTENSIBLE, with KSDATAFORMAT_SUBTYPE_PCM, which Microsoft's documentation
     * of its headers gives as 00000001-0000-0010-8000-00aa00389b71. 3 channels of 2 bytes at 8000 Hz are 48,000 a
     * second.
     */
    @Test
    void manyChannelsSayWhatTheyAre() throws IOException {
        ByteBuffer bytes = wave(3, 16, 12);
        for (int i = 1; i <= 6; i++) {
            bytes.putShort((short) (100 * i));
        }
        byte[] made = cut(bytes.array(), 0, 2);
        ByteBuffer head = ByteBuffer.wrap(made).order(ByteOrder.LITTLE_ENDIAN);
        assertThat(made).hasSize(68 + 12);
        assertThat(head.getInt(4)).isEqualTo(72);
        assertThat(head.getInt(16)).isEqualTo(40);
        assertThat(head.getShort(20)).isEqualTo((short) 0xFFFE);
        assertThat(head.getInt(28)).isEqualTo(48_000);
        assertThat(head.getShort(32)).isEqualTo((short) 6);
        assertThat(head.getShort(36)).isEqualTo((short) 22);
        assertThat(Arrays.copyOfRange(made, 44, 60))
                .isEqualTo(HexFormat.of().parseHex("0100000000001000800000aa00389b71"));
        assertThat(samples(made, 68)).containsExactly(100, 200, 300, 400, 500, 600);
    }

    private static byte[] cut(byte[] file, long first, long end) throws IOException {
        try (SoundStream sound = SoundStream.open(new ByteArrayInputStream(file), "song.wav", new Problems())
                .orElseThrow()) {
            return WaveBytes.of(sound, first, end);
        }
    }

    /** A head as the wave module writes it, at 8000 Hz, with room for the samples. */
    private static ByteBuffer wave(int channels, int bits, int bytes) {
        ByteBuffer file = ByteBuffer.allocate(44 + bytes).order(ByteOrder.LITTLE_ENDIAN);
        file.put(PYTHON, 0, 44).putInt(4, 36 + bytes).putShort(22, (short) channels);
        file.putInt(24, 8000).putInt(28, 8000 * channels * bits / 8);
        file.putShort(32, (short) (channels * bits / 8)).putShort(34, (short) bits);
        return file.putInt(40, bytes);
    }

    private static int[] samples(byte[] file, int from) {
        int[] samples = new int[(file.length - from) / 2];
        for (int i = 0; i < samples.length; i++) {
            samples[i] = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN).getShort(from + 2 * i);
        }
        return samples;
    }
}

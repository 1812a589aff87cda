package org.duskloom.engine.png;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import java.util.zip.Adler32;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against W3C Portable Network Graphics, Third Edition (24 June 2025), and the JDK's own reader. */
class PngWriterTest {

    /**
     * Section 5 and 11.2.1; CRC-32 as in annex D, worked out for these bytes by another implementation (Python's zlib).
     */
    @ParameterizedTest
    @CsvSource({
        "1, 1, 0000000d494844520000000100000001 0802000000 907753de",
        "170, 1, 0000000d49484452000000aa00000001 0802000000 c1cfa2f8",
        "16, 16, 0000000d494844520000001000000010 0802000000 90916836"
    })
    void headerIsAsPublished(int width, int height, String expected) throws IOException {
        PngChunks png = PngChunks.of(written(width, height, new byte[3 * width * height], PngWriter.FAST));
        assertThat(png.hex("IHDR")).isEqualTo(expected.replace(" ", ""));
    }

    /** Section 11.2.4 (IEND) and 11.3.2.5 (sRGB, perceptual), with the CRCs of annex D. */
    @Test
    void colourSpaceAndEndAreAsPublished() throws IOException {
        PngChunks png = PngChunks.of(written(1, 1, new byte[3], PngWriter.FAST));
        assertThat(png.types()).containsExactly("IHDR", "sRGB", "IDAT", "IEND");
        assertThat(png.hex("sRGB")).isEqualTo("000000017352474200aece1ce9");
        assertThat(png.hex("IEND")).isEqualTo("0000000049454e44ae426082");
    }

    /** Section 9.2: Up gives each byte less the one above it, modulo 256; above the first row stand zeros. */
    @Test
    void rowsAreFilteredWithUp() throws Exception {
        byte[] rgb = {10, 20, 30, 12, 24, 36, 15, 30, 45, 11, 22, 33, 14, 28, 42, 18, 36, 54, 0, 0, 0, 0, 0, 0, 0, 0, 0
        };
        assertThat(PngChunks.of(written(3, 3, rgb, PngWriter.FAST)).inflated())
                .containsExactly(
                        2, 10, 20, 30, 12, 24, 36, 15, 30, 45, //
                        2, 1, 2, 3, 2, 4, 6, 3, 6, 9, //
                        2, -11, -22, -33, -14, -28, -42, -18, -36, -54);
    }

    /**
     * Section 9.2: Sub gives each byte less that of the dot to its left, modulo 256; left of the first stand zeros. A
     * row that is as the one above it is told by that.
     */
    @Test
    void rowsThatAreLikeNoOtherAreFilteredWithSub() throws Exception {
        byte[] rgb = {
            10, 20, 30, 12, 24, 36, 15, 30, 45, 10, 20, 30, 12, 24, 36, 15, 30, 45, 90, 91, 92, 0, 0, 0, 1, 2, 3
        };
        assertThat(PngChunks.of(written(3, 3, rgb, PngWriter.FAST, PngWriter.Likeness.SIDEWAYS))
                        .inflated())
                .containsExactly(
                        1, 10, 20, 30, 2, 4, 6, 3, 6, 9, //
                        2, 0, 0, 0, 0, 0, 0, 0, 0, 0, //
                        1, 90, 91, 92, -90, -91, -92, 1, 2, 3);
    }

    /** What the check values rest on: the JDK's CRC-32 and Adler-32 (RFC 1950) of the usual "123456789". */
    @Test
    void theJudgesThemselvesAreSound() {
        byte[] digits = "123456789".getBytes(StandardCharsets.US_ASCII);
        CRC32 crc = new CRC32();
        crc.update(digits);
        Adler32 adler = new Adler32();
        adler.update(digits);
        assertThat(crc.getValue()).isEqualTo(0xCBF43926L);
        assertThat(adler.getValue()).isEqualTo(0x091E01DEL);
    }

    /** Noise does not compress, so 700 by 300 dots take several IDAT chunks. */
    @ParameterizedTest
    @CsvSource({
        "1, 1, 0, UPWARD",
        "1, 1, 1, SIDEWAYS",
        "3, 2, 9, SIDEWAYS",
        "1, 500, 1, SIDEWAYS",
        "500, 1, 1, UPWARD",
        "700, 300, 0, UPWARD",
        "700, 300, 1, UPWARD",
        "700, 300, 1, SIDEWAYS",
        "700, 300, 6, SIDEWAYS"
    })
    void theJdkReadsBackEveryDot(int width, int height, int level, PngWriter.Likeness likeness) throws IOException {
        byte[] rgb = new byte[3 * width * height];
        new Random(7).nextBytes(rgb);
        byte[] file = written(width, height, rgb, level, likeness);
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(file));
        assertThat(image.getWidth()).isEqualTo(width);
        assertThat(image.getHeight()).isEqualTo(height);
        byte[] read = new byte[rgb.length];
        for (int i = 0; i < width * height; i++) {
            int colour = image.getRGB(i % width, i / width);
            read[3 * i] = (byte) (colour >> 16);
            read[3 * i + 1] = (byte) (colour >> 8);
            read[3 * i + 2] = (byte) colour;
        }
        assertThat(read).isEqualTo(rgb);
        if (width * height > 100_000) {
            assertThat(PngChunks.of(file).types()).filteredOn("IDAT"::equals).hasSizeGreaterThan(5);
        }
    }

    @Test
    void refusesTooFewRowsTooManyAndNone() throws IOException {
        try (PngWriter png = new PngWriter(OutputStream.nullOutputStream(), 1, 1, PngWriter.FAST)) {
            assertThatThrownBy(png::finish).isInstanceOf(IllegalStateException.class);
            png.row(new byte[3], 0);
            assertThatThrownBy(() -> png.row(new byte[3], 0)).isInstanceOf(IllegalStateException.class);
        }
        assertThatThrownBy(() -> new PngWriter(OutputStream.nullOutputStream(), 0, 1, 1))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static byte[] written(int width, int height, byte[] rgb, int level) throws IOException {
        return written(width, height, rgb, level, PngWriter.Likeness.UPWARD);
    }

    private static byte[] written(int width, int height, byte[] rgb, int level, PngWriter.Likeness likeness)
            throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PngWriter png = new PngWriter(out, width, height, level, likeness)) {
            for (int y = 0; y < height; y++) {
                png.row(rgb, 3 * width * y);
            }
            png.finish();
        }
        return out.toByteArray();
    }
}

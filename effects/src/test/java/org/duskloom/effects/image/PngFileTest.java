package org.duskloom.effects.image;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.IndexColorModel;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Random;
import java.util.stream.Stream;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import org.duskloom.effects.PngBuilder;
import org.duskloom.effects.PngBuilder.Frame;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Holds the reader to the JDK's writer of still pictures, and to W3C Portable Network Graphics, Third Edition. */
class PngFileTest {
    static final int RED = 0xFFFF0000;
    static final int GREEN = 0xFF00FF00;
    static final int CLEAR = 0;

    /** 1 x 1 red, stored without compression: a file that pngcheck 3.0.3 finds no fault with. */
    @Test
    void readsTheSmallestFile() throws ImageException {
        byte[] file = HexFormat.of()
                .parseHex("89504e470d0a1a0a0000000d4948445200000001000000010802000000907753de0000000f4944415478"
                        + "01010400fbff00ff0000030101008d1de5820000000049454e44ae426082");
        assertThat(PngFile.read(file).images().get(0)).containsExactly(RED);
    }

    /** Colour type, bits and channels, each with and without interlacing, at sizes that end in the middle of a byte. */
    static Stream<Arguments> kinds() {
        return Stream.of(
                        "grey 1",
                        "grey 2",
                        "grey 4",
                        "grey 8",
                        "grey 16",
                        "palette 1",
                        "palette 2",
                        "palette 4",
                        "palette 8",
                        "grey-alpha 8",
                        "grey-alpha 16",
                        "rgb 8",
                        "rgb 16",
                        "rgba 8",
                        "rgba 16")
                .flatMap(kind ->
                        Stream.of(Arguments.of(kind, 13, 11), Arguments.of(kind, 1, 1), Arguments.of(kind, 5, 2)));
    }

    @ParameterizedTest(name = "{0}, {1} x {2}")
    @MethodSource("kinds")
    void readsWhatTheJdkWrites(String kind, int width, int height) throws Exception {
        String[] words = kind.split(" ");
        Sample sample = Sample.of(words[0], Integer.parseInt(words[1]), width, height);
        for (int mode : new int[] {ImageWriteParam.MODE_DISABLED, ImageWriteParam.MODE_DEFAULT}) {
            Film film = PngFile.read(written(sample.image, mode));

            assertThat(film.width()).isEqualTo(width);
            assertThat(film.height()).isEqualTo(height);
            assertThat(film.images().get(0)).isEqualTo(sample.argb);
        }
    }

    /**
     * A picture of random samples, and what they mean: a sample of b bits is round(sample * 255 / (2^b - 1)), by
     * "Sample depth rescaling".
     */
    private record Sample(BufferedImage image, int[] argb) {
        static Sample of(String kind, int bits, int width, int height) {
            Random random = new Random(bits * 100 + width);
            BufferedImage image = blank(kind, bits, width, height, random);
            int bands = image.getRaster().getNumBands();
            int most = (1 << bits) - 1;
            int[] argb = new int[width * height];
            for (int i = 0; i < argb.length; i++) {
                int[] samples = random.ints(bands, 0, most + 1).toArray();
                image.getRaster().setPixel(i % width, i / width, samples);
                int[] codes = Arrays.stream(samples)
                        .map(sample -> (int) Math.round(sample * 255.0 / most))
                        .toArray();
                argb[i] = image.getColorModel() instanceof IndexColorModel colors && kind.equals("palette")
                        ? colors.getRGB(samples[0])
                        : argb(codes);
            }
            return new Sample(image, argb);
        }

        private static int argb(int[] codes) {
            int alpha = codes.length % 2 == 0 ? codes[codes.length - 1] : 255;
            return codes.length < 3
                    ? alpha << 24 | codes[0] * 0x010101
                    : alpha << 24 | codes[0] << 16 | codes[1] << 8 | codes[2];
        }

        private static BufferedImage blank(String kind, int bits, int width, int height, Random random) {
            if (kind.equals("palette")) {
                byte[][] colors = new byte[4][1 << bits];
                for (byte[] channel : colors) {
                    random.nextBytes(channel);
                }
                IndexColorModel model =
                        new IndexColorModel(bits, 1 << bits, colors[0], colors[1], colors[2], colors[3]);
                return indexed(model, bits, width, height);
            }
            if (kind.equals("grey") && bits < 8) {
                byte[] ramp = new byte[1 << bits];
                for (int i = 0; i < ramp.length; i++) {
                    ramp[i] = (byte) Math.round(i * 255.0 / (ramp.length - 1));
                }
                return indexed(new IndexColorModel(bits, ramp.length, ramp, ramp, ramp), bits, width, height);
            }
            boolean grey = kind.startsWith("grey");
            boolean alpha = kind.endsWith("a") || kind.endsWith("alpha");
            int bands = (grey ? 1 : 3) + (alpha ? 1 : 0);
            int[] offsets = {0, 1, 2, 3};
            return ImageTypeSpecifier.createInterleaved(
                            ColorSpace.getInstance(grey ? ColorSpace.CS_GRAY : ColorSpace.CS_sRGB),
                            Arrays.copyOf(offsets, bands),
                            bits == 8 ? DataBuffer.TYPE_BYTE : DataBuffer.TYPE_USHORT,
                            alpha,
                            false)
                    .createBufferedImage(width, height);
        }

        private static BufferedImage indexed(IndexColorModel model, int bits, int width, int height) {
            WritableRaster raster = bits == 8
                    ? model.createCompatibleWritableRaster(width, height)
                    : Raster.createPackedRaster(DataBuffer.TYPE_BYTE, width, height, 1, bits, null);
            return new BufferedImage(model, raster, false, null);
        }
    }

    private static byte[] written(BufferedImage image, int progressiveMode) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
        ImageWriteParam param = writer.getDefaultWriteParam();
        param.setProgressiveMode(progressiveMode);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, null, null), param);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }

    /** Row 1 of worked examples: 11 22 33 14 28 42 18 36 54 under 10 20 30 12 24 36 15 30 45, three bytes a pixel. */
    @ParameterizedTest
    @CsvSource({
        "0, 11 22 33 14 28 42 18 36 54",
        "1, 11 22 33 3 6 9 4 8 12",
        "2, 1 2 3 2 4 6 3 6 9",
        "3, 6 12 18 3 5 8 4 7 11",
        "4, 1 2 3 2 4 6 3 6 9"
    })
    void undoesFilters(int filter, String filtered) throws ImageException {
        byte[] above = bytes(0, "10 20 30 12 24 36 15 30 45");
        byte[] row = bytes(filter, filtered);
        PngRows.unfilter(row, above, 3);

        assertThat(Arrays.copyOfRange(row, 1, 10)).containsExactly(11, 22, 33, 14, 28, 42, 18, 36, 54);
    }

    private static byte[] bytes(int first, String rest) {
        String[] words = rest.split(" ");
        byte[] bytes = new byte[words.length + 1];
        bytes[0] = (byte) first;
        for (int i = 0; i < words.length; i++) {
            bytes[i + 1] = Byte.parseByte(words[i]);
        }
        return bytes;
    }

    /** Ties go to the left, then up; nothing wraps round at 256. */
    @ParameterizedTest
    @CsvSource({
        "10, 20, 10, 20", "10, 20, 20, 10", "10, 20, 15, 15", "100, 50, 60, 100", "255, 0, 128, 128",
        "1, 2, 3, 1", "3, 1, 2, 2", "0, 255, 255, 0", "50, 100, 0, 100", "20, 10, 15, 15"
    })
    void predictsByPaeth(int left, int up, int upLeft, int expected) {
        assertThat(PngRows.paeth(left, up, upLeft)).isEqualTo(expected);
    }

    /** One colour of a picture without alpha is transparent, compared at full depth: 0x1234 is, 0x1235 is not. */
    @Test
    void makesOneColorTransparent() throws ImageException {
        byte[] rows = {0, 0x12, 0x34, 0x12, 0x35};
        byte[] file = new PngBuilder()
                .header(2, 1, 16, 0, false)
                .chunk("tRNS", (byte) 0x12, (byte) 0x34)
                .data(rows)
                .end();

        assertThat(PngFile.read(file).images().get(0)).containsExactly(0x00121212, 0xFF121212);
    }

    @Test
    void readsDataInManyChunks() throws ImageException {
        byte[] whole = PngBuilder.still(3, 1, RED, GREEN, CLEAR);
        int at = 8 + 25;
        int length = ByteBuffer.wrap(whole).getInt(at);
        PngBuilder split = new PngBuilder().header(3, 1, 8, 6, false);
        for (int i = 0; i < length; i++) {
            split.chunk("IDAT", whole[at + 8 + i]).chunk("IDAT");
        }
        assertThat(PngFile.read(split.end()).images().get(0)).containsExactly(RED, GREEN, CLEAR);
    }

    /** A few bytes each, which would take many times as much memory. */
    @Test
    void refusesMoreChunksThanAnyProgramWrites() throws ImageException {
        PngBuilder some = new PngBuilder().header(1, 1, 8, 6, false);
        PngBuilder many = new PngBuilder().header(1, 1, 8, 6, false);
        for (int i = 0; i < 1 << 18; i++) {
            some.chunk("tEXt", new byte[0]);
            many.chunk("IDAT", new byte[0]);
        }
        byte[] rows = PngBuilder.rows(1, RED);
        assertThat(PngFile.read(some.data(rows).end()).images().get(0)).containsExactly(RED);
        assertThatThrownBy(() -> PngFile.read(many.data(rows).end()))
                .isInstanceOf(ImageException.class)
                .hasMessage("has more than 262144 chunks");
    }

    /** The sizes are refused as the header says them: there are no pixels in these files at all. */
    @ParameterizedTest
    @CsvSource({"65535, 65535, 16 megapixels", "4097, 4096, 16 megapixels", "-1, 1, 16 megapixels", "0, 5, 0 x 5 pixels"
    })
    void refusesPicturesThatAreTooLarge(int width, int height, String message) {
        byte[] file = new PngBuilder().header(width, height, 8, 6, false).end();
        assertThatThrownBy(() -> PngFile.read(file))
                .isInstanceOf(ImageException.class)
                .hasMessageContaining(message);
    }

    /** What is read is as large as the header says, however much more the data would unpack to. */
    @Test
    void unpacksNoMoreThanIsNeeded() throws ImageException {
        byte[] file = new PngBuilder()
                .header(1, 1, 8, 0, false)
                .data(new byte[50_000_000])
                .end();
        assertThat(PngFile.read(file).images().get(0)).containsExactly(0xFF000000);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 3, colour type 0 with 3 bits",
        "2, 4, colour type 2 with 4 bits",
        "3, 16, colour type 3 with 16 bits",
        "5, 8, colour type 5"
    })
    void refusesKindsOfPixelsThatNoPngHas(int colorType, int depth, String message) {
        byte[] file = new PngBuilder()
                .header(1, 1, depth, colorType, false)
                .data(new byte[9])
                .end();
        assertThatThrownBy(() -> PngFile.read(file)).hasMessageContaining(message);
    }

    @Test
    void saysWhatIsDamaged() {
        PngBuilder start = new PngBuilder().header(2, 2, 8, 3, false);
        assertDamaged(start.bytes(), "before its end mark");
        assertDamaged(
                new PngBuilder().header(2, 2, 8, 3, false).data(new byte[6]).end(), "palette has 0 bytes");
        assertDamaged(indexed((byte) 2), "colour 2 of a palette of 2");
        assertDamaged(
                new PngBuilder().header(2, 2, 8, 0, false).data(new byte[5]).end(), "before its last row");
        assertDamaged(new PngBuilder().header(2, 2, 8, 0, false).end(), "before its last row");
        assertDamaged(
                new PngBuilder()
                        .header(1, 1, 8, 0, false)
                        .data(new byte[] {7, 0})
                        .end(),
                "filter 7");
        assertDamaged(
                new PngBuilder()
                        .header(1, 1, 8, 0, false)
                        .chunk("IDAT", (byte) 1, (byte) 2)
                        .end(),
                "cannot be unpacked");
        assertDamaged(new PngBuilder().chunk("IEND").bytes(), "header does not stand first");
        assertDamaged(new PngBuilder().header(1, 1, 8, 0, false).chunk("ABCD").end(), "not known");
        byte[] flipped = PngBuilder.still(1, 1, RED);
        flipped[16] ^= 1;
        assertDamaged(flipped, "checksum of its chunk IHDR at byte 8");
    }

    private static byte[] indexed(byte index) {
        return new PngBuilder()
                .header(1, 1, 8, 3, false)
                .chunk("PLTE", new byte[6])
                .data(new byte[] {0, index})
                .end();
    }

    /** Refused as damaged, with words that say how and with a hint. */
    static void assertDamaged(byte[] file, String how) {
        assertThatThrownBy(() -> PngFile.read(file)).isInstanceOfSatisfying(ImageException.class, e -> {
            assertThat(e).hasMessageStartingWith("is damaged: ").hasMessageContaining(how);
            assertThat(e.hint()).isNotEmpty();
        });
    }

    /** Whatever bytes change or end is either read or refused; nothing else may happen. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4})
    void survivesDamage(int seed) {
        Random random = new Random(seed);
        byte[] file = PngBuilder.animation(
                2, 2, Frame.whole(2, 2, 1, 4, RED, GREEN, RED, CLEAR), new Frame(1, 1, 1, 1, 1, 4, 2, 1, GREEN));
        int read = 0;
        for (int round = 0; round < 2000; round++) {
            byte[] damaged = Arrays.copyOf(file, 8 + random.nextInt(file.length - 7));
            for (int flips = random.nextInt(4); flips > 0 && damaged.length > 8; flips--) {
                damaged[8 + random.nextInt(damaged.length - 8)] = (byte) random.nextInt();
            }
            try {
                read += PngFile.read(damaged).count();
            } catch (ImageException e) {
                assertThat(e.getMessage()).isNotEmpty();
            }
        }
        assertThat(read).isPositive();
    }
}

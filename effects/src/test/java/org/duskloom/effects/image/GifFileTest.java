package org.duskloom.effects.image;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.IndexColorModel;
import java.awt.image.Raster;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.Random;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Holds the reader to the JDK's writer and reader of GIF, and to Graphics Interchange Format, Version 89a. */
class GifFileTest {
    private static final IndexColorModel FOUR_COLORS =
            new IndexColorModel(2, 4, new byte[] {0, -1, 0, 0}, new byte[] {0, 0, -1, 0}, new byte[] {0, 0, 0, -1}, 0);
    private static final int CLEAR = 0;
    private static final int RED = 0xFFFF0000;
    private static final int GREEN = 0xFF00FF00;
    private static final int BLUE = 0xFF0000FF;

    /** Noise uses up all codes up to those of 12 bits and starts again; few colours make long codes. */
    @ParameterizedTest
    @CsvSource({"1, 9, 7", "2, 40, 33", "4, 150, 101", "8, 300, 200", "8, 1, 1"})
    void readsWhatTheJdkWrites(int bits, int width, int height) throws Exception {
        for (int mode : new int[] {ImageWriteParam.MODE_DISABLED, ImageWriteParam.MODE_DEFAULT}) {
            BufferedImage image = noise(bits, width, height);
            byte[] file = written(mode, new Shot(image, 0, 0, 7, "none"));
            Film film = GifFile.read(file);

            assertThat(film.images().get(0)).isEqualTo(image.getRGB(0, 0, width, height, null, 0, width));
            BufferedImage seenByTheJdk = ImageIO.read(new ByteArrayInputStream(file));
            assertThat(film.images().get(0)).isEqualTo(seenByTheJdk.getRGB(0, 0, width, height, null, 0, width));
        }
    }

    private static BufferedImage noise(int bits, int width, int height) {
        Random random = new Random(bits);
        byte[][] colors = new byte[3][1 << bits];
        for (byte[] channel : colors) {
            random.nextBytes(channel);
        }
        IndexColorModel model = new IndexColorModel(bits, 1 << bits, colors[0], colors[1], colors[2]);
        BufferedImage image = blank(model, bits, width, height);
        for (int i = 0; i < width * height; i++) {
            // The lower half is even, so that codes stand for ever longer runs.
            image.getRaster()
                    .setSample(i % width, i / width, 0, i < width * height / 2 ? random.nextInt(1 << bits) : 1);
        }
        return image;
    }

    private static BufferedImage blank(IndexColorModel model, int bits, int width, int height) {
        return new BufferedImage(
                model,
                bits == 8
                        ? model.createCompatibleWritableRaster(width, height)
                        : Raster.createPackedRaster(DataBuffer.TYPE_BYTE, width, height, 1, bits, null),
                false,
                null);
    }

    /** Red, red, red; then green in the middle, which stays, is cleared, or gives way; then blue on the left. */
    @ParameterizedTest
    @CsvSource({"none, -16711936", "doNotDispose, -16711936", "restoreToBackgroundColor, 0", "restoreToPrevious, -65536"
    })
    void leavesBehindWhatItShould(String disposal, int middle) throws Exception {
        Film film = GifFile.read(written(
                ImageWriteParam.MODE_DISABLED,
                new Shot(row(1, 1, 1), 0, 0, 25, "none"),
                new Shot(row(2), 1, 0, 50, disposal),
                new Shot(row(3), 0, 0, 0, "none")));

        assertThat(film.images().get(0)).containsExactly(RED, RED, RED);
        assertThat(film.images().get(1)).containsExactly(RED, GREEN, RED);
        assertThat(film.images().get(2)).containsExactly(BLUE, middle, RED);
        // Hundredths of a second; an image without a time is seen for a tenth, by common practice.
        assertThat(film.seconds()).containsExactly(0.25, 0.5, 0.1);
    }

    /** Colour 0 is transparent: the image before shines through; there is nothing behind the first. */
    @Test
    void letsTheImageBeforeShineThrough() throws Exception {
        Film film = GifFile.read(written(
                ImageWriteParam.MODE_DISABLED,
                new Shot(row(1, 0, 3), 0, 0, 10, "none"),
                new Shot(row(0, 2, 0), 0, 0, 10, "none")));

        assertThat(film.images().get(0)).containsExactly(RED, CLEAR, BLUE);
        assertThat(film.images().get(1)).containsExactly(RED, GREEN, BLUE);
    }

    private static BufferedImage row(int... indices) {
        BufferedImage image = blank(FOUR_COLORS, 2, indices.length, 1);
        for (int x = 0; x < indices.length; x++) {
            image.getRaster().setSample(x, 0, 0, indices[x]);
        }
        return image;
    }

    /** The file ends behind its last image, without the end mark. */
    @Test
    void readsAFileWithoutAnEndMark() throws Exception {
        byte[] file = written(ImageWriteParam.MODE_DISABLED, new Shot(row(1), 0, 0, 10, "none"));
        assertThat(GifFile.read(Arrays.copyOf(file, file.length - 1)).images().get(0))
                .containsExactly(RED);
    }

    @Test
    void refusesTooLargeScreensBeforeDecoding() {
        byte[] file = {'G', 'I', 'F', '8', '9', 'a', -1, -1, -1, -1, 0, 0, 0};
        assertThatThrownBy(() -> GifFile.read(file))
                .hasMessageContaining("65535 x 65535")
                .hasMessageContaining("16 megapixels");
    }

    /** Five images of 16 megapixels each, of a few bytes: 320 MB. */
    @Test
    void refusesTooManyPixelsBeforeDecoding() {
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        file.writeBytes(new byte[] {'G', 'I', 'F', '8', '9', 'a', 0, 16, 0, 16, 0, 0, 0});
        for (int image = 0; image < 5; image++) {
            file.writeBytes(new byte[] {0x2C, 0, 0, 0, 0, 0, 16, 0, 16, 0, 2, 1, 0, 0});
        }
        assertThatThrownBy(() -> GifFile.read(file.toByteArray()))
                .hasMessageContaining("5 images")
                .hasMessageContaining("256 MB");
    }

    @Test
    void saysWhatIsDamaged() throws Exception {
        byte[] file = written(ImageWriteParam.MODE_DISABLED, new Shot(row(1, 2), 0, 0, 10, "none"));

        assertDamaged(Arrays.copyOf(file, 10), "it ends after 10 bytes");
        assertDamaged(Arrays.copyOf(file, file.length - 3), "in the middle of an image");
        assertDamaged(new byte[] {'G', 'I', 'F', '8', '9', 'a', 1, 0, 1, 0, 0, 0, 0, 0x3B}, "has no image");
        assertDamaged(new byte[] {'G', 'I', 'F', '8', '9', 'a', 1, 0, 1, 0, 0, 0, 0, 5}, "kind 5");
        assertDamaged(oneImage(2, 0x02), "colour 2 of a palette of 0");
        assertDamaged(oneImage(2, 0x07), "make no sense");
        assertDamaged(oneImage(12, 0), "codes of 12 bits");
        assertDamaged(oneImage(2), "before its last row");
    }

    /** One pixel without a palette, of codes that begin with those of so many bits. */
    private static byte[] oneImage(int bits, int... data) {
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        file.writeBytes(new byte[] {'G', 'I', 'F', '8', '9', 'a', 1, 0, 1, 0, 0, 0, 0});
        file.writeBytes(new byte[] {0x2C, 0, 0, 0, 0, 1, 0, 1, 0, 0, (byte) bits});
        if (data.length > 0) {
            file.write(data.length);
            Arrays.stream(data).forEach(file::write);
        }
        file.writeBytes(new byte[] {0, 0x3B});
        return file.toByteArray();
    }

    private static void assertDamaged(byte[] file, String how) {
        assertThatThrownBy(() -> GifFile.read(file))
                .isInstanceOf(ImageException.class)
                .hasMessageStartingWith("is damaged: ")
                .hasMessageContaining(how);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void survivesDamage(int seed) throws Exception {
        Random random = new Random(seed);
        byte[] file = written(
                ImageWriteParam.MODE_DEFAULT,
                new Shot(noise(4, 12, 9), 0, 0, 10, "none"),
                new Shot(noise(4, 5, 5), 3, 3, 10, "restoreToPrevious"));
        int read = 0;
        for (int round = 0; round < 1000; round++) {
            byte[] damaged = Arrays.copyOf(file, 6 + random.nextInt(file.length - 5));
            for (int flips = random.nextInt(4); flips > 0 && damaged.length > 6; flips--) {
                damaged[6 + random.nextInt(damaged.length - 6)] = (byte) random.nextInt();
            }
            try {
                read += GifFile.read(damaged).count();
            } catch (ImageException e) {
                assertThat(e.getMessage()).isNotEmpty();
            }
        }
        assertThat(read).isPositive();
    }

    private record Shot(BufferedImage image, int left, int top, int hundredths, String disposal) {}

    private static byte[] written(int progressiveMode, Shot... shots) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("gif").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
            writer.setOutput(out);
            writer.prepareWriteSequence(null);
            for (Shot shot : shots) {
                ImageWriteParam param = writer.getDefaultWriteParam();
                param.setProgressiveMode(progressiveMode);
                writer.writeToSequence(new IIOImage(shot.image, null, metadata(writer, param, shot)), param);
            }
            writer.endWriteSequence();
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }

    private static IIOMetadata metadata(ImageWriter writer, ImageWriteParam param, Shot shot) throws IOException {
        IIOMetadata metadata = writer.getDefaultImageMetadata(new ImageTypeSpecifier(shot.image), param);
        String format = metadata.getNativeMetadataFormatName();
        IIOMetadataNode root = (IIOMetadataNode) metadata.getAsTree(format);
        IIOMetadataNode place =
                (IIOMetadataNode) root.getElementsByTagName("ImageDescriptor").item(0);
        place.setAttribute("imageLeftPosition", String.valueOf(shot.left));
        place.setAttribute("imageTopPosition", String.valueOf(shot.top));
        IIOMetadataNode control = (IIOMetadataNode)
                root.getElementsByTagName("GraphicControlExtension").item(0);
        control.setAttribute("delayTime", String.valueOf(shot.hundredths));
        control.setAttribute("disposalMethod", shot.disposal);
        metadata.setFromTree(format, root);
        return metadata;
    }
}

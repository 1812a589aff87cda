package org.duskloom.effects.image;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

class JpegFileTest {
    /** JPEG is lossy: even areas of grey come back within two codes. */
    @Test
    void readsColorAndGrey() throws Exception {
        Film color = JpegFile.read(even(BufferedImage.TYPE_INT_RGB, 24, 17, 0xC86432));
        Film grey = JpegFile.read(even(BufferedImage.TYPE_BYTE_GRAY, 24, 17, 0x808080));

        assertThat(color.width()).isEqualTo(24);
        assertThat(color.height()).isEqualTo(17);
        for (int pixel : color.images().get(0)) {
            assertNear(pixel, 0xC8, 0x64, 0x32);
        }
        for (int pixel : grey.images().get(0)) {
            assertNear(pixel, 0x80, 0x80, 0x80);
        }
    }

    private static void assertNear(int pixel, int red, int green, int blue) {
        assertThat(pixel >>> 24).isEqualTo(255);
        assertThat(pixel >> 16 & 255).isBetween(red - 2, red + 2);
        assertThat(pixel >> 8 & 255).isBetween(green - 2, green + 2);
        assertThat(pixel & 255).isBetween(blue - 2, blue + 2);
    }

    /** The header of a small picture, made to say 32639 x 32639 pixels. */
    @Test
    void refusesTooLargePicturesBeforeDecoding() throws IOException {
        byte[] file = even(BufferedImage.TYPE_INT_RGB, 8, 8, 0);
        int frame = 0;
        while ((file[frame] & 255) != 0xFF || (file[frame + 1] & 255) != 0xC0) {
            frame++;
        }
        Arrays.fill(file, frame + 5, frame + 9, (byte) 0x7F);

        assertThatThrownBy(() -> JpegFile.read(file))
                .isInstanceOf(ImageException.class)
                .hasMessageContaining("16 megapixels");
    }

    @Test
    void refusesWhatIsCutOff() throws IOException {
        byte[] file = even(BufferedImage.TYPE_INT_RGB, 64, 64, 0x123456);

        assertThatThrownBy(() -> JpegFile.read(Arrays.copyOf(file, file.length - 2)))
                .hasMessage("is damaged: it ends after " + (file.length - 2) + " bytes, before its end mark");
        assertThatThrownBy(() -> JpegFile.read(new byte[] {-1, -40, -1, -39})).isInstanceOf(ImageException.class);
    }

    @Test
    void survivesDamage() throws IOException {
        Random random = new Random(5);
        byte[] file = even(BufferedImage.TYPE_INT_RGB, 16, 16, 0x123456);
        for (int round = 0; round < 300; round++) {
            byte[] damaged = file.clone();
            damaged[2 + random.nextInt(file.length - 4)] = (byte) random.nextInt();
            try {
                assertThat(JpegFile.read(damaged).count()).isEqualTo(1);
            } catch (ImageException e) {
                assertThat(e.getMessage()).isNotEmpty();
            }
        }
    }

    private static byte[] even(int type, int width, int height, int rgb) throws IOException {
        BufferedImage image = new BufferedImage(width, height, type);
        for (int i = 0; i < width * height; i++) {
            if (type == BufferedImage.TYPE_BYTE_GRAY) {
                image.getRaster().setSample(i % width, i / width, 0, rgb & 255);
            } else {
                image.setRGB(i % width, i / width, rgb);
            }
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "jpeg", bytes);
        return bytes.toByteArray();
    }
}

package org.duskloom.engine.png;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** Against W3C Portable Network Graphics, Third Edition (24 June 2025), and the JDK's reader of PNG. */
class AnimationWriterTest {

    /**
     * Two frames of one dot, red and blue, 1/40 s each, for ever: acTL and both fcTL as other programs take them
     * (pngcheck 3.0.3, Pillow and ffprobe found two frames of 25 ms in the file from which these chunks are).
     */
    @Test
    void controlChunksAreAsPublished() throws IOException {
        byte[] file = written(1, 1, 0, new byte[][] {{-1, 0, 0}, {0, 0, -1}});
        List<PngChunks.Chunk> chunks = PngChunks.of(file).chunks();
        assertThat(chunks)
                .extracting(PngChunks.Chunk::type)
                .containsExactly("IHDR", "sRGB", "acTL", "fcTL", "IDAT", "fcTL", "fdAT", "IEND");
        assertThat(chunks.get(2).hex()).isEqualTo("000000086163544c0000000200000000f38d9370");
        assertThat(chunks.get(3).hex())
                .isEqualTo("0000001a6663544c" + "00000000" + "00000001" + "00000001" + "0000000000000000" + "00010028"
                        + "0000" + "61b6a25e");
        assertThat(chunks.get(5).hex())
                .isEqualTo("0000001a6663544c" + "00000001" + "00000001" + "00000001" + "0000000000000000" + "00010028"
                        + "0000" + "fac5488a");
        assertThat(chunks.get(6).hex().substring(16)).startsWith("00000002");
    }

    /** Twelve frames, three times. */
    @Test
    void framesComeBackAsTheyWere() throws IOException {
        Random random = new Random(7);
        int width = 37;
        int height = 23;
        byte[][] frames = new byte[12][];
        byte[] picture = new byte[3 * width * height];
        random.nextBytes(picture);
        for (int i = 0; i < frames.length; i++) {
            // Some frames change in a spot, some all over, some not at all.
            for (int k = 0; k < i % 4 * 5; k++) {
                picture[random.nextInt(picture.length)] ^= 0x55;
            }
            frames[i] = picture.clone();
        }
        byte[] file = written(width, height, 3, frames);
        List<AnimationFrames.Shown> shown = AnimationFrames.of(file);
        assertThat(shown).hasSize(frames.length);
        for (int i = 0; i < frames.length; i++) {
            assertThat(bytes(shown.get(i).dots())).as("frame %d", i).isEqualTo(frames[i]);
        }
        assertThat(PngChunks.of(file).hex("acTL")).startsWith("000000086163544c0000000c00000003");
    }

    /** What did not change is not written again. */
    @Test
    void onlyTheChangedRectangleIsWritten() throws IOException {
        byte[] first = new byte[3 * 100 * 50];
        byte[] second = first.clone();
        second[3 * (20 * 100 + 30) + 1] = 9;
        second[3 * (24 * 100 + 33) + 2] = 9;
        List<PngChunks.Chunk> chunks = PngChunks.of(written(100, 50, 0, new byte[][] {first, second, second}))
                .chunks();
        // Width, height, left and top.
        assertThat(chunks.get(5).hex().substring(24)).startsWith("00000004" + "00000005" + "0000001e" + "00000014");
        assertThat(chunks.get(7).hex().substring(24)).startsWith("00000001" + "00000001" + "00000000" + "00000000");
    }

    /** A program that knows no animation shows the first frame: the JDK is one. */
    @Test
    void theFirstFrameIsTheStillPicture() throws IOException {
        byte[] file = written(1, 1, 0, new byte[][] {{-1, 0, 0}, {0, 0, -1}});
        assertThat(ImageIO.read(new ByteArrayInputStream(file)).getRGB(0, 0)).isEqualTo(0xFFFF0000);
    }

    @Test
    void refusesFramesThatAreTooMany() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (AnimationWriter png = new AnimationWriter(out, 1, 1, 2, 0, 6)) {
            png.frame(new byte[3], 0, 1, 40);
            assertThatThrownBy(png::finish).isInstanceOf(IllegalStateException.class);
            png.frame(new byte[3], 0, 1, 40);
            assertThatThrownBy(() -> png.frame(new byte[3], 0, 1, 40)).isInstanceOf(IllegalStateException.class);
        }
        assertThatThrownBy(() -> new AnimationWriter(out, 0, 1, 2, 0, 6)).isInstanceOf(IllegalArgumentException.class);
        try (AnimationWriter png = new AnimationWriter(out, 1, 1, 2, 0, 6)) {
            assertThatThrownBy(() -> png.frame(new byte[3], 0, 65_536, 1)).isInstanceOf(IllegalArgumentException.class);
        }
    }

    private static byte[] bytes(int[] dots) {
        byte[] rgb = new byte[3 * dots.length];
        for (int i = 0; i < dots.length; i++) {
            rgb[3 * i] = (byte) (dots[i] >> 16);
            rgb[3 * i + 1] = (byte) (dots[i] >> 8);
            rgb[3 * i + 2] = (byte) dots[i];
        }
        return rgb;
    }

    private static byte[] written(int width, int height, int plays, byte[][] frames) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (AnimationWriter png = new AnimationWriter(out, width, height, frames.length, plays, 6)) {
            for (byte[] frame : frames) {
                png.frame(frame, 0, 1, 40);
            }
            png.finish();
        }
        return out.toByteArray();
    }
}

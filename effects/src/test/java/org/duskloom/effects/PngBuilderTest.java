package org.duskloom.effects;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.HexFormat;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** The checksums were computed with an independent program from the chunks as W3C PNG, Third Edition, lays them out. */
class PngBuilderTest {
    @Test
    void writesChunks() {
        assertThat(hex(PngBuilder.chunkBytes("IEND"))).isEqualTo("0000000049454e44ae426082");
        assertThat(hex(new PngBuilder().header(16, 16, 8, 2, false).bytes()))
                .endsWith("0000000d494844520000001000000010080200000090916836");
        assertThat(hex(new PngBuilder().animationControl(3).bytes()))
                .endsWith("000000086163544c0000000300000000ceedbac0");
        PngBuilder.Frame frame = PngBuilder.Frame.whole(16, 16, 1, 40);
        assertThat(hex(new PngBuilder().frameControl(frame).bytes()))
                .endsWith("0000001a6663544c000000000000001000000010000000000000000000010028" + "0000588f5dab");
    }

    /** The JDK's reader sees the colours that were meant. */
    @Test
    void writesPixels() throws IOException {
        BufferedImage image = ImageIO.read(
                new ByteArrayInputStream(PngBuilder.still(2, 2, 0xFF010203, 0x80FFFEFD, 0x00000000, 0xFFC0FFEE)));

        assertThat(image.getRGB(0, 0, 2, 2, null, 0, 2)).containsExactly(0xFF010203, 0x80FFFEFD, 0, 0xFFC0FFEE);
    }

    private static String hex(byte[] bytes) {
        return HexFormat.of().formatHex(bytes);
    }
}

package org.duskloom.engine.preview;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.duskloom.engine.file.IfExists;
import org.duskloom.engine.file.StagedFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RasterTest {
    @TempDir
    private Path folder;

    @Test
    void beginsInTheGroundColour() {
        Raster raster = new Raster(3, 2, 0x123456);
        for (int i = 0; i < 6; i++) {
            assertThat(raster.colourAt(i % 3, i / 3)).isEqualTo(0x123456);
        }
    }

    @Test
    void rectanglesAreCutAtTheEdges() {
        Raster raster = new Raster(4, 4, 0);
        raster.rectangle(-5, 2, 7, 100, 0xFF8040);
        for (int y = 0; y < 4; y++) {
            for (int x = 0; x < 4; x++) {
                assertThat(raster.colourAt(x, y)).isEqualTo(x < 2 && y >= 2 ? 0xFF8040 : 0);
            }
        }
        raster.dot(4, 0, 0xFFFFFF);
        raster.dot(-1, 1, 0xFFFFFF);
        raster.dot(0, 4, 0xFFFFFF);
        assertThat(raster.colourAt(0, 1)).isZero();
    }

    /** A full stop is one dot on the line of the capitals, so a block of scale by scale dots. */
    @Test
    void textScalesInWholeDots() {
        Raster raster = new Raster(20, 30, 0);
        raster.text(".", 2, 5, 3, 0xFFFFFF);
        int top = 5 + 6 * 3;
        for (int y = 0; y < 30; y++) {
            for (int x = 0; x < 20; x++) {
                boolean ink = x >= 2 && x < 5 && y >= top && y < top + 3;
                assertThat(raster.colourAt(x, y)).isEqualTo(ink ? 0xFFFFFF : 0);
            }
        }
    }

    @Test
    void textRunsOffWithoutFault() {
        Raster raster = new Raster(5, 5, 0);
        raster.text("Ägypten", -3, -3, 2, 0xFFFFFF);
        raster.text("Ägypten", 4, 4, 9, 0xFFFFFF);
        assertThat(raster.colourAt(4, 4)).isIn(0, 0xFFFFFF);
    }

    @Test
    void aPngOfItIsTheSamePicture() throws IOException {
        Raster raster = new Raster(31, 17, 0x0A0B0C);
        raster.text("Dusk", 1, 4, 1, 0xFEDCBA);
        Path target = folder.resolve("dusk.png");
        raster.writePng(StagedFile.open(target, IfExists.REFUSE));
        BufferedImage image = ImageIO.read(target.toFile());
        for (int y = 0; y < 17; y++) {
            for (int x = 0; x < 31; x++) {
                assertThat(image.getRGB(x, y) & 0xFFFFFF).isEqualTo(raster.colourAt(x, y));
            }
        }
    }
}

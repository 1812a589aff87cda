package org.duskloom.engine.preview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.time.FrameRate;
import org.junit.jupiter.api.Test;

/** A show of four frames: a green light that runs from left to right. */
class MomentPicturesTest {
    private static final int GREEN = 0x00FF00;
    private static final int FRAMES = 4;

    private final List<Long> read = new ArrayList<>();

    @Test
    void eachMomentIsAPicture() throws IOException {
        List<byte[]> pngs = MomentPictures.pngs(source(), new long[] {0, 3, 1});
        assertThat(read).containsExactly(0L, 3L, 1L);
        assertThat(pngs).hasSize(3);
        int first = middle(pngs.get(0));
        int last = middle(pngs.get(1));
        assertThat(first).isPositive();
        assertThat(middle(pngs.get(2))).isBetween(first + 1, last - 1);
    }

    /** Frames 5 and 9 are frame 1 of a show that has started over; their times stay their own. */
    @Test
    void aShowStartsOver() throws IOException {
        List<byte[]> pngs = MomentPictures.pngs(source(), new long[] {1, 5, 9});
        assertThat(read).containsExactly(1L, 1L, 1L);
        assertThat(middle(pngs.get(1))).isEqualTo(middle(pngs.get(0)));
        assertThat(pngs.get(1)).isNotEqualTo(pngs.get(0)).isNotEqualTo(pngs.get(2));
    }

    /** Panels of 320 dots between edges of 24, whatever the display. */
    @Test
    void picturesAreOfOneWidth() throws IOException {
        assertThat(decoded(MomentPictures.pngs(source(), new long[] {2}).get(0)).getWidth())
                .isEqualTo(368);
        assertThat(MomentPictures.pngs(source(), new long[0])).isEmpty();
    }

    @Test
    void framesThatCannotBeHadAreAFault() {
        FrameSource broken = new FrameSource() {
            @Override
            public RunInfo info() {
                return run();
            }

            @Override
            public FrameReader reader() {
                return (frame, rgb, offset) -> {
                    throw new IOException("frame " + frame + " is gone");
                };
            }
        };
        assertThatThrownBy(() -> MomentPictures.pngs(broken, new long[] {6})).hasMessage("frame 2 is gone");
    }

    private static RunInfo run() {
        Positions places = new Positions(new double[] {0, 10, 20, 30}, new double[4], new double[4]);
        FramePixels pixels = new FramePixels(4, List.of(), Optional.of(places));
        return RunInfo.ofWhole("Dusk", FrameRate.of(40), FRAMES, pixels);
    }

    private FrameSource source() {
        return new FrameSource() {
            @Override
            public RunInfo info() {
                return run();
            }

            @Override
            public FrameReader reader() {
                return (frame, rgb, offset) -> {
                    read.add(frame);
                    Arrays.fill(rgb, (byte) 0);
                    rgb[offset + 3 * (int) frame + 1] = (byte) 255;
                };
            }
        };
    }

    private static BufferedImage decoded(byte[] png) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(png));
    }

    /** The mean column of what is green; -1 if nothing is. */
    private static int middle(byte[] png) throws IOException {
        BufferedImage picture = decoded(png);
        long sum = 0;
        int count = 0;
        for (int x = 0; x < picture.getWidth(); x++) {
            for (int y = 0; y < picture.getHeight(); y++) {
                boolean green = (picture.getRGB(x, y) & 0xFFFFFF) == GREEN;
                sum += green ? x : 0;
                count += green ? 1 : 0;
            }
        }
        return count == 0 ? -1 : (int) (sum / count);
    }
}

package org.duskloom.engine.preview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.duskloom.engine.file.IfExists;
import org.duskloom.engine.file.OutputGroup;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.Progress;
import org.duskloom.engine.frame.PropSpan;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.FrameSpan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The finished pictures, read back by the JDK. */
class TimeTilesTest {
    private static final int LONGEST_PROP = 40;
    private static final int SMALL_BAND = 3 * 30 * 7;

    @TempDir
    private Path folder;

    /**
     * Put together, they are the picture of all pixels, dot by dot: field, edge at the right, and names at the left
     * unless props are cut.
     */
    @ParameterizedTest
    @CsvSource({"700, 90, 100, 1", "700, 90, 100, 3", "613, 33, 64, 2", "460, 12, 5, 2", "1000, 20, 999, 1"})
    void togetherTheyAreTheWholePicture(int pixels, int frames, int mostRows, int threads) throws Exception {
        Noise noise = new Noise(pixels, frames);
        draw(noise, FrameList.of(new FrameSpan(0, frames)), mostRows, threads);
        BufferedImage whole = ImageIO.read(whole(noise).toFile());
        int row = TimeStripLayout.FIELD_TOP;
        int left = mostRows >= LONGEST_PROP ? 0 : whole.getWidth() - TimeStripLayout.PADDING - 240;
        for (Path file : pictures()) {
            BufferedImage tile = ImageIO.read(file.toFile());
            assertThat(tile.getWidth()).isEqualTo(whole.getWidth());
            int rows = tile.getHeight() - TimeStripLayout.FIELD_TOP - TimeStripLayout.PADDING;
            assertThat(rows).isBetween(1, mostRows);
            assertThat(Arrays.equals(dots(tile, left, TimeStripLayout.FIELD_TOP, rows), dots(whole, left, row, rows)))
                    .as("%s", file)
                    .isTrue();
            row += rows;
        }
        assertThat(row).isEqualTo(whole.getHeight() - TimeStripLayout.PADDING);
    }

    /** As few pixels as fit into one: byte by byte the usual picture, with cells that suit a screen. */
    @Test
    void aSmallDisplayHasTheUsualPicture() throws Exception {
        Noise noise = new Noise(50, 40);
        draw(noise, FrameList.of(new FrameSpan(0, 40)), TileSpans.MOST_ROWS, 2);
        assertThat(pictures()).singleElement().satisfies(only -> {
            assertThat(only.getFileName()).hasToString("00-49.png");
            assertThat(only).hasSameBinaryContentAs(whole(noise));
        });
    }

    /** 9,700 frames are more than 4,800 columns: every third is drawn, and no other is asked for. */
    @Test
    void longRunsAreThinnedInTime() throws Exception {
        Noise noise = new Noise(2, 9_700);
        draw(noise, FrameList.of(new FrameSpan(1, 9_700)), 1, 1);
        BufferedImage tile = ImageIO.read(pictures().get(1).toFile());
        int left = tile.getWidth() - TimeStripLayout.PADDING - 3_233;
        byte[] rgb = new byte[6];
        for (int column : new int[] {0, 1, 1_000, 3_232}) {
            noise.reader().read(1 + 3L * column, rgb, 0);
            int colour = (rgb[3] & 255) << 16 | (rgb[4] & 255) << 8 | rgb[5] & 255;
            assertThat(tile.getRGB(left + column, TimeStripLayout.FIELD_TOP) & 0xFFFFFF)
                    .isEqualTo(colour);
        }
    }

    /** 700 pixels in bands of up to 7 and pictures of up to 100. */
    @Test
    void tellsHowFarItIs() throws Exception {
        List<Long> done = new ArrayList<>();
        try (OutputGroup group = new OutputGroup(IfExists.REFUSE);
                TimeTiles tiles = tiles(group, 100)) {
            Noise noise = new Noise(700, 30);
            tiles.begin(noise.info());
            tiles.draw(noise, 2, (drawn, all) -> {
                assertThat(all).isEqualTo(700);
                done.add(drawn);
            });
        }
        assertThat(done)
                .as("rows drawn")
                .isSorted()
                .doesNotHaveDuplicates()
                .endsWith(700L)
                .hasSizeGreaterThan(100);
    }

    @Test
    void leavesNothingIfAFrameCannotBeHad() throws IOException {
        IOException lost = new IOException("lost");
        try (OutputGroup group = new OutputGroup(IfExists.REFUSE);
                TimeTiles tiles = tiles(group, 100)) {
            Noise noise = new Noise(700, 30);
            noise.fault = lost;
            tiles.begin(noise.info());
            assertThatThrownBy(() -> tiles.draw(noise, 2, Progress.SILENT)).isSameAs(lost);
        }
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void stopsWhenItIsInterrupted() throws IOException {
        try (OutputGroup group = new OutputGroup(IfExists.REFUSE);
                TimeTiles tiles = tiles(group, 100)) {
            Noise noise = new Noise(700, 30);
            tiles.begin(noise.info());
            Thread.currentThread().interrupt();
            assertThatThrownBy(() -> tiles.draw(noise, 2, Progress.SILENT)).isInstanceOf(InterruptedException.class);
        } finally {
            Thread.interrupted();
        }
        assertThat(folder).isEmptyDirectory();
    }

    /** A run whose pictures were not drawn must not be published. */
    @Test
    void isNotCompleteUntilItIsDrawn() throws IOException {
        try (OutputGroup group = new OutputGroup(IfExists.REFUSE);
                FrameSink tiles = tiles(group, 100)) {
            tiles.begin(new Noise(5, 5).info());
            tiles.finish();
            assertThatThrownBy(group::publish).isInstanceOf(IllegalStateException.class);
        }
        assertThat(folder).isEmptyDirectory();
    }

    private TimeTiles tiles(OutputGroup group, int mostRows) throws IOException {
        Pattern any = Pattern.compile(".*");
        return new TimeTiles(group.openFolder(folder.resolve("time"), any), mostRows, 2 * SMALL_BAND);
    }

    private void draw(Noise noise, FrameList frames, int mostRows, int threads) throws Exception {
        try (OutputGroup group = new OutputGroup(IfExists.REFUSE);
                TimeTiles tiles = tiles(group, mostRows)) {
            tiles.begin(noise.info().only(frames));
            tiles.draw(noise, threads, Progress.SILENT);
            group.publish();
        }
    }

    private List<Path> pictures() throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("time"))) {
            return files.sorted().toList();
        }
    }

    private Path whole(Noise noise) throws IOException {
        Path target = folder.resolve("whole.png");
        RunInfo run = noise.info();
        StagedFile file = StagedFile.open(target, IfExists.REFUSE);
        try (TimeStrip strip = new TimeStrip(file, PreviewScene.of(run), 0, run.showFrames(), OptionalInt.empty())) {
            byte[] rgb = new byte[run.frameBytes()];
            for (long frame = 0; frame < run.showFrames(); frame++) {
                noise.reader().read(frame, rgb, 0);
                strip.frame(frame, rgb);
            }
            strip.finish();
        }
        return target;
    }

    private static int[] dots(BufferedImage picture, int left, int top, int rows) {
        int columns = picture.getWidth() - left;
        return picture.getRGB(left, top, columns, rows, null, 0, columns);
    }

    /** Light that is other in each pixel of each frame; props of 9 to 40 pixels, without names where they are short. */
    private static final class Noise implements FrameSource {
        private final int pixels;
        private final int frames;
        private IOException fault;

        Noise(int pixels, int frames) {
            this.pixels = pixels;
            this.frames = frames;
        }

        @Override
        public RunInfo info() {
            List<PropSpan> props = new ArrayList<>();
            for (int first = 0; first < pixels; first += 9 + first % 32) {
                props.add(new PropSpan("bed-" + first, first, Math.min(pixels - first, 9 + first % 32)));
            }
            double[] place = new double[pixels];
            FramePixels all = new FramePixels(pixels, props, Optional.of(new Positions(place, place, place)));
            return RunInfo.ofWhole("Beds", FrameRate.of(40), frames, all);
        }

        @Override
        public FrameReader reader() {
            return (frame, rgb, offset) -> {
                if (fault != null) {
                    throw fault;
                }
                byte[] light = new byte[3 * pixels];
                new SplittableRandom(frame).nextBytes(light);
                System.arraycopy(light, 0, rgb, offset, light.length);
            };
        }
    }
}

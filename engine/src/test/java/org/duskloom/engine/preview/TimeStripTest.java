package org.duskloom.engine.preview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.duskloom.engine.file.IfExists;
import org.duskloom.engine.file.OutputRefusedException;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.frame.PropSpan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The finished picture, read back by the JDK. */
class TimeStripTest {
    @TempDir
    private Path folder;

    /** Noise: every cell of every row must be found again, in a corner that lies where the edges say. */
    @ParameterizedTest
    @CsvSource({"1, 1, 1", "7, 5, 1", "40, 300, 3", "61, 48, 4", "2000, 3, 1", "3, 2000, 1"})
    void everyByteOfEveryFrameIsInThePicture(int pixels, int frames, int cell) throws IOException {
        byte[][] sent = noise(pixels, frames);
        Path target = folder.resolve("strip.png");
        PreviewScene scene = scene(pixels);
        StagedFile file = StagedFile.open(target, IfExists.REFUSE);
        try (TimeStrip strip = new TimeStrip(file, scene, 100, 100 + frames, OptionalInt.of(cell))) {
            for (int n = 0; n < frames; n++) {
                strip.frame(100 + n, sent[n]);
            }
            strip.finish();
        }
        BufferedImage picture = ImageIO.read(target.toFile());
        int left =
                TimeStripLayout.of(scene, 100, frames, 1, OptionalInt.of(cell)).fieldLeft();
        int top = picture.getHeight() - TimeStripLayout.PADDING - pixels * cell;
        for (int y = 0; y < pixels * cell; y++) {
            for (int x = 0; x < frames * cell; x++) {
                assertThat(picture.getRGB(left + x, top + y) & 0xFFFFFF).isEqualTo(colour(sent[x / cell], y / cell));
            }
        }
        assertThat(picture.getRGB(left - 1, top) & 0xFFFFFF).isEqualTo(Ink.SHEET);
        assertThat(picture.getRGB(left, top - 1) & 0xFFFFFF).isEqualTo(Ink.SHEET);
        assertThat(picture.getRGB(left + frames * cell, top) & 0xFFFFFF).isEqualTo(Ink.SHEET);
    }

    @Test
    void choosesCellsThatSuitAScreen() throws IOException {
        assertThat(cellFor(60, 100)).isEqualTo(8);
        assertThat(cellFor(854, 1920)).isEqualTo(1);
        assertThat(cellFor(300, 400)).isEqualTo(3);
    }

    /** The range that the refusal names must fit, and one frame more must not. */
    @Test
    void refusesTooLargeAndSaysWhatFits() throws IOException {
        PreviewScene scene = scene(2000);
        String message = refusal(scene, 1_000_000_000L, 4);
        Matcher range = Pattern.compile("such as 50\\.\\.(\\d+), or choose smaller cells")
                .matcher(message);
        assertThat(range.find()).as(message).isTrue();
        long fitting = Long.parseLong(range.group(1)) - 50;
        assertThat(TimeStripLayout.of(scene, 50, fitting, 1, OptionalInt.of(4)).frames())
                .isEqualTo(fitting);
        assertThat(refusal(scene, fitting + 1, 4)).contains("at most " + fitting + " frames fit");
        assertThat(refusal(scene(2_000_000), 10, 1)).contains("too many pixels");
        assertThat(refusal(scene(500_000), 10, 1000)).contains("choose smaller cells");
        assertThat(refusal(scene, 1L << 53, 1000)).contains("choose smaller cells");
        try (Stream<Path> entries = Files.list(folder)) {
            assertThat(entries).isEmpty();
        }
    }

    @Test
    void refusesFramesThatDoNotFollow() throws IOException {
        StagedFile file = StagedFile.open(folder.resolve("strip.png"), IfExists.REFUSE);
        try (TimeStrip strip = new TimeStrip(file, scene(1), 5, 7, OptionalInt.empty())) {
            assertThatThrownBy(() -> strip.frame(4, new byte[3])).isInstanceOf(IllegalArgumentException.class);
            strip.frame(5, new byte[3]);
            assertThatThrownBy(() -> strip.frame(7, new byte[3])).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(strip::finish)
                    .isInstanceOf(IllegalStateException.class)
                    .hasMessageContaining("frame 6");
            strip.frame(6, new byte[3]);
            assertThatThrownBy(() -> strip.frame(7, new byte[3])).isInstanceOf(IllegalArgumentException.class);
        }
        assertThat(folder.resolve("strip.png")).doesNotExist();
    }

    @Test
    void refusesAnEmptyRangeAndOddCells() throws IOException {
        for (int cell : new int[] {0, -1, 1001}) {
            StagedFile file = StagedFile.open(folder.resolve("strip.png"), IfExists.REFUSE);
            assertThatThrownBy(() -> new TimeStrip(file, scene(1), 0, 1, OptionalInt.of(cell)))
                    .isInstanceOf(IllegalArgumentException.class);
        }
        StagedFile file = StagedFile.open(folder.resolve("strip.png"), IfExists.REFUSE);
        assertThatThrownBy(() -> new TimeStrip(file, scene(1), 4, 4, OptionalInt.empty()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** Of 11 frames from 100 on, one in 4: 100, 104 and 108. Those between may come, or be left out. */
    @ParameterizedTest
    @ValueSource(ints = {1, 4})
    void aColumnMayStandForSeveralFrames(int distanceOfThoseThatCome) throws IOException {
        byte[][] sent = noise(5, 11);
        Path target = folder.resolve("strip.png");
        StagedFile file = StagedFile.open(target, IfExists.REFUSE);
        try (TimeStrip strip = new TimeStrip(file, scene(5), 100, 111, 4, OptionalInt.of(1))) {
            for (int n = 0; n < 11; n += distanceOfThoseThatCome) {
                strip.frame(100 + n, sent[n]);
            }
            assertThatThrownBy(() -> strip.frame(112, sent[0])).isInstanceOf(IllegalArgumentException.class);
            strip.finish();
        }
        BufferedImage picture = ImageIO.read(target.toFile());
        int left = TimeStripLayout.of(scene(5), 100, 3, 4, OptionalInt.of(1)).fieldLeft();
        int top = picture.getHeight() - TimeStripLayout.PADDING - 5;
        for (int pixel = 0; pixel < 5; pixel++) {
            for (int column = 0; column < 3; column++) {
                assertThat(picture.getRGB(left + column, top + pixel) & 0xFFFFFF)
                        .isEqualTo(colour(sent[4 * column], pixel));
            }
            assertThat(picture.getRGB(left + 3, top + pixel) & 0xFFFFFF).isEqualTo(Ink.SHEET);
        }
    }

    @Test
    void aFrameOfAThinnedStripMustNotBeMissing() throws IOException {
        StagedFile file = StagedFile.open(folder.resolve("strip.png"), IfExists.REFUSE);
        try (TimeStrip strip = new TimeStrip(file, scene(1), 0, 9, 4, OptionalInt.empty())) {
            strip.frame(0, new byte[3]);
            assertThatThrownBy(() -> strip.frame(5, new byte[3]))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("expected 4");
            assertThatThrownBy(strip::finish).hasMessageContaining("frame 4");
        }
    }

    /** As many columns as it says fit, and not one more. */
    @ParameterizedTest
    @ValueSource(ints = {1, 854, 250_000})
    void knowsHowManyColumnsFit(int pixels) throws IOException {
        PreviewScene scene = scene(pixels);
        long most = TimeStrip.mostColumns(scene);
        assertThat(TimeStripLayout.of(scene, 0, most, 1, OptionalInt.of(1)).frames())
                .isEqualTo(most);
        assertThatThrownBy(() -> TimeStripLayout.of(scene, 0, most + 1, 1, OptionalInt.of(1)))
                .isInstanceOf(OutputRefusedException.class);
    }

    @Test
    void noColumnFitsTooManyPixels() {
        assertThat(TimeStrip.mostColumns(scene(1_000_000))).isZero();
        assertThat(ThinnedStrip.distance(scene(1_000_000), true)).isEqualTo(62);
        assertThat(ThinnedStrip.distance(scene(250_000), true)).isEqualTo(1);
        assertThat(ThinnedStrip.distance(scene(250_000), false)).isEqualTo(16);
        assertThat(ThinnedStrip.distance(scene(65_535), false)).isEqualTo(1);
    }

    /** Of ten pixels every fourth: 0, 4 and 8. The hedge has 0 to 4, the gate 5 to 9. */
    @Test
    void showsEveryFourthPixel() throws IOException {
        PreviewScene some = ThinnedStrip.thinned(scene(10), 4);
        assertThat(some.title()).isEqualTo("Test, one pixel in 4");
        assertThat(some.props()).containsExactly(new PropSpan("hedge", 0, 2), new PropSpan("gate", 2, 1));
        byte[][] sent = noise(10, 20);
        Path target = folder.resolve("strip.png");
        TimeStrip strip = new TimeStrip(StagedFile.open(target, IfExists.REFUSE), some, 0, 20, OptionalInt.of(1));
        try (ThinnedStrip thinned = new ThinnedStrip(strip, 4, 10)) {
            for (int frame = 0; frame < 20; frame++) {
                thinned.frame(frame, sent[frame]);
            }
            thinned.finish();
        }
        BufferedImage picture = ImageIO.read(target.toFile());
        int left = TimeStripLayout.of(some, 0, 20, 1, OptionalInt.of(1)).fieldLeft();
        int top = picture.getHeight() - TimeStripLayout.PADDING - 3;
        for (int row = 0; row < 3; row++) {
            for (int frame = 0; frame < 20; frame++) {
                assertThat(picture.getRGB(left + frame, top + row) & 0xFFFFFF).isEqualTo(colour(sent[frame], 4 * row));
            }
        }
    }

    private String refusal(PreviewScene scene, long frames, int cell) throws IOException {
        StagedFile file = StagedFile.open(folder.resolve("strip.png"), IfExists.REFUSE);
        try (TimeStrip strip = new TimeStrip(file, scene, 50, 50 + frames, OptionalInt.of(cell))) {
            strip.finish();
            throw new AssertionError("taken");
        } catch (OutputRefusedException refused) {
            return refused.getMessage();
        }
    }

    private static int cellFor(int pixels, int frames) throws IOException {
        return TimeStripLayout.of(scene(pixels), 0, frames, 1, OptionalInt.empty())
                .cellSize();
    }

    private static PreviewScene scene(int pixels) {
        List<PropSpan> props =
                List.of(new PropSpan("hedge", 0, pixels / 2), new PropSpan("gate", pixels / 2, pixels - pixels / 2));
        return new PreviewScene("Test", new double[pixels], new double[pixels], props, frame -> frame / 40.0);
    }

    private static byte[][] noise(int pixels, int frames) {
        Random random = new Random(7);
        byte[][] sent = new byte[frames][3 * pixels];
        for (byte[] frame : sent) {
            random.nextBytes(frame);
        }
        return sent;
    }

    private static int colour(byte[] rgb, int pixel) {
        return (rgb[3 * pixel] & 0xFF) << 16 | (rgb[3 * pixel + 1] & 0xFF) << 8 | rgb[3 * pixel + 2] & 0xFF;
    }
}

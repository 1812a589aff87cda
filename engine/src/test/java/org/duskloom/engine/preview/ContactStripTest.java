package org.duskloom.engine.preview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.duskloom.engine.file.IfExists;
import org.duskloom.engine.file.OutputRefusedException;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.font.PixelFont;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The finished picture, read back by the JDK. */
class ContactStripTest {
    private static final int RED = 0xFF0000;
    private static final int GREEN = 0x00FF00;
    private static final int BLUE = 0x0000FF;

    @TempDir
    private Path folder;

    /** Three pixels: below at the left, below at the right, above in the middle. */
    @Test
    void pixelsHangAsTheAudienceSeesThem() throws IOException {
        PreviewScene scene = scene(new double[] {-100, 100, 0}, new double[] {0, 0, 150});
        BufferedImage picture = drawn(scene, new long[] {0}, rgb(RED, GREEN, BLUE));
        int[] red = place(picture, RED);
        int[] green = place(picture, GREEN);
        int[] blue = place(picture, BLUE);
        assertThat(red[1]).isEqualTo(green[1]);
        assertThat(red[0]).isLessThan(blue[0]);
        assertThat(blue[0]).isLessThan(green[0]);
        assertThat(blue[1]).isLessThan(red[1]);
        // True proportions: 200 across are to 150 up as the dots between them, to a dot.
        double across = green[0] - red[0];
        double up = red[1] - blue[1];
        assertThat(up * 200 - across * 150).isBetween(-400.0, 400.0);
    }

    @Test
    void everyMomentHasItsPanelAndItsTime() throws IOException {
        PreviewScene scene = scene(new double[] {0, 10}, new double[] {0, 0});
        long[] frames = {0, 40, 500};
        BufferedImage picture = drawn(scene, frames, rgb(RED, RED), rgb(GREEN, GREEN), rgb(BLUE, BLUE));
        assertThat(place(picture, RED)[0]).isPositive();
        assertThat(place(picture, GREEN)[0]).isPositive();
        assertThat(place(picture, BLUE)[0]).isPositive();
        assertThat(holdsText(picture, "0 s", Ink.TEXT)).isTrue();
        assertThat(holdsText(picture, "1 s", Ink.TEXT)).isTrue();
        assertThat(holdsText(picture, "12.5 s", Ink.TEXT)).isTrue();
        assertThat(holdsText(picture, "13 s", Ink.TEXT)).isFalse();
    }

    @Test
    void passesOverFramesThatWereNotChosen() throws IOException {
        PreviewScene scene = scene(new double[] {0}, new double[] {0});
        Path target = folder.resolve("strip.png");
        try (ContactStrip strip = strip(target, scene, 10)) {
            for (int n = 8; n < 13; n++) {
                strip.frame(n, rgb(n == 10 ? GREEN : RED));
            }
            strip.finish();
        }
        BufferedImage picture = ImageIO.read(target.toFile());
        assertThat(place(picture, GREEN)[0]).isPositive();
        assertThat(place(picture, RED)[0]).isNegative();
    }

    @Test
    void unlitPixelsAreStillSeen() throws IOException {
        PreviewScene scene = scene(new double[] {0, 10, 20}, new double[] {0, 0, 0});
        BufferedImage picture = drawn(scene, new long[] {0}, rgb(0, 0, 0));
        assertThat(place(picture, Ink.UNLIT)[0]).isPositive();
    }

    @Test
    void tellsWhenAChosenFrameDidNotCome() throws IOException {
        PreviewScene scene = scene(new double[] {0}, new double[] {0});
        try (ContactStrip strip = strip(folder.resolve("a.png"), scene, 3, 7)) {
            strip.frame(3, rgb(RED));
            assertThatThrownBy(() -> strip.frame(8, rgb(RED)))
                    .isInstanceOf(IllegalStateException.class)
                    .hasMessageContaining("frame 7");
            assertThatThrownBy(strip::finish).isInstanceOf(IllegalStateException.class);
        }
        assertThatThrownBy(() -> strip(folder.resolve("b.png"), scene, 7, 3))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(names()).isEmpty();
    }

    @Test
    void leavesNothingWhenTooLarge() throws IOException {
        PreviewScene scene = Garden.whole().scene("Too many");
        long[] frames = LongStream.range(0, 100_000).toArray();
        assertThatThrownBy(() -> strip(folder.resolve("strip.png"), scene, frames))
                .isInstanceOf(OutputRefusedException.class);
        assertThat(names()).isEmpty();
    }

    /** Every display has a picture: one pixel, all in one place, lines, specks and giants. */
    @ParameterizedTest
    @ValueSource(
            strings = {"0,0", "0,0;0,0", "0,0;1,0", "0,0;0,1", "0,0;1e30,1e30", "0,0;1e-30,0", "-1e12,5;1e12,5;0,-5"})
    void drawsAnyDisplay(String points) throws IOException {
        double[] x = Stream.of(points.split(";"))
                .mapToDouble(p -> Double.parseDouble(p.split(",")[0]))
                .toArray();
        double[] y = Stream.of(points.split(";"))
                .mapToDouble(p -> Double.parseDouble(p.split(",")[1]))
                .toArray();
        int[] colours = new int[x.length];
        Arrays.fill(colours, GREEN);
        BufferedImage picture = drawn(scene(x, y), new long[] {0}, rgb(colours));
        assertThat(place(picture, GREEN)[0]).isPositive();
    }

    @Test
    void titlesOfAnyLengthFit() throws IOException {
        for (String title : new String[] {"", "x".repeat(500), "\u0000\uD83C\uDF3C", "Gänseblümchen"}) {
            PreviewScene scene = new PreviewScene(title, new double[1], new double[1], List.of(), n -> 0);
            BufferedImage picture = drawn(scene, new long[] {0}, rgb(RED));
            for (int y = 0; y < picture.getHeight(); y++) {
                assertThat(picture.getRGB(picture.getWidth() - 1, y) & 0xFFFFFF).isEqualTo(Ink.SHEET);
            }
        }
    }

    /** A row of pixels without light between them: dots of the colour from edge to edge are what was asked for. */
    @ParameterizedTest
    @ValueSource(ints = {8, 20, 33})
    void pixelsHaveTheSizeAskedFor(int size) throws IOException {
        double[] x = {0, 40, 80, 120, 160, 200, 240};
        StripOptions options = new StripOptions(OptionalInt.empty(), OptionalInt.empty(), OptionalInt.of(size), false);
        Path target = folder.resolve("sized.png");
        StagedFile file = StagedFile.open(target, IfExists.REFUSE);
        try (ContactStrip strip = new ContactStrip(file, scene(x, new double[7]), new long[] {0}, options)) {
            strip.frame(0, rgb(RED, 0, BLUE, 0, GREEN, 0, RED));
            strip.finish();
        }
        BufferedImage picture = ImageIO.read(target.toFile());
        // The outermost row and column of a disc are only partly covered, so a dot on each side may be darker.
        assertThat(columns(picture, BLUE)).isBetween(size - 2, size);
        assertThat(columns(picture, GREEN)).isBetween(size - 2, size);
        // A disc takes 0.74 of the way to its neighbour, so two such ways are 2.7 sizes.
        assertThat(place(picture, GREEN)[0] - place(picture, BLUE)[0])
                .isBetween((int) (2.6 * size), (int) (2.8 * size) + 1);
    }

    private static int columns(BufferedImage picture, int colour) {
        int columns = 0;
        for (int x = 0; x < picture.getWidth(); x++) {
            boolean found = false;
            for (int y = 0; y < picture.getHeight(); y++) {
                found |= (picture.getRGB(x, y) & 0xFFFFFF) == colour;
            }
            columns += found ? 1 : 0;
        }
        return columns;
    }

    private PreviewScene scene(double[] x, double[] y) {
        return new PreviewScene("Test", x, y, List.of(), frame -> frame / 40.0);
    }

    private static ContactStrip strip(Path target, PreviewScene scene, long... frames) throws IOException {
        StripOptions options = new StripOptions(OptionalInt.empty(), OptionalInt.empty(), true);
        return new ContactStrip(StagedFile.open(target, IfExists.REPLACE), scene, frames, options);
    }

    private BufferedImage drawn(PreviewScene scene, long[] frames, byte[]... rgb) throws IOException {
        Path target = folder.resolve("strip.png");
        try (ContactStrip strip = strip(target, scene, frames)) {
            for (int i = 0; i < frames.length; i++) {
                strip.frame(frames[i], rgb[i]);
            }
            strip.finish();
        }
        return ImageIO.read(target.toFile());
    }

    private List<String> names() throws IOException {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.map(entry -> entry.getFileName().toString()).toList();
        }
    }

    private static byte[] rgb(int... colours) {
        byte[] rgb = new byte[3 * colours.length];
        for (int i = 0; i < colours.length; i++) {
            rgb[3 * i] = (byte) (colours[i] >> 16);
            rgb[3 * i + 1] = (byte) (colours[i] >> 8);
            rgb[3 * i + 2] = (byte) colours[i];
        }
        return rgb;
    }

    /** The mean place of the dots of exactly this colour; -1, -1 if there is none. */
    private static int[] place(BufferedImage picture, int colour) {
        long sumX = 0;
        long sumY = 0;
        long count = 0;
        for (int y = 0; y < picture.getHeight(); y++) {
            for (int x = 0; x < picture.getWidth(); x++) {
                if ((picture.getRGB(x, y) & 0xFFFFFF) == colour) {
                    sumX += x;
                    sumY += y;
                    count++;
                }
            }
        }
        return count == 0 ? new int[] {-1, -1} : new int[] {(int) (sumX / count), (int) (sumY / count)};
    }

    /** Whether a text stands anywhere in the picture, letters of two dots to one, and no letters right after it. */
    private static boolean holdsText(BufferedImage picture, String text, int colour) {
        int width = 2 * PixelFont.standard().width(text) + 4;
        Raster wanted = new Raster(width, 14, 0);
        wanted.text(text, 2, 0, 2, colour);
        for (int top = 0; top + 14 <= picture.getHeight(); top++) {
            for (int left = 0; left + width <= picture.getWidth(); left++) {
                if (matches(picture, wanted, left, top, colour)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean matches(BufferedImage picture, Raster wanted, int left, int top, int colour) {
        for (int y = 0; y < wanted.height(); y++) {
            for (int x = 0; x < wanted.width(); x++) {
                boolean ink = (picture.getRGB(left + x, top + y) & 0xFFFFFF) == colour;
                if (ink != (wanted.colourAt(x, y) == colour)) {
                    return false;
                }
            }
        }
        return true;
    }
}

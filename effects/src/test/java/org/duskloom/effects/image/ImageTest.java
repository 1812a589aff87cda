package org.duskloom.effects.image;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.duskloom.effects.Canvases;
import org.duskloom.effects.Look;
import org.duskloom.effects.Painting;
import org.duskloom.effects.PngBuilder;
import org.duskloom.engine.color.Srgb;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.SettingException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ImageTest {
    private static final Offset<Float> ROUNDING = within(2e-5f);
    private static final int BLACK = 0xFF000000;
    private static final int WHITE = 0xFFFFFFFF;

    @TempDir
    Path folder;

    /** A grid of as many lights as the picture has pixels: each light shows its pixel, whatever fit is chosen. */
    @ParameterizedTest
    @ValueSource(strings = {"contain", "cover", "stretch"})
    void showsEachPixelOnItsLight(String fit) throws Exception {
        int[] pixels = colors(5, 3);
        Painting painting = Painting.of(picture(5, 3, pixels).with("fit", fit), grid(5, 3), 0);

        assertThat(codes(painting)).isEqualTo(pixels);
        assertThat(painting.alpha()).containsOnly(1);
    }

    /**
     * Four pixels on a light, two black and two white: half of the light, which is code 188 (187.516), and not 128: IEC
     * 61966-2-1.
     */
    @Test
    void averagesInLinearLight() throws Exception {
        int[] checker = pixels(8, 4, i -> (i + i / 8) % 2 == 0 ? WHITE : BLACK);
        Painting painting = Painting.of(picture(8, 4, checker), grid(4, 2), 0);

        assertThat(painting.red()).containsOnly(0.5f);
        assertThat(codes(painting)).containsOnly(0xFFBCBCBC);
    }

    /**
     * Half of a cell red, a quarter white, a quarter transparent: premultiplied red 3/4, green and blue 1/4, alpha 3/4.
     */
    @Test
    void averagesAlphaWithTheLight() throws Exception {
        Painting painting = Painting.of(picture(2, 2, 0xFFFF0000, 0xFFFF0000, WHITE, 0x0000FF00), grid(1, 1), 0);

        assertThat(painting.red()[0]).isCloseTo(0.75f, ROUNDING);
        assertThat(painting.green()[0]).isCloseTo(0.25f, ROUNDING);
        assertThat(painting.alpha()[0]).isCloseTo(0.75f, ROUNDING);
    }

    /** A megapixel on one light, the upper quarter white: a quarter of the light. */
    @Test
    void averagesManyPixels() throws Exception {
        int[] halves = pixels(1000, 1000, i -> i < 250_000 ? WHITE : BLACK);
        Painting painting = Painting.of(picture(1000, 1000, halves), grid(1, 1), 0);

        assertThat(painting.green()[0]).isCloseTo(0.25f, ROUNDING);
    }

    /** On 6 x 2 lights a square of 2 x 2 pixels covers the two columns in the middle, and half of nothing else. */
    @Test
    void isTransparentBesideThePicture() throws Exception {
        Painting painting = Painting.of(picture(2, 2, WHITE, WHITE, WHITE, WHITE), grid(6, 2), 0);

        assertThat(painting.alpha()).containsExactly(0, 0, 1, 1, 0, 0, 0, 0, 1, 1, 0, 0);
    }

    /** Covering 6 x 2 lights, a square picture of 6 x 6 pixels shows its two middle rows. */
    @Test
    void coversTheCanvas() throws Exception {
        int[] pixels = colors(6, 6);
        Painting painting = Painting.of(picture(6, 6, pixels).with("fit", "cover"), grid(6, 2), 0);

        assertThat(codes(painting)).isEqualTo(Arrays.copyOfRange(pixels, 12, 24));
    }

    /** Stretched to 2 x 6 lights, 2 x 2 pixels: three lights above each other share a pixel when edges are sharp. */
    @Test
    void stretches() throws Exception {
        int[] pixels = colors(2, 2);
        Look look = picture(2, 2, pixels).with("fit", "stretch").flag("sharp");

        assertThat(codes(Painting.of(look, grid(2, 6), 0)))
                .isEqualTo(IntStream.range(0, 12)
                        .map(i -> pixels[i / 6 * 2 + i % 2])
                        .toArray());
    }

    /**
     * A black and a white pixel on 8 lights. The lights' middles lie at (2k + 1)/8 pixels; from 1/2 to 3/2 the light
     * grows by a straight line: 0 0 1/8 3/8 5/8 7/8 1 1. With sharp edges: 0 0 0 0 1 1 1 1.
     */
    @Test
    void runsPixelsIntoEachOtherUnlessSharp() throws Exception {
        Look look = picture(2, 1, BLACK, WHITE).with("fit", "stretch");

        float[] smooth = Painting.of(look, grid(8, 1), 0).red();
        float[] expected = {0, 0, 0.125f, 0.375f, 0.625f, 0.875f, 1, 1};
        for (int i = 0; i < smooth.length; i++) {
            assertThat(smooth[i]).isCloseTo(expected[i], ROUNDING);
        }
        assertThat(Painting.of(look.flag("sharp"), grid(8, 1), 0).red()).containsExactly(0, 0, 0, 0, 1, 1, 1, 1);
    }

    /**
     * Stretched, the picture is as wide as the canvas, so at 1 and -1 it has just left, and repeated it looks as at 0.
     */
    @ParameterizedTest
    @ValueSource(strings = {"right", "up"})
    void leavesTheCanvasAndComesBackTiled(String way) throws Exception {
        int[] pixels = colors(6, 4);
        for (double there : new double[] {-1, 1}) {
            Look look = picture(6, 4, pixels).with("fit", "stretch").with(way, there);
            assertThat(Painting.of(look, grid(6, 4), 0).alpha()).containsOnly(0);
            assertThat(codes(Painting.of(look.flag("tile"), grid(6, 4), 0))).isEqualTo(pixels);
        }
    }

    /**
     * A 2 x 2 picture contained in 6 x 2 lights travels (6 + 2) / 2 = 4 columns: at 1/2 it is two columns to the right.
     */
    @Test
    void movesByTheWayOut() throws Exception {
        Look look = picture(2, 2, WHITE, WHITE, WHITE, WHITE).with("right", 0.5);
        assertThat(Painting.of(look, grid(6, 2), 0).alpha()).containsExactly(0, 0, 0, 0, 1, 1, 0, 0, 0, 0, 1, 1);

        Look up = picture(2, 2, WHITE, WHITE, WHITE, WHITE).with("up", 0.5);
        assertThat(Painting.of(up, grid(6, 2), 0).alpha()).containsExactly(0, 0, 1, 1, 0, 0, 0, 0, 0, 0, 0, 0);
    }

    /** Turned by a quarter counter-clockwise, the pixel at the lower left of a square comes from the upper left. */
    @ParameterizedTest
    @CsvSource({"90, 2 5 8 1 4 7 0 3 6", "180, 8 7 6 5 4 3 2 1 0", "-90, 6 3 0 7 4 1 8 5 2", "360, 0 1 2 3 4 5 6 7 8"})
    void turns(double degrees, String order) throws Exception {
        int[] pixels = colors(3, 3);
        int[] expected = Arrays.stream(order.split(" "))
                .mapToInt(i -> pixels[Integer.parseInt(i)])
                .toArray();

        assertThat(codes(Painting.of(picture(3, 3, pixels).with("turn", degrees), grid(3, 3), 0)))
                .isEqualTo(expected);
    }

    /** At zoom 2, the middle 2 x 2 of 4 x 4 pixels fill the 4 x 4 lights. */
    @Test
    void zooms() throws Exception {
        int[] pixels = colors(4, 4);
        Painting painting = Painting.of(picture(4, 4, pixels).flag("sharp").with("zoom", 2), grid(4, 4), 0);

        assertThat(codes(painting))
                .isEqualTo(IntStream.range(0, 16)
                        .map(i -> pixels[(1 + i / 8) * 4 + 1 + i % 4 / 2])
                        .toArray());
    }

    /** At zoom 1/2 and tiled, four pixels of a checker fall on each light. */
    @Test
    void tiles() throws Exception {
        int[] checker = pixels(4, 4, i -> (i + i / 4) % 2 == 0 ? WHITE : BLACK);
        Painting painting = Painting.of(picture(4, 4, checker).flag("tile").with("zoom", 0.5), grid(4, 4), 0);

        for (float red : painting.red()) {
            assertThat(red).isCloseTo(0.5f, ROUNDING);
        }
    }

    /**
     * What moves is looked up instead of averaged. Where each light stands on one pixel, both are the same; there the
     * movement passes by at whole columns: from -1 to 1 in 6 s, on 6 columns, one column takes half a second.
     */
    @Test
    void movesThroughWholeColumns() throws Exception {
        int[] pixels = colors(6, 4);
        Look look = picture(6, 4, pixels).with("fit", "stretch").flag("tile").moving("right", -1, 1, 6);
        for (int column = 0; column <= 12; column++) {
            int by = column;
            assertThat(codes(Painting.of(look, grid(6, 4), column / 2.0)))
                    .as("moved by " + column)
                    .isEqualTo(IntStream.range(0, 24)
                            .map(i -> pixels[i / 6 * 6 + Math.floorMod(i - by, 6)])
                            .toArray());
        }
    }

    /** Half way between two columns a light shows the mean of two pixels: black and white make 1/2. */
    @Test
    void movesSmoothly() throws Exception {
        int[] stripes = pixels(6, 4, i -> i % 2 == 0 ? WHITE : BLACK);
        Look look = picture(6, 4, stripes).with("fit", "stretch").flag("tile").moving("right", -1, 1, 6);
        for (float red : Painting.of(look, grid(6, 4), 0.25).red()) {
            assertThat(red).isCloseTo(0.5f, ROUNDING);
        }
    }

    /**
     * A fine picture that moves looks like one that lies still at the same place: within a few hundredths of the light.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.3, 1, 1.7, 4})
    void movesLikeItStands(double zoom) throws Exception {
        int[] waves = pixels(
                60,
                40,
                i -> BLACK
                        | 0x010101
                                * (int) (127 + 60 * StrictMath.sin(i % 60 / 3.0) + 60 * StrictMath.cos(i / 60 / 4.0)));
        Canvas canvas = Canvases.of(Canvases.scattered(300));
        Look moving = picture(60, 40, waves)
                .moving("right", -0.4, 0.6, 1)
                .moving("turn", 0, 80, 1)
                .moving("zoom", 0.3, 2 * zoom - 0.3, 1);
        Look still = picture(60, 40, waves).with("right", 0.1).with("turn", 40).with("zoom", zoom);

        float[] passing = Painting.of(moving, canvas, 0.5).green();
        float[] standing = Painting.of(still, canvas, 0).green();
        for (int i = 0; i < passing.length; i++) {
            assertThat(passing[i]).isCloseTo(standing[i], within(0.07f));
        }
    }

    /**
     * A checkerboard of 48 by 48 pixels in squares of three, on 9 by 7 lights whose cells are some seven pixels wide:
     * while it moves, each light is within a code of the mean of its cell, which the test samples; turned, where the
     * cell lies askew on the picture and counts as an upright one of the same variance, within eight.
     */
    @ParameterizedTest
    @CsvSource({"0.3, 0.2, 0, 1", "-0.17, 0.4, 0, 0.7", "0.05, -0.1, 90, 1.3", "0.1, 0.1, 17, 1", "0, -0.2, 45, 0.8"})
    void showsTheMeanOfACellWhileItMoves(double right, double up, double degrees, double zoom) throws Exception {
        int side = 48;
        int[] checker = pixels(side, side, i -> (i % side / 3 + i / side / 3) % 2 == 0 ? WHITE : 0xFF002040);
        Canvas canvas = grid(9, 7);
        Look moving = picture(side, side, checker)
                .flag("tile")
                .moving("right", right - 0.5, right + 0.5, 1)
                .moving("up", up + 0.5, up - 0.5, 1)
                .moving("turn", degrees - 30, degrees + 30, 1)
                .moving("zoom", zoom - 0.2, zoom + 0.2, 1);
        int[] shown = codes(Painting.of(moving, canvas, 0.5));
        int[] still = codes(Painting.of(
                picture(side, side, checker)
                        .flag("tile")
                        .with("right", right)
                        .with("up", up)
                        .with("turn", degrees)
                        .with("zoom", zoom),
                canvas,
                0));
        double cell = canvas.x()[1] - canvas.x()[0];
        double pixel = 7 * cell / side * zoom;
        double middleX = right * (9 * cell + side * pixel) / 2;
        double middleY = up * (7 * cell + side * pixel) / 2;
        int within = degrees % 90 == 0 ? 1 : 8;
        for (int light = 0; light < shown.length; light++) {
            double[] mean = new double[3];
            int samples = 300;
            for (int sample = 0; sample < samples * samples; sample++) {
                double x = canvas.x()[light] + ((sample % samples + 0.5) / samples - 0.5) * cell - middleX;
                double y = canvas.y()[light] + ((sample / samples + 0.5) / samples - 0.5) * cell - middleY;
                double cos = StrictMath.cos(StrictMath.toRadians(degrees));
                double sin = StrictMath.sin(StrictMath.toRadians(degrees));
                int column = Math.floorMod((int) Math.floor(side / 2.0 + (x * cos + y * sin) / pixel), side);
                int row = Math.floorMod((int) Math.floor(side / 2.0 - (y * cos - x * sin) / pixel), side);
                int code = checker[row * side + column];
                for (int channel = 0; channel < 3; channel++) {
                    mean[channel] += Srgb.decode(code >> (16 - 8 * channel) & 255) / ((double) samples * samples);
                }
            }
            for (int channel = 0; channel < 3; channel++) {
                int shift = 16 - 8 * channel;
                assertThat(shown[light] >> shift & 255)
                        .as("light %d, channel %d", light, channel)
                        .isCloseTo(code((float) mean[channel]), within(within))
                        .isCloseTo(still[light] >> shift & 255, within(1));
            }
        }
    }

    /** Each member has a picture of its own: two grids of different size show the same. */
    @Test
    void liesOnEachMember() throws Exception {
        int[] pixels = colors(3, 2);
        Canvas two = new Canvases()
                .member("a", Canvases.grid(3, 2))
                .member("b", Canvases.moved(Canvases.grid(3, 2), 0.4, 0, 0, 0.4))
                .build();
        int[] both = IntStream.range(0, 12).map(i -> pixels[i % 6]).toArray();

        assertThat(codes(Painting.of(picture(3, 2, pixels), two, 0))).isEqualTo(both);
        assertThat(codes(Painting.of(picture(3, 2, pixels).moving("right", 0, 1, 3), two, 0)))
                .isEqualTo(both);
    }

    /** Delays of 1/4 s, 1/2 s and 1/4 s: the second image is seen from 1/4 s on, the first again at 1 s. */
    @Test
    void playsAnAnimationInItsOwnTime() throws Exception {
        Look look = animation(1, 2, 1);
        assertThat(imagesAt(look, 0, 0.2, 0.25, 0.7, 0.75, 0.99, 1, 1.25)).containsExactly(0, 0, 1, 1, 2, 2, 0, 1);
    }

    @Test
    void playsAnAnimationInAGivenTime() throws Exception {
        assertThat(imagesAt(animation(1, 2, 1).seconds("every", 4), 0, 0.9, 1, 2.9, 3, 4))
                .containsExactly(0, 0, 1, 1, 2, 0);
        // Five runs in the ten seconds of the cue.
        assertThat(imagesAt(animation(1, 2, 1).with("passes", 5), 0.4, 0.5, 1.6, 2))
                .containsExactly(0, 1, 2, 0);
        assertThat(imagesAt(animation(1, 2, 1).flag("reverse"), 0, 0.1, 0.25, 0.5, 0.75, 1))
                .containsExactly(2, 2, 1, 1, 0, 2);
        assertThat(imagesAt(animation(1, 2, 1).with("phase", 0.75), 0, 0.25)).containsExactly(2, 0);
    }

    @Test
    void needsAFile() {
        assertThatThrownBy(() -> Look.of("image").without("file").on(grid(2, 2)))
                .isInstanceOfSatisfying(SettingException.class, e -> {
                    assertThat(e.setting()).isEqualTo("file");
                    assertThat(e.hint()).contains("\"file\"");
                });
    }

    @Test
    void refusesAFileThatIsNoPicture() throws IOException {
        Path file = Files.writeString(folder.resolve("bee.webp"), "RIFF0000WEBPVP8 ");
        assertThatThrownBy(
                        () -> Look.of("image").with("file", Optional.of(file)).on(grid(2, 2)))
                .isInstanceOfSatisfying(SettingException.class, e -> {
                    assertThat(e.setting()).isEqualTo("file");
                    assertThat(e).hasMessage("\"bee.webp\" is a WebP, not a PNG, GIF or JPEG");
                    assertThat(e.hint()).contains("PNG");
                });
    }

    @Test
    void refusesATempoForAPictureWithoutOne() {
        assertThatThrownBy(() -> picture(1, 1, WHITE).seconds("every", 1).on(grid(2, 2)))
                .isInstanceOfSatisfying(SettingException.class, e -> {
                    assertThat(e.setting()).isEqualTo("every");
                    assertThat(e).hasMessageContaining("one image");
                });
    }

    /** Red, green and blue that tell each pixel from every other. */
    private static int[] colors(int width, int height) {
        return pixels(width, height, i -> BLACK | (255 - i) << 16 | (i * 7 & 255) << 8 | i * 37 & 255);
    }

    private static int[] pixels(int width, int height, IntUnaryOperator color) {
        return IntStream.range(0, width * height).map(color).toArray();
    }

    private static Canvas grid(int columns, int rows) {
        return Canvases.of(Canvases.grid(columns, rows));
    }

    private Look picture(int width, int height, int... pixels) throws IOException {
        return file(PngBuilder.still(width, height, pixels));
    }

    /** Images of one pixel, whose codes are 0, 1 and so on, with delays in quarters of a second. */
    private Look animation(int... quarters) throws IOException {
        PngBuilder.Frame[] frames = new PngBuilder.Frame[quarters.length];
        for (int i = 0; i < frames.length; i++) {
            frames[i] = PngBuilder.Frame.whole(1, 1, quarters[i], 4, BLACK | i);
        }
        return file(PngBuilder.animation(1, 1, frames));
    }

    private Look file(byte[] png) throws IOException {
        Path file = Files.createTempFile(folder, "image", ".png");
        return Look.of("image").with("file", Optional.of(Files.write(file, png)));
    }

    private static int[] imagesAt(Look look, double... seconds) throws SettingException {
        int[] images = new int[seconds.length];
        for (int i = 0; i < images.length; i++) {
            images[i] = codes(Painting.of(look, grid(1, 1), seconds[i]))[0] & 255;
        }
        return images;
    }

    /** The sRGB codes of opaque lights. */
    private static int[] codes(Painting painting) {
        int[] codes = new int[painting.red().length];
        for (int i = 0; i < codes.length; i++) {
            codes[i] =
                    BLACK | code(painting.red()[i]) << 16 | code(painting.green()[i]) << 8 | code(painting.blue()[i]);
        }
        return codes;
    }

    private static int code(float light) {
        return (int) Math.floor(Srgb.encode(light) * 255 + 0.5);
    }
}

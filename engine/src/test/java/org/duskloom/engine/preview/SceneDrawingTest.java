package org.duskloom.engine.preview;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SceneDrawingTest {
    /** White pixels on an ellipse glow into the room round it, and not over the edge; one code may be rounding. */
    @ParameterizedTest
    @CsvSource({"24, 100, 100", "6, 100, 100", "3, 100, 60", "8, 100, 0", "8, 0, 100", "400, 100, 60", "1, 0, 0"})
    void glowEndsWithinThePicture(int pixels, double width, double height) {
        double[] x = along(pixels, width, 0);
        double[] y = along(pixels, height, Math.PI / 2);
        PreviewScene scene = new PreviewScene("", x, y, List.of(), frame -> 0);
        double aspect = Math.max(0.5, Math.min(4, SceneDrawing.aspect(scene)));
        int across = (int) Math.min(400, 400 * aspect);
        int upright = (int) Math.min(400, 400 / aspect);
        Raster picture = new Raster(across, upright, 0);
        byte[] white = new byte[3 * pixels];
        Arrays.fill(white, (byte) 255);
        new SceneDrawing(scene, across, upright, OptionalInt.empty()).draw(white, 0, picture);
        for (int i = 0; i < Math.max(across, upright); i++) {
            assertNight(picture, Math.min(i, across - 1), 0);
            assertNight(picture, Math.min(i, across - 1), upright - 1);
            assertNight(picture, 0, Math.min(i, upright - 1));
            assertNight(picture, across - 1, Math.min(i, upright - 1));
        }
        int brightest = IntStream.range(0, across * upright)
                .map(i -> picture.colourAt(i % across, i / across) & 0xFF)
                .max()
                .orElseThrow();
        assertThat(brightest).isGreaterThan(150);
    }

    private static double[] along(int pixels, double size, double startRadians) {
        return IntStream.range(0, pixels)
                .mapToDouble(i -> size / 2 * StrictMath.sin(startRadians + 2 * Math.PI * i / pixels))
                .toArray();
    }

    private static void assertNight(Raster picture, int x, int y) {
        for (int shift = 0; shift <= 16; shift += 8) {
            int code = picture.colourAt(x, y) >> shift & 0xFF;
            assertThat(code - (Ink.NIGHT >> shift & 0xFF)).as("%d, %d", x, y).isBetween(0, 1);
        }
    }
}

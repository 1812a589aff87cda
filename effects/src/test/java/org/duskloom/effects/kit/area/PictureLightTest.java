package org.duskloom.effects.kit.area;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.duskloom.effects.Canvases;
import org.duskloom.effects.Painting;
import org.duskloom.effects.kit.area.AreaKernel.Style;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.Patch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds of the light of any picture on any lights. */
class PictureLightTest {
    private static final Style SHARP = new Style(false, true);
    private static final Style SMOOTH = new Style(false, false);

    /** Any light: no colour above alpha, as where it is multiplied by that. */
    private static LightImage noise(int width, int height, boolean opaque, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        float[] light = new float[width * height * LightImage.CHANNELS];
        for (int i = 0; i < light.length; i += LightImage.CHANNELS) {
            float alpha = opaque ? 1 : (float) random.nextDouble();
            for (int channel = 0; channel < 3; channel++) {
                light[i + channel] = alpha * (float) random.nextDouble();
            }
            light[i + 3] = alpha;
        }
        return new LightImage(width, height, light);
    }

    /** White up to a column, and nothing behind it. */
    private static LightImage edge(int width, int height, int firstDark) {
        float[] light = new float[width * height * LightImage.CHANNELS];
        for (int i = 0; i < light.length; i++) {
            light[i] = i / LightImage.CHANNELS % width < firstDark ? 1 : 0;
        }
        return new LightImage(width, height, light);
    }

    private static Painting painted(LightImage image, Canvas canvas, Laid laid, Style style) {
        return Painting.of(
                AreaKernel.of(canvas, Reel.of(image), time -> 0, laid, style).open(), canvas, 0, Patch.CAPACITY, 0);
    }

    /** A picture that covers just the cells of a grid, which are as far apart along the longer side as it is short. */
    private static Laid covering(int columns, int rows) {
        double cell = 2.0 / (Math.max(columns, rows) - 1);
        return Laid.of(cell * columns, cell * rows);
    }

    private static double mean(float[] values, int from, int step) {
        double sum = 0;
        for (int i = from; i < values.length; i += step) {
            sum += values[i];
        }
        return sum * step / values.length;
    }

    /** Cells that cut a picture up share all of its light among them: none is lost and none is taken twice. */
    @ParameterizedTest
    @CsvSource({"7, 5, 7, 5", "7, 5, 20, 11", "20, 11, 7, 5", "4, 3, 301, 97", "3, 30, 100, 100"})
    void noLightIsLost(int columns, int rows, int width, int height) {
        LightImage image = noise(width, height, false, 3);
        Canvas canvas = Canvases.of(Canvases.grid(columns, rows));
        Laid laid = covering(columns, rows);
        for (Laid each : new Laid[] {laid, laid.moving()}) {
            Painting painting = painted(image, canvas, each, SHARP);
            assertThat(mean(painting.red(), 0, 1)).isCloseTo(mean(image.light(), 0, 4), within(1e-6));
            assertThat(mean(painting.green(), 0, 1)).isCloseTo(mean(image.light(), 1, 4), within(1e-6));
            assertThat(mean(painting.blue(), 0, 1)).isCloseTo(mean(image.light(), 2, 4), within(1e-6));
            assertThat(mean(painting.alpha(), 0, 1)).isCloseTo(mean(image.light(), 3, 4), within(1e-6));
        }
    }

    /** A mean lies between the least and the most: so it is light, and no colour is above alpha. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void lightStaysLight(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        LightImage image = noise(1 + random.nextInt(60), 1 + random.nextInt(60), false, seed);
        Canvas canvas = Canvases.of(Canvases.scattered(200));
        Laid laid = Laid.of(random.nextDouble(0.01, 4), random.nextDouble(0.01, 4))
                .turned(random.nextDouble(-400, 400))
                .zoomed(random.nextDouble(0.05, 20))
                .moved(random.nextDouble(-2, 2), random.nextDouble(-2, 2));
        for (Laid each : new Laid[] {laid, laid.moving()}) {
            Painting painting = painted(image, canvas, each, new Style(random.nextBoolean(), random.nextBoolean()));
            for (int i = 0; i < 200; i++) {
                assertThat(painting.alpha()[i]).isBetween(0f, 1f);
                for (float[] plane : new float[][] {painting.red(), painting.green(), painting.blue()}) {
                    assertThat(plane[i]).isBetween(0f, painting.alpha()[i] + 1e-6f);
                }
            }
        }
    }

    /** Nor where it lies askew to the cells: those at its edges take as much as lies on them. */
    @ParameterizedTest
    @CsvSource({"0.61, 0.53, 0.07, -0.05", "0.2, 0.9, -0.31, 0.02", "0.05, 0.04, 0.011, 0.3"})
    void noLightIsLostAtAnEdge(double wide, double high, double right, double up) {
        LightImage image = noise(37, 41, false, 6);
        Canvas canvas = Canvases.of(Canvases.grid(9, 7));
        Laid whole = covering(9, 7);
        Laid laid = Laid.of(wide * whole.wide(), high * whole.high()).moved(right, up);
        for (Laid each : new Laid[] {laid, laid.moving()}) {
            Painting painting = painted(image, canvas, each, SHARP);
            assertThat(mean(painting.red(), 0, 1)).isCloseTo(wide * high * mean(image.light(), 0, 4), within(1e-6));
            assertThat(mean(painting.alpha(), 0, 1)).isCloseTo(wide * high * mean(image.light(), 3, 4), within(1e-6));
        }
    }

    /**
     * A picture that moves may be reduced first: then a light is off by a thirty-second of its cell at most, wherever
     * an edge in the picture and the edge of the cell meet.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0, 30, 45, 90, 180})
    void aReducedPictureIsNearTheWholeOne(double degrees) {
        LightImage image = edge(900, 500, 437);
        Canvas canvas = Canvases.of(Canvases.grid(5, 4));
        for (int step = 0; step < 12; step++) {
            Laid laid = covering(5, 4).turned(degrees).moved(step / 24.0, step / 30.0);
            Painting exact = painted(image, canvas, laid, SMOOTH);
            Painting near = painted(image, canvas, laid.moving(), SMOOTH);
            assertThat(near.red()).containsExactly(exact.red(), within(1 / 32f));
            assertThat(near.alpha()).containsExactly(exact.alpha(), within(1 / 32f));
        }
    }

    /** Turned by a quarter, a square picture is the one whose columns are its rows, from the right. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void aQuarterTurnTurnsThePicture(boolean still) {
        int side = 12;
        LightImage image = noise(side, side, true, 9);
        float[] turned = new float[image.light().length];
        for (int row = 0; row < side; row++) {
            for (int column = 0; column < side; column++) {
                int from = column * side + side - 1 - row;
                System.arraycopy(image.light(), 4 * from, turned, 4 * (row * side + column), 4);
            }
        }
        Canvas canvas = Canvases.of(Canvases.grid(6, 6));
        Laid laid = still ? covering(6, 6) : covering(6, 6).moving();
        assertThat(painted(image, canvas, laid.turned(90), SHARP).red())
                .containsExactly(
                        painted(new LightImage(side, side, turned), canvas, laid, SHARP)
                                .red(),
                        within(1e-6f));
    }

    /**
     * Smooth is bilinear: between the middles of four pixels a light has a (1 - s)(1 - t) + b s (1 - t) + c (1 - s) t +
     * d s t, where s and t are how far it is from the left ones and from the upper ones.
     */
    @Test
    void smoothIsBilinear() {
        int width = 9;
        int height = 7;
        LightImage image = noise(width, height, true, 4);
        AreaMean mean = new AreaMean(width, height, SMOOTH);
        mean.begin(1e-3, 1e-3);
        SplittableRandom random = new SplittableRandom(5);
        float[] light = new float[4];
        for (int i = 0; i < 500; i++) {
            double x = random.nextDouble(0, width - 1);
            double y = random.nextDouble(0, height - 1);
            mean.light(SummedLight.plain(image, false), (x + 0.5) / width, (y + 0.5) / height, light);
            int left = (int) x;
            int top = (int) y;
            double s = x - left;
            double t = y - top;
            int at = 4 * (top * width + left);
            float[] all = image.light();
            double upper = all[at] * (1 - s) + all[at + 4] * s;
            double lower = all[at + 4 * width] * (1 - s) + all[at + 4 * width + 4] * s;
            assertThat((double) light[0]).isCloseTo(upper * (1 - t) + lower * t, within(1e-6));
            assertThat(light[3]).isEqualTo(1);
        }
    }
}

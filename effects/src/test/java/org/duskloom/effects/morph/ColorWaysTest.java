package org.duskloom.effects.morph;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.duskloom.effects.Look;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.color.LinearColor;
import org.duskloom.engine.effect.PaletteKey;
import org.duskloom.engine.effect.PaletteTrack;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ways of colours that stay and of such that move, against OKLab written out. */
class ColorWaysTest {
    /** Matrices as B. Ottosson, "A perceptual color space for image processing" (2020), has them. */
    private static final double[][] CONES = {
        {0.4122214708, 0.5363325363, 0.0514459929},
        {0.2119034982, 0.6806995451, 0.1073969566},
        {0.0883024619, 0.2817188376, 0.6299787005}
    };

    private static final double[][] LIGHT = {
        {4.0767416621, -3.3077115913, 0.2309699292},
        {-1.2684380046, 2.6097574011, -0.3413193965},
        {-0.0041960863, -0.7034186147, 1.7076147010}
    };

    private static double[] times(double[][] matrix, double... vector) {
        double[] product = new double[3];
        for (int row = 0; row < 3; row++) {
            for (int column = 0; column < 3; column++) {
                product[row] += matrix[row][column] * vector[column];
            }
        }
        return product;
    }

    /**
     * The mix of two colours, multiplied by its alpha, with alpha as the fourth. L, a and b are sums of the cube roots
     * of what cones see, so these are mixed, multiplied by alpha before and divided after (W3C CSS Color 4, 12.3).
     */
    private static double[] mixed(LinearColor start, LinearColor end, double share) {
        double startPart = start.alpha() * (1 - share);
        double endPart = end.alpha() * share;
        double alpha = startPart + endPart;
        double[] startCones = times(CONES, start.red(), start.green(), start.blue());
        double[] endCones = times(CONES, end.red(), end.green(), end.blue());
        double[] cones = new double[3];
        for (int i = 0; i < 3 && alpha > 0; i++) {
            double root = (startPart * Math.cbrt(startCones[i]) + endPart * Math.cbrt(endCones[i])) / alpha;
            cones[i] = root * root * root;
        }
        double[] light = times(LIGHT, cones);
        return new double[] {shown(light[0]) * alpha, shown(light[1]) * alpha, shown(light[2]) * alpha, alpha};
    }

    private static double shown(double light) {
        return Math.min(1, Math.max(0, light));
    }

    private static List<LinearColor> colors(int count, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        return IntStream.range(0, count)
                .mapToObj(i -> new LinearColor(
                        (float) random.nextDouble(),
                        (float) random.nextDouble(),
                        (float) random.nextDouble(),
                        i % 4 == 0 ? 1 : i % 7 == 0 ? 0 : (float) random.nextDouble()))
                .toList();
    }

    private static ColorWays.Colors at(ColorWays ways, double second, double share) {
        ColorWays.Colors colors = new ColorWays.Colors(ways.count());
        ways.fill(second, (float) share, colors);
        return colors;
    }

    private static void assertColor(ColorWays.Colors colors, int way, double[] expected, double tolerance) {
        Offset<Double> rounding = within(tolerance);
        assertThat((double) colors.channels[4 * way]).isCloseTo(expected[0], rounding);
        assertThat((double) colors.channels[4 * way + 1]).isCloseTo(expected[1], rounding);
        assertThat((double) colors.channels[4 * way + 2]).isCloseTo(expected[2], rounding);
        assertThat((double) colors.channels[4 * way + 3]).isCloseTo(expected[3], rounding);
    }

    private static ColorWays moving(
            PaletteTrack starts, PaletteTrack ends, List<LinearColor> from, List<LinearColor> to) {
        int[] numbers = IntStream.range(0, from.size()).toArray();
        return new MovingWays(
                new LiveColors(starts.picked(palette -> from)),
                new LiveColors(ends.picked(palette -> to)),
                numbers,
                numbers);
    }

    /** Opaque, translucent and transparent colours in any pairs, at the ends and between. */
    @Test
    void mixInOklab() {
        List<LinearColor> from = colors(200, 1);
        List<LinearColor> to = colors(200, 2);
        ColorWays fixed = new FixedWays(IntStream.range(0, 200)
                .mapToObj(i -> new FixedWays.Ends(from.get(i), to.get(i)))
                .toList());
        PaletteTrack any = PaletteTrack.constant(Look.evenly(ColorMix.OKLAB, "red"));
        ColorWays moving = moving(any, any, from, to);
        assertThat(fixed.count()).isEqualTo(moving.count()).isEqualTo(200);
        for (double share : new double[] {0, 0.001, 0.25, 0.5, 0.8, 1}) {
            for (int way = 0; way < 200; way++) {
                double[] expected = mixed(from.get(way), to.get(way), share);
                assertColor(at(fixed, 0, share), way, expected, 3e-4);
                assertColor(at(moving, 0, share), way, expected, 3e-4);
            }
        }
    }

    /** Half way, as codes of sRGB; computed from the matrices of W3C CSS Color 4, clipped channel by channel. */
    @ParameterizedTest
    @CsvSource({
        "red, lime, 208, 168, 0",
        "red, blue, 140, 83, 162",
        "blue, white, 116, 163, 255",
        "black, white, 99, 99, 99"
    })
    void areHalfWayWhereTheStandardIs(String start, String end, int red, int green, int blue) {
        ColorWays ways = new FixedWays(List.of(new FixedWays.Ends(Look.color(start), Look.color(end))));
        LinearColor code = Look.color("rgb(" + red + " " + green + " " + blue + ")");
        // Half a code is at most 0.5 / 255 of a slope of 2.3 in linear light.
        assertColor(at(ways, 0, 0.5), 0, new double[] {code.red(), code.green(), code.blue(), 1}, 4.6e-3);
    }

    /** From red to blue in 4 s, a quarter of blue after one; there and back in time the colours are the same. */
    @Test
    void startWhereTheirPaletteIsByThen() {
        PaletteTrack turning = PaletteTrack.keyed(
                List.of(
                        new PaletteKey(0, Look.evenly(ColorMix.LINEAR, "red"), Look.linear()),
                        new PaletteKey(4, Look.evenly(ColorMix.LINEAR, "blue"), Look.linear())),
                ColorMix.LINEAR);
        int[] first = {0};
        LiveColors starts = new LiveColors(turning.picked(palette -> List.of(palette.at(0))));
        ColorWays ways = new MovingWays(starts, starts, first, first);
        for (double second : new double[] {1, 3, 1, 0, 4, 99, 1}) {
            double blue = Math.min(1, second / 4);
            assertColor(at(ways, second, 0), 0, new double[] {1 - blue, 0, blue, 1}, 1e-5);
            assertColor(at(ways, second, 0.7), 0, new double[] {1 - blue, 0, blue, 1}, 1e-5);
        }
    }

    /** Dots take the colours of their ways, however many share one. */
    @Test
    void areGivenToDots() {
        float[] colors = {0, 0.25f, 0, 0, 0.5f, 0, 0, 1, 0.75f, 0, 0, 1};
        assertThat(given(colors, 1, 0, 1)).containsExactly(0.5f, 0, 0, 1, 0, 0.25f, 0, 0, 0.5f, 0, 0, 1);
        assertThat(given(colors, 1, 2)).containsExactly(0.5f, 0, 0, 1, 0.75f, 0, 0, 1);
        assertThat(given(colors, 2)).containsExactly(0.75f, 0, 0, 1);
    }

    private static float[] given(float[] colors, int... ways) {
        DotFrame frame = new DotFrame(ways.length, true);
        DotWays.of(ways).give(colors, frame);
        return Arrays.copyOfRange(frame.colors, frame.firstColor, frame.firstColor + 4 * ways.length);
    }
}

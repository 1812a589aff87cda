package org.duskloom.effects.festoon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.duskloom.effects.Canvases;
import org.duskloom.effects.Look;
import org.duskloom.effects.Painting;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.SettingException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Swags against many points of the curves that they are: y = a cosh((x - x0) / a) + c (J. Bernoulli, Leibniz, Huygens
 * 1691; any handbook of mechanics), a found by halving until the curve hangs through as it shall.
 */
class FestoonPlainTest {
    private static final int POINTS = 2000;
    private static final double[][] SCATTERED = Canvases.scattered(500);
    private static final double[][] SMALL = Canvases.moved(Canvases.scattered(80), 0.6, 0.1, 0, 0.4);
    private static final Canvas CANVAS =
            new Canvases().member("all", SCATTERED).member("some", SMALL).build();

    /** Height over the first end at some places along a span of 1; the second end is so much higher. */
    private static double[] heights(double rise, double sag) {
        double low = 1e-3;
        double high = 1e4;
        for (int i = 0; i < 200; i++) {
            double a = Math.sqrt(low * high);
            boolean tooDeep = rise / 2 - height(a, rise, 0.5) > sag;
            low = tooDeep ? a : low;
            high = tooDeep ? high : a;
        }
        double a = low;
        double[] heights = new double[POINTS + 1];
        Arrays.setAll(heights, i -> sag == 0 ? rise * i / POINTS : height(a, rise, (double) i / POINTS));
        return heights;
    }

    /** From rise = 2 a sinh(1 / 2a) sinh((1 - 2 x0) / 2a), the difference of the two ends. */
    private static double height(double a, double rise, double x) {
        double slope = rise / (2 * a * Math.sinh(1 / (2 * a)));
        double x0 = 0.5 - a * Math.log(slope + Math.sqrt(slope * slope + 1));
        return a * (Math.cosh((x - x0) / a) - Math.cosh(x0 / a));
    }

    /** How far a place is from the nearest of all swags; all in spans, y from the first end of the first row. */
    private static double distance(double x, double y, int swags, int rows, double gap, double rise, double[] heights) {
        double least = Double.POSITIVE_INFINITY;
        for (int row = 0; row < rows; row++) {
            for (int swag = 0; swag < swags; swag++) {
                for (int i = 0; i <= POINTS; i++) {
                    double dx = x - swag - (double) i / POINTS;
                    double dy = y + row * gap - swag * rise - heights[i];
                    least = Math.min(least, dx * dx + dy * dy);
                }
            }
        }
        return Math.sqrt(least);
    }

    /** The level with edges of half the thickness: smoothstep, x²(3 - 2x), from the edge to the middle. */
    @ParameterizedTest
    @CsvSource({
        "1, 0.3, 0, 0.75, 1, 0, 0",
        "3, 0.6, 0, 1, 1, 0, 33",
        "2, 0.2, 0.4, 0.2, 3, 0.4, 200",
        "4, 0, -0.3, 1, 2, 0.5, 90",
        "1, 2, 0, 2.5, 5, 0.2, -77",
        "2, 0.01, 1.5, -0.5, 2, 3, 10"
    })
    void lightsWhatIsNearItsCurves(
            int swags, double sag, double rise, double height, int rows, double gap, double toward)
            throws SettingException {
        double thickness = 0.3;
        Look look = Look.of("festoon").with("swags", swags).with("sag", sag).with("rise", rise);
        look = look.with("height", height)
                .with("rows", rows)
                .with("row-gap", gap)
                .with("toward", toward);
        float[] alpha = Painting.of(look.with("thickness", thickness).with("soft", 0.5), CANVAS, 0)
                .alpha();
        double[] heights = heights(rise, sag);
        int first = 0;
        for (double[][] member : new double[][][] {SCATTERED, SMALL}) {
            double cosine = Math.cos(Math.toRadians(toward));
            double sine = Math.sin(Math.toRadians(toward));
            double[][] turned = Canvases.moved(member, cosine, sine, -sine, cosine);
            double left = Arrays.stream(turned).mapToDouble(p -> p[0]).min().orElseThrow();
            double low = Arrays.stream(turned).mapToDouble(p -> p[1]).min().orElseThrow();
            double tall = Arrays.stream(turned).mapToDouble(p -> p[1]).max().orElseThrow() - low;
            double wide = Arrays.stream(turned).mapToDouble(p -> p[0]).max().orElseThrow() - left;
            double span = wide / swags;
            // A swag strays from its curve by a thousandth of the span at most; smoothstep is nowhere steeper than 3/2.
            double strayed = 1.5 * 1e-3 * span / (thickness / 2);
            for (int pixel = 0; pixel < member.length; pixel++) {
                double x = (turned[pixel][0] - left) / span;
                double y = (turned[pixel][1] - low - height * tall) / span;
                double away = span * distance(x, y, swags, rows, gap * tall / span, rise, heights);
                double inward = Math.max(0, 1 - away / (thickness / 2));
                assertThat((double) alpha[first + pixel])
                        .as("pixel %s", first + pixel)
                        .isCloseTo(inward * inward * (3 - 2 * inward), within(1e-3 + strayed));
            }
            first += member.length;
        }
    }
}

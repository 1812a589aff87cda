package org.duskloom.effects.morph;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.duskloom.effects.Canvases;
import org.duskloom.effects.Look;
import org.duskloom.effects.Painting;
import org.duskloom.effects.kit.Motion;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Period;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Small parts against the plainest reading of the formula: all pairings are tried, and every dot meets every pixel. */
class MorphPlainTest {
    private static final int PIXELS = 40;
    private static final double[][] PLACES = Canvases.scattered(PIXELS);
    private static final int[] FROM = {3, 11, 17, 22, 30};
    private static final int[] TO = {1, 8, 19, 25, 39};
    private static final Canvas CANVAS = new Canvases()
            .member("bed", PLACES)
            .part("from", FROM)
            .part("to", TO)
            .build();

    private static double squared(double[] a, double[] b) {
        return (a[0] - b[0]) * (a[0] - b[0]) + (a[1] - b[1]) * (a[1] - b[1]);
    }

    /** The partner of each pixel of the one part, of all orders of the other the one with the least total. */
    private static int[] partners() {
        int[] best = new int[TO.length];
        double[] least = {Double.POSITIVE_INFINITY};
        permute(TO.clone(), 0, order -> {
            double total = 0;
            for (int i = 0; i < FROM.length; i++) {
                total += squared(PLACES[FROM[i]], PLACES[order[i]]);
            }
            if (total < least[0]) {
                least[0] = total;
                System.arraycopy(order, 0, best, 0, best.length);
            }
        });
        return best;
    }

    private static void permute(int[] order, int from, Consumer<int[]> sink) {
        if (from == order.length) {
            sink.accept(order);
            return;
        }
        for (int i = from; i < order.length; i++) {
            swap(order, from, i);
            permute(order, from + 1, sink);
            swap(order, from, i);
        }
    }

    private static void swap(int[] order, int i, int j) {
        int moved = order[i];
        order[i] = order[j];
        order[j] = moved;
    }

    /** The median distance of a part's pixels from their nearest neighbours on the canvas. */
    private static double spacing(int[] part) {
        double[] nearest = Arrays.stream(part)
                .mapToDouble(pixel -> IntStream.range(0, PIXELS)
                        .filter(other -> other != pixel)
                        .mapToDouble(other -> Math.sqrt(squared(PLACES[pixel], PLACES[other])))
                        .min()
                        .orElseThrow())
                .sorted()
                .toArray();
        return nearest[nearest.length / 2];
    }

    private static double[] expected(double p, double size, double bulge) {
        int[] partners = partners();
        double spacing = spacing(FROM) * (1 - p) + spacing(TO) * p;
        double reach = size * spacing * (1 + (bulge - 1) * 4 * p * (1 - p));
        double[] alpha = new double[PIXELS];
        for (int dot = 0; dot < FROM.length; dot++) {
            double[] start = PLACES[FROM[dot]];
            double[] end = PLACES[partners[dot]];
            double[] at = {start[0] * (1 - p) + end[0] * p, start[1] * (1 - p) + end[1] * p};
            for (int pixel = 0; pixel < PIXELS; pixel++) {
                double share = 1 - squared(at, PLACES[pixel]) / (reach * reach);
                alpha[pixel] = Math.max(alpha[pixel], share > 0 ? share * share : 0);
            }
        }
        return alpha;
    }

    @ParameterizedTest
    @CsvSource({"1, 2", "1, 1", "2.5, 1", "4, 0.3", "0.2, 8"})
    void isTheFormula(double size, double bulge) throws SettingException {
        Look look = Look.of("morph")
                .with("from", "from")
                .with("to", "to")
                .with("size", size)
                .with("bulge", bulge)
                .with("easing", "linear")
                .seconds("every", 1);
        for (int i = 0; i < 40; i++) {
            double p = i / 40.0;
            float[] alpha = Painting.of(look, CANVAS, p).alpha();
            double[] expected = expected(p, size, bulge);
            for (int pixel = 0; pixel < PIXELS; pixel++) {
                assertThat((double) alpha[pixel])
                        .as("pixel %s at %s", pixel, p)
                        .isCloseTo(expected[pixel], within(2e-5));
            }
        }
    }

    private static double progress(Map<Setting<?>, Object> given, double second) throws SettingException {
        Map<Setting<?>, Object> all = new HashMap<>(given);
        all.put(Motion.EVERY, Optional.of(Period.ofSeconds(4)));
        return Way.of(Settings.of(all)).progress(new CueTime().set(second, 100));
    }

    /** Passes of 4 s, straight: a second is a quarter of the way, or half of it where it goes back in each pass. */
    @ParameterizedTest
    @CsvSource({"0, 0, 0", "1, 0.25, 0.5", "2, 0.5, 1", "3, 0.75, 0.5", "4, 0, 0", "5, 0.25, 0.5"})
    void goesThereAndBack(double second, double there, double back) throws SettingException {
        assertThat(progress(Map.of(Way.EASING, "linear"), second)).isCloseTo(there, within(1e-12));
        assertThat(progress(Map.of(Way.EASING, "linear", Way.BACK, true), second))
                .isCloseTo(back, within(1e-12));
    }

    /** CSS Easing Functions Level 1: ease-in at a half is 0.315357; reversed it begins at the end. */
    @Test
    void goesByTheEasing() throws SettingException {
        assertThat(progress(Map.of(Way.EASING, "ease-in"), 2)).isCloseTo(0.315357, within(1e-6));
        assertThat(progress(Map.of(Way.EASING, "linear", Motion.REVERSE, true), 1))
                .isCloseTo(0.75, within(1e-12));
        assertThat(progress(Map.of(Way.EASING, "linear", Motion.REVERSE, true), 0))
                .isEqualTo(1);
    }

    /**
     * From here to there is from there to here with time turned round: with the palettes changed over it is the same
     * picture. With back, a pass is the same from both of its ends.
     */
    @ParameterizedTest
    @CsvSource({"1, 2", "3, 0.5", "40, 1", "0.3, 10"})
    void isTheSameBackward(double size, double bulge) throws SettingException {
        Canvas canvas = new Canvases()
                .member("bed", PLACES)
                .part("few", 3, 11, 17)
                .part("many", 1, 8, 19, 25, 39, 30, 5)
                .build();
        Look look = Look.of("morph").with("size", size).with("bulge", bulge).seconds("every", 2);
        look = look.with("easing", "linear");
        Palette warm = Look.evenly(ColorMix.LINEAR, "red", "gold");
        Palette cold = Look.evenly(ColorMix.LINEAR, "blue", "white");
        for (double second = 0.1; second < 2; second += 0.3) {
            look.with("from", "few").with("to", "many").with("palette", warm).with("palette-to", cold);
            Painting there = Painting.of(look.without("reverse"), canvas, second);
            Painting mirrored = Painting.of(look.flag("back"), canvas, 2 - second);
            assertThat(mirrored.green())
                    .containsExactly(Painting.of(look, canvas, second).green(), within(1e-5f));
            look.with("from", "many").with("to", "few").with("palette", cold).with("palette-to", warm);
            Painting back = Painting.of(look.without("back").flag("reverse"), canvas, second);
            assertThat(back.red()).containsExactly(there.red(), within(1e-4f));
            assertThat(back.green()).containsExactly(there.green(), within(1e-4f));
            assertThat(back.alpha()).containsExactly(there.alpha(), within(1e-4f));
        }
    }
}

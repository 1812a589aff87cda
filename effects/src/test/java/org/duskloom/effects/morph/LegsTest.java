package org.duskloom.effects.morph;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.duskloom.effects.assign.Clouds;
import org.duskloom.effects.assign.Points;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.effect.Patch;
import org.duskloom.engine.effect.Settings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Legs against the plain formula: every dot with every pixel. */
class LegsTest {
    private static final double[] SIZES = {0, 0.05, 1, 2.5, 40};
    private static final double[] BULGES = {0, 0.4, 1, 2, 7};

    /** To the bit, at the ends of legs, between them, and where an easing leads beyond the way. */
    @ParameterizedTest
    @MethodSource("org.duskloom.effects.morph.PixelGridTest#places")
    void lightWhatEveryDotWithEveryPixelGives(Points places) {
        Dots dots = dots(places);
        for (double size : SIZES) {
            for (double bulge : BULGES) {
                Legs legs = new Legs(dots, size(size, bulge));
                assertThat(size > 0.05 || legs.at(0.5) != Leg.CROWDED).isTrue();
                for (double progress : new double[] {0.5, 0, 1, 0.25, 1 / 3.0, 0.4999, 0.77, 1e-12, -0.2, 1.3}) {
                    double spacings = spacings(size, bulge, progress);
                    assertThat(lit(dots, legs.at(progress), progress, spacings))
                            .as("size %s, bulge %s, at %s", size, bulge, progress)
                            .containsExactly(byFormula(places, dots, progress, spacings));
                }
            }
        }
    }

    /** A reach that an easing led beyond that of all keys is not taken from the leg. */
    @Test
    void doNotCoverDotsThatReachFarther() {
        Dots dots = dots(Clouds.grid(400, -1, 2));
        Legs legs = new Legs(dots, size(1, 1));

        assertThat(legs.at(0.5).covers(dots.startSpacing())).isTrue();
        assertThat(legs.at(0.5).covers(3 * dots.startSpacing())).isFalse();
        assertThat(lit(dots, legs.at(0.5), 0.5, 3)).containsExactly(byFormula(Clouds.grid(400, -1, 2), dots, 0.5, 3));
    }

    @Test
    void areNotKeptBeyondTheWay() {
        Legs legs = new Legs(dots(Clouds.grid(400, -1, 2)), size(1, 2));

        assertThat(legs.at(-1e-9)).isSameAs(Leg.CROWDED);
        assertThat(legs.at(1.5)).isSameAs(Leg.CROWDED);
        assertThat(legs.at(Double.NaN)).isSameAs(Leg.CROWDED);
    }

    /** Where every dot reaches all of thousands of pixels, nothing is written down. */
    @Test
    void areNotKeptWhereTooManyMeet() {
        Points places = Clouds.grid(2500, 0, 1);
        Dots dots = dots(places);

        assertThat(new Legs(dots, size(100, 1)).at(0.5)).isSameAs(Leg.CROWDED);
        assertThat(new Legs(dots, size(1, 1)).at(0.5)).isNotSameAs(Leg.CROWDED);
    }

    /** What a dot may meet on a leg is found once. */
    @Test
    void areKept() {
        Legs legs = new Legs(dots(Clouds.grid(400, -1, 2)), size(1, 2));

        assertThat(legs.at(0.3)).isSameAs(legs.at(0.3));
        assertThat(legs.at(0)).isNotSameAs(legs.at(1));
    }

    /** Dots of four colours from every other pixel to one of those that follow. */
    private static Dots dots(Points places) {
        int count = (places.count() + 1) / 2;
        int[] from = IntStream.range(0, count).map(i -> 2 * i).toArray();
        int[] to = IntStream.range(0, count)
                .map(i -> (2 * i + 3 + i % 5) % places.count())
                .toArray();
        int[] all = IntStream.range(0, places.count()).toArray();
        int[] ways = IntStream.range(0, count).map(i -> i % 4).toArray();
        boolean flat = PixelGridTest.isFlat(places);
        return new Dots(
                new PixelGrid(places, all, 0.15, flat),
                Spots.of(places, from, flat),
                Spots.of(places, to, flat),
                DotWays.of(ways),
                0.06,
                0.09);
    }

    private static DotSize size(double size, double bulge) {
        return DotSize.of(Settings.of(
                Map.of(DotSize.SIZE, NumberTrack.constant(size), DotSize.BULGE, NumberTrack.constant(bulge))));
    }

    /** By the reference: 1 + (bulge - 1) times 4p(1 - p), p within [0, 1]. */
    private static double spacings(double size, double bulge, double progress) {
        double share = Math.min(1, Math.max(0, progress));
        return size * (1 + (bulge - 1) * 4 * share * (1 - share));
    }

    private static ColorWays.Colors colors() {
        ColorWays.Colors colors = new ColorWays.Colors(4);
        for (int way = 0; way < 4; way++) {
            colors.channels[4 * way] = way / 3f;
            colors.channels[4 * way + 1] = 0.9f - way / 4f;
            colors.channels[4 * way + 2] = way == 2 ? 1 : 0.25f;
            colors.channels[4 * way + 3] = 1;
        }
        return colors;
    }

    /** Red, green, blue and alpha of every pixel. */
    private static float[] lit(Dots dots, Leg leg, double progress, double spacings) {
        Light light = new ColorLight(dots.grid().size(), List.of(dots.grid()));
        light.turnTo(0);
        dots.shine(progress, spacings, leg, colors(), new DotFrame(List.of(dots)), light);
        Patch patch = new Patch();
        patch.reset(0, dots.grid().size());
        light.paint(0, patch);
        float[] channels = new float[4 * dots.grid().size()];
        for (int pixel = 0; pixel < dots.grid().size(); pixel++) {
            channels[4 * pixel] = patch.red[pixel];
            channels[4 * pixel + 1] = patch.green[pixel];
            channels[4 * pixel + 2] = patch.blue[pixel];
            channels[4 * pixel + 3] = patch.alpha[pixel];
        }
        return channels;
    }

    private static float[] byFormula(Points places, Dots dots, double progress, double spacings) {
        double share = Math.min(1, Math.max(0, progress));
        double reach = spacings * (dots.startSpacing() * (1 - share) + dots.endSpacing() * share);
        float[] colors = colors().channels;
        float[] channels = new float[4 * places.count()];
        for (int dot = 0; dot < dots.count(); dot++) {
            double x = along(dots.starts().x(dot), dots.ends().x(dot), progress);
            double y = along(dots.starts().y(dot), dots.ends().y(dot), progress);
            double z = along(dots.starts().z(dot), dots.ends().z(dot), progress);
            Points spot = new Points(new double[] {x}, new double[] {y}, new double[] {z});
            for (int pixel = 0; pixel < places.count(); pixel++) {
                float level = level(places.squaredDistance(pixel, spot, 0), reach);
                int way = dots.ways().numbers()[dot];
                for (int channel = 0; channel < 4; channel++) {
                    int at = 4 * pixel + channel;
                    channels[at] = Math.max(channels[at], level * colors[4 * way + channel]);
                }
            }
        }
        return channels;
    }

    private static double along(double start, double end, double progress) {
        return start * (1 - progress) + end * progress;
    }

    private static float level(double square, double reach) {
        double reachSquare = Math.max(reach * reach, Double.MIN_NORMAL);
        float away = (float) (1 - square / reachSquare);
        return square < reachSquare ? away * away : 0;
    }
}

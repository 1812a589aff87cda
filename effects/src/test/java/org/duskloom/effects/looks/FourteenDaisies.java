package org.duskloom.effects.looks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.PlanCompiler;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.render.FramePainter;
import org.duskloom.engine.show.Show;
import org.duskloom.engine.show.ShowReader;

/**
 * Fourteen daisies of 61 pixels, seven across and two up, one metre apart, and what a cue shows on them at 100 frames a
 * second. Wired from the eye over the heart (8 pixels, radius 62) and the rim (16, radius 125) to six petals: loops of
 * 6 pixels, whose middles are 230 from the eye. All of them run clockwise; the first petal is on top.
 */
final class FourteenDaisies {
    static final int PROPS = 14;
    static final int COLUMNS = 7;
    static final int PIXELS = 61;
    static final int HEART = 1;
    static final int RIM = 9;
    static final int PETALS = 25;
    static final int PETAL_PIXELS = 6;

    /** One of the two outermost pixels of the upper petal. */
    static final int TOP = PETALS + 2;

    private static final double SPACING = 1000;

    private final FramePainter painter;
    private final byte[] rgb = new byte[3 * PROPS * PIXELS];

    private FourteenDaisies(Plan plan) {
        painter = new FramePainter(plan);
    }

    /** The daisies under one cue of ten seconds, written without its times. */
    static FourteenDaisies under(String cue, Path folder) throws IOException {
        Files.writeString(folder.resolve("map.csv"), map());
        Files.writeString(folder.resolve("show.json"), """
                {"duskloom": "timeline/1", "map": "map.csv", "rate": 100, "length": "10s", "seed": 5,
                 "groups": {"daisies": ["daisy-*"]},
                 "layers": [{"cues": [%s]}]}
                """.formatted(cue));
        Problems problems = new Problems();
        Show show = ShowReader.read(folder.resolve("show.json"), problems).orElse(null);
        assertThat(problems.inFileOrder()).isEmpty();
        Plan plan =
                PlanCompiler.compile(show, EffectRegistry.installed(), problems).orElse(null);
        assertThat(problems.inFileOrder()).isEmpty();
        return new FourteenDaisies(plan);
    }

    /** Shows the instant at so many seconds. */
    FourteenDaisies at(double seconds) {
        painter.render(Math.round(seconds * 100), rgb, 0);
        return this;
    }

    /** One channel of a pixel, 0 to 255; props and pixels count from 0, channels are red, green, blue. */
    private int channel(int prop, int pixel, int channel) {
        return rgb[3 * (prop * PIXELS + pixel) + channel] & 0xFF;
    }

    /** The brightness of a pixel: the sum of its channels. */
    int light(int prop, int pixel) {
        return channel(prop, pixel, 0) + channel(prop, pixel, 1) + channel(prop, pixel, 2);
    }

    /** The colour of a pixel as one number. */
    int color(int prop, int pixel) {
        return channel(prop, pixel, 0) << 16 | channel(prop, pixel, 1) << 8 | channel(prop, pixel, 2);
    }

    /** The brightest of some pixels of a prop, from one up to another, or -1 if they are dark. */
    int brightest(int prop, int fromPixel, int toPixel) {
        int best = IntStream.range(fromPixel, toPixel)
                .reduce((a, b) -> light(prop, b) > light(prop, a) ? b : a)
                .orElseThrow();
        return light(prop, best) == 0 ? -1 : best;
    }

    /** How many pixels of a prop are lit, from one up to another. */
    int lit(int prop, int fromPixel, int toPixel) {
        return (int) IntStream.range(fromPixel, toPixel)
                .filter(pixel -> light(prop, pixel) > 0)
                .count();
    }

    static double x(int prop, int pixel) {
        return prop % COLUMNS * SPACING + ownX(pixel);
    }

    static double y(int prop, int pixel) {
        return prop / COLUMNS * SPACING + ownY(pixel);
    }

    /** Across a daisy, from its eye to the right. */
    static double ownX(int pixel) {
        return own(pixel, StrictMath::sin);
    }

    /** The same, up. */
    static double ownY(int pixel) {
        return own(pixel, StrictMath::cos);
    }

    /** The greatest of a daisy's own places; the least is the same below zero, as a daisy is symmetric. */
    static double reach(IntToDoubleFunction own) {
        return IntStream.range(0, PIXELS).mapToDouble(own).max().orElseThrow();
    }

    /** Sine or cosine of turns clockwise from the top. */
    private interface Round {
        double of(double radians);
    }

    private static double own(int pixel, Round round) {
        if (pixel < PETALS) {
            double radius = pixel < HEART ? 0 : pixel < RIM ? 62 : 125;
            double turns = pixel < RIM ? (pixel - HEART) / 8.0 : (pixel - RIM + 0.5) / 16;
            return radius * round.of(2 * Math.PI * turns);
        }
        double middle = (pixel - PETALS) / PETAL_PIXELS / 6.0;
        double onLoop = middle + ((pixel - PETALS) % PETAL_PIXELS - 2.5) * 50 / 360;
        return 230 * round.of(2 * Math.PI * middle) + 85 * round.of(2 * Math.PI * onLoop);
    }

    private static String part(int pixel) {
        if (pixel < HEART) {
            return "eye";
        }
        if (pixel < PETALS) {
            return pixel < RIM ? "heart" : "rim";
        }
        return "petals/" + (1 + (pixel - PETALS) / PETAL_PIXELS);
    }

    private static String map() {
        StringBuilder map = new StringBuilder("prop,pixel,x,y,part\n");
        for (int prop = 0; prop < PROPS; prop++) {
            for (int pixel = 0; pixel < PIXELS; pixel++) {
                map.append(String.format(
                        Locale.ROOT,
                        "daisy-%d,%d,%.6f,%.6f,%s%n",
                        prop + 1,
                        pixel + 1,
                        x(prop, pixel),
                        y(prop, pixel),
                        part(pixel)));
            }
        }
        return map.toString();
    }
}

package org.duskloom.effects.looks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.IntStream;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.PlanCompiler;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.render.FramePainter;
import org.duskloom.engine.show.Show;
import org.duskloom.engine.show.ShowReader;

/**
 * Twelve daisies of 32 pixels, four across and three up, one metre apart, and what a cue shows on them at 100 frames a
 * second. Wired from the inner ring (8 pixels, radius 100) over the rim (16, radius 200) to the tips (8, radius 300), each
 * ring clockwise from the top. The rim has four arcs of four.
 */
final class DozenDaisies {
    static final int PROPS = 12;
    static final int PIXELS = 32;
    static final int INNER = 0;
    static final int RIM = 8;
    static final int TIPS = 24;
    private static final double SPACING = 1000;

    private final FramePainter painter;
    private final byte[] rgb = new byte[3 * PROPS * PIXELS];

    private DozenDaisies(Plan plan) {
        painter = new FramePainter(plan);
    }

    /** The daisies under one cue of ten seconds, written without its times. */
    static DozenDaisies under(String cue, Path folder) throws IOException {
        Files.writeString(folder.resolve("map.csv"), map());
        Files.writeString(folder.resolve("show.json"), """
                {"duskloom": "timeline/1", "map": "map.csv", "rate": 100, "length": "10s", "seed": 5,
                 "groups": {"daisies": ["daisy-*"], "odd": ["daisy-1", "daisy-3", "daisy-5"]},
                 "layers": [{"cues": [%s]}]}
                """.formatted(cue));
        Problems problems = new Problems();
        Show show = ShowReader.read(folder.resolve("show.json"), problems).orElse(null);
        assertThat(problems.inFileOrder()).isEmpty();
        Plan plan =
                PlanCompiler.compile(show, EffectRegistry.installed(), problems).orElse(null);
        assertThat(problems.inFileOrder()).isEmpty();
        return new DozenDaisies(plan);
    }

    /** Shows the instant at so many seconds. */
    DozenDaisies at(double seconds) {
        painter.render(Math.round(seconds * 100), rgb, 0);
        return this;
    }

    /** One channel of a pixel, 0 to 255; props and pixels count from 0, channels are red, green, blue. */
    int channel(int prop, int pixel, int channel) {
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

    /** The brightest pixel of a prop, or -1 if it is dark. */
    int brightest(int prop) {
        int best = IntStream.range(0, PIXELS)
                .reduce((a, b) -> light(prop, b) > light(prop, a) ? b : a)
                .orElseThrow();
        return light(prop, best) == 0 ? -1 : best;
    }

    /** How many pixels of a prop are lit, from one up to another. */
    long lit(int prop, int fromPixel, int toPixel) {
        return IntStream.range(fromPixel, toPixel)
                .filter(pixel -> light(prop, pixel) > 0)
                .count();
    }

    static double x(int prop, int pixel) {
        return prop % 4 * SPACING + radius(pixel) * StrictMath.sin(2 * Math.PI * turn(pixel));
    }

    static double y(int prop, int pixel) {
        return prop / 4 * SPACING + radius(pixel) * StrictMath.cos(2 * Math.PI * turn(pixel));
    }

    private static double radius(int pixel) {
        return pixel < RIM ? 100 : pixel < TIPS ? 200 : 300;
    }

    private static double turn(int pixel) {
        return pixel < RIM ? pixel / 8.0 : pixel < TIPS ? (pixel - RIM) / 16.0 : (pixel - TIPS) / 8.0;
    }

    private static String part(int pixel) {
        if (pixel < RIM) {
            return "inner";
        }
        return pixel < TIPS ? "rim;arcs/" + (1 + (pixel - RIM) / 4) : "tips";
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

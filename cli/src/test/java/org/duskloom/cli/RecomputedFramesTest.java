package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Frames are what demos/reference says: shows computed anew by that page, in doubles and without the program, differ
 * from its frames by at most one code. Edges that would fall between two pixels by rounding only are soft here, or lie
 * elsewhere.
 */
class RecomputedFramesTest {
    private static final int RATE = 9;
    private static final double LENGTH = 3;
    private static final double OPACITY = 0.85;
    private static final double FADE_IN = 0.7;
    private static final double FADE_OUT = 0.9;

    /** Pixels of three props: an uneven bow in space, a grid, a straight line that leans. */
    private static final double[][] PLACES = places();

    private static final int[] FIRST_OF_PROP = {0, 11, 31, 38};

    /** Two parts of each prop, legs/1 and legs/2, by the first pixel of each. */
    private static final int[] FIRST_OF_PART = {0, 5, 11, 18, 31, 34, 38};

    @TempDir
    private Path folder;

    static Stream<RecomputedShow> shows() {
        return RecomputedShow.all();
    }

    @ParameterizedTest
    @MethodSource("shows")
    void framesAreWhatThePageSays(RecomputedShow show) throws IOException {
        byte[] rendered = rendered(show);
        int frames = (int) (LENGTH * RATE);
        assertThat(rendered).hasSize(frames * PLACES.length * 3);
        boolean[] lit = new boolean[1];
        for (int frame = 0; frame < frames; frame++) {
            double[][] expected = frame(show, frame / (double) RATE);
            for (int pixel = 0; pixel < PLACES.length; pixel++) {
                for (int channel = 0; channel < 3; channel++) {
                    int code = rendered[(frame * PLACES.length + pixel) * 3 + channel] & 255;
                    assertThat(code)
                            .as("frame %d, pixel %d, channel %d", frame, pixel, channel)
                            .isCloseTo(RecomputedPalette.code(expected[pixel][channel]), within(1));
                    lit[0] |= code > 20;
                }
            }
        }
        assertThat(lit[0]).isTrue();
    }

    private byte[] rendered(RecomputedShow show) throws IOException {
        StringBuilder map = new StringBuilder("prop,pixel,x,y,z,part\n");
        for (int prop = 0; prop < 3; prop++) {
            for (int pixel = FIRST_OF_PROP[prop]; pixel < FIRST_OF_PROP[prop + 1]; pixel++) {
                map.append(String.format(
                        Locale.ROOT,
                        "p%d,%d,%s,%s,%s,legs/%d%n",
                        prop,
                        pixel - FIRST_OF_PROP[prop] + 1,
                        PLACES[pixel][0],
                        PLACES[pixel][1],
                        PLACES[pixel][2],
                        pixel < FIRST_OF_PART[2 * prop + 1] ? 1 : 2));
            }
        }
        Files.writeString(folder.resolve("map.csv"), map.toString());
        String with = show.settings().entrySet().stream()
                .map(entry -> "\"" + entry.getKey() + "\": "
                        + (entry.getValue() instanceof String text ? "\"" + text + "\"" : entry.getValue()))
                .collect(Collectors.joining(", "));
        String stagger = show.stagger().isEmpty()
                ? ""
                : "\"stagger\": {\"by\": \"" + show.stagger() + "\", \"time\": \"0.8s\"}, ";
        Path file = Files.writeString(folder.resolve("show.json"), """
                {"duskloom": "timeline/1", "map": "map.csv", "rate": %d, "length": "3s",
                 "palettes": {"smooth": {"stops": ["#1b2a6b", "#ff9e5e", "#fff1c1"], "mix": "linear"},
                              "steps": {"stops": ["#ff2040", "#20ff40", "#2040ff"], "step": true}},
                 "layers": [{"cues": [{"on": %s, "spread": "%s", "axes": "%s", "fit": "%s", "order": "%s", %s
                   "effect": "%s", "with": {%s}, "opacity": %s,
                   "fade": {"in": "%sms", "out": "%sms"}}]}]}
                """.formatted(
                        RATE,
                        show.onParts() ? "[\"p*/legs/*\"]" : "[\"p0\", \"p1\", \"p2\"]",
                        show.spread(),
                        show.axes(),
                        show.fit(),
                        show.order(),
                        stagger,
                        show.effect(),
                        with,
                        OPACITY,
                        Math.round(FADE_IN * 1000),
                        Math.round(FADE_OUT * 1000)));
        Path out = folder.resolve("out");
        Ran ran = Ran.with("render", file, "-o", out);
        assertThat(ran.code()).as(ran.err()).isZero();
        return Files.readAllBytes(out.resolve("frames.rgb"));
    }

    private static double[][] frame(RecomputedShow show, double seconds) {
        double[][] frame = new double[PLACES.length][3];
        for (int canvas = 0; canvas < (show.spread().equals("each") ? members(show).length : 1); canvas++) {
            RecomputedCanvas laid = canvas(show, canvas);
            double own = seconds - lag(show.stagger(), canvas, members(show));
            if (own < 0) {
                continue;
            }
            double level = OPACITY * Math.min(1, own / FADE_IN) * Math.min(1, (LENGTH - own) / FADE_OUT);
            double[][] light =
                    new RecomputedLight(show.settings(), show.palette(), laid, own, LENGTH).of(show.effect());
            for (int i = 0; i < light.length; i++) {
                for (int channel = 0; channel < 3; channel++) {
                    frame[laid.pixels()[i]][channel] = light[i][channel] * level;
                }
            }
        }
        return frame;
    }

    /** The pixels of each member. */
    private static int[][] members(RecomputedShow show) {
        int[] first = show.onParts() ? FIRST_OF_PART : FIRST_OF_PROP;
        return IntStream.range(0, first.length - 1)
                .mapToObj(m -> IntStream.range(first[m], first[m + 1]).toArray())
                .toArray(int[][]::new);
    }

    private static RecomputedCanvas canvas(RecomputedShow show, int number) {
        int[][] members = members(show);
        int[] pixels = show.spread().equals("each")
                ? members[number]
                : IntStream.range(0, PLACES.length).toArray();
        int[] member = IntStream.of(pixels)
                .map(p -> (int) Stream.of(members)
                        .filter(each -> each[each.length - 1] < p)
                        .count())
                .toArray();
        double[][] places = PLACES;
        if (show.axes().equals("outward")) {
            int[] prop = IntStream.range(FIRST_OF_PROP[number / 2], FIRST_OF_PROP[number / 2 + 1])
                    .toArray();
            places = RecomputedCanvas.turnedOutward(PLACES, prop, pixels);
        }
        RecomputedCanvas canvas = RecomputedCanvas.of(places, pixels, member, members.length, show.fit(), show.order());
        // Around goes by the axes of the stage, whatever the canvas is measured along.
        return show.order().equals("around")
                ? canvas.withPositionsOf(
                        RecomputedCanvas.of(PLACES, pixels, member, members.length, show.fit(), show.order()))
                : canvas;
    }

    /** By "stagger": the middles of the members' boxes, and the middle of the box round these. */
    private static double lag(String by, int member, int[][] members) {
        if (by.isEmpty()) {
            return 0;
        }
        if (by.equals("part") || by.equals("prop")) {
            return 0.8 * (by.equals("part") ? member % 2 : member / 2);
        }
        double[][] middles = new double[3][3];
        for (int m = 0; m < 3; m++) {
            middles[m] =
                    middle(IntStream.of(members[m]).mapToObj(p -> PLACES[p]).toList());
        }
        double[] all = middle(List.of(middles));
        double[] key = new double[3];
        for (int m = 0; m < 3; m++) {
            double x = middles[m][0] - all[0];
            double y = middles[m][1] - all[1];
            double away = Math.hypot(Math.hypot(x, y), middles[m][2] - all[2]);
            key[m] = switch (by) {
                case "members" -> m;
                case "right" -> x;
                case "left" -> -x;
                case "up" -> y;
                case "down" -> -y;
                case "outward" -> away;
                case "inward" -> -away;
                default -> RecomputedCanvas.clock(x, y, 1e-9);
            };
        }
        if (by.equals("members") || by.equals("clockwise")) {
            return 0.8 * key[member];
        }
        double low = Math.min(key[0], Math.min(key[1], key[2]));
        double high = Math.max(key[0], Math.max(key[1], key[2]));
        return 0.8 * Math.rint((key[member] - low) / (high - low) * 1e6) / 1e6;
    }

    private static double[] middle(List<double[]> places) {
        return IntStream.range(0, 3)
                .mapToDouble(axis -> {
                    double low = places.stream().mapToDouble(p -> p[axis]).min().orElseThrow();
                    double high =
                            places.stream().mapToDouble(p -> p[axis]).max().orElseThrow();
                    return (low + high) / 2;
                })
                .toArray();
    }

    private static double[][] places() {
        List<double[]> places = new ArrayList<>();
        for (int i = 0; i < 11; i++) {
            double angle = 0.3 + i * 0.31 + i * i * 0.007;
            places.add(new double[] {rounded(190 * Math.cos(angle)), rounded(140 * Math.sin(angle)), 7.5 * i});
        }
        for (int i = 0; i < 20; i++) {
            places.add(new double[] {400 + i % 5 * 30, 50 + i / 5 * 45, 0});
        }
        for (int i = 0; i < 7; i++) {
            places.add(new double[] {-300 + 11 * i, -90 + 23 * i, 20});
        }
        return places.toArray(double[][]::new);
    }

    private static double rounded(double value) {
        return Math.rint(value * 8) / 8;
    }
}

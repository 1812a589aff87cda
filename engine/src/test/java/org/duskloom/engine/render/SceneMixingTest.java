package org.duskloom.engine.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.assertj.core.data.Offset;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.PlannedCue;
import org.duskloom.engine.plan.TestShow;
import org.duskloom.engine.render.ReferencePainter.Light;
import org.duskloom.engine.render.ReferencePainter.Paint;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A scene is mixed by itself before it is mixed with what is under it: random scenes in scenes with blends, opacities,
 * fades and masks, some of them later than others, against the general formula of isolated groups (W3C Compositing and
 * Blending Level 1) in double precision, which never takes a scene apart. One code of difference is allowed where a
 * value lies between two.
 */
class SceneMixingTest {
    private static final int PIXELS = 40;
    private static final int PARTS = 5;
    private static final int FRAMES = 40;

    private final boolean[][] inPart = new boolean[PARTS][PIXELS];
    private final List<String> scenes = new ArrayList<>();
    private int groups;

    /** What is on a pixel: a light for each channel. Frames count from the start of what it stands in. */
    private interface Item {
        String json();

        /** It, mixed with what is under it. */
        Light[] over(Light[] under, int pixel, int frame);

        /** What its cues leave of a pixel, if so much of it is seen. */
        double hidden(int pixel, int frame, double opacity);
    }

    /** When a cue is seen, and how it comes and goes, in frames. */
    private record Span(int at, int length, int in, int out) {
        static Span random(Random random, int room) {
            if (random.nextInt(3) > 0) {
                return new Span(0, room, 0, 0);
            }
            int at = random.nextInt(room);
            int length = 1 + random.nextInt(room - at);
            int in = random.nextInt(length + 1);
            return new Span(at, length, in, random.nextInt(length - in + 1));
        }

        String json() {
            return "\"at\": \"%sf\", \"for\": \"%sf\", \"fade\": {\"in\": \"%sf\", \"out\": \"%sf\"}"
                    .formatted(at, length, in, out);
        }

        /** How much is seen, by the line of the page of meanings about fades. */
        double share(int frame) {
            int time = frame - at;
            if (time < 0 || time >= length) {
                return 0;
            }
            return time < in ? (double) time / in : length - time < out ? (double) (length - time) / out : 1;
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {71, 72, 73, 74, 75, 76, 77, 78})
    void isThatOfIsolatedGroups(long seed) {
        Random random = new Random(seed);
        PixelMap map = map(random);
        for (int show = 0; show < 25; show++) {
            scenes.clear();
            List<Item> items = items(random, 0, FRAMES);
            String json =
                    "\"scenes\": {" + String.join(", ", scenes) + "}, \"layers\": [{\"cues\": [" + json(items) + "]}]";
            Plan plan = TestShow.of(map, json).plan();
            groups += plan.layers().get(0).cues().stream()
                    .mapToInt(PlannedCue::groupCount)
                    .sum();
            for (int frame : new int[] {0, 1, 7, 19, 30, FRAMES - 1}) {
                assertMixed(plan, items, frame, json);
            }
        }
        assertThat(groups).isPositive();
    }

    private static void assertMixed(Plan plan, List<Item> items, int frame, String json) {
        byte[] rgb = Frames.frame(plan, frame);
        for (int pixel = 0; pixel < PIXELS; pixel++) {
            Light[] light = nothing();
            for (Item item : items) {
                light = item.over(light, pixel, frame);
            }
            int[] codes = Frames.codes(rgb, pixel);
            for (int channel = 0; channel < 3; channel++) {
                assertThat(codes[channel])
                        .as("frame %s, pixel %s, channel %s of %s", frame, pixel, channel, json)
                        .isCloseTo(Frames.code(Math.min(1, light[channel].value())), Offset.offset(1));
            }
        }
    }

    private List<Item> items(Random random, int depth, int room) {
        List<Item> items = new ArrayList<>();
        for (int i = 0; i < 1 + random.nextInt(3); i++) {
            items.add(depth < 3 && random.nextInt(2) == 0 ? scene(random, depth, room) : cue(random, room));
        }
        return items;
    }

    private Item cue(Random random, int room) {
        Span span = Span.random(random, room);
        Paint paint = Paint.random(random, PARTS);
        int part = paint.part().charAt(1) - '0';
        return new Item() {
            @Override
            public String json() {
                return "{" + span.json() + ", " + paint.json().substring(1);
            }

            @Override
            public Light[] over(Light[] under, int pixel, int frame) {
                Light[] all = new Light[3];
                for (int channel = 0; channel < 3; channel++) {
                    Light source = new Light(paint.rgb()[channel] * paint.alpha(), paint.alpha())
                            .times(paint.opacity() * span.share(frame));
                    all[channel] = inPart[part][pixel]
                            ? ReferencePainter.over(paint.blend(), under[channel], source)
                            : under[channel];
                }
                return all;
            }

            @Override
            public double hidden(int pixel, int frame, double opacity) {
                return inPart[part][pixel] ? 1 - paint.opacity() * span.share(frame) * opacity : 1;
            }
        };
    }

    /** A layer in a scene. */
    private record Sheet(String blend, double opacity, boolean mask, List<Item> items) {
        String json() {
            String kind = mask ? "\"mask\": true" : "\"blend\": \"" + blend + "\"";
            return "{%s, \"opacity\": %s, \"cues\": [%s]}".formatted(kind, opacity, SceneMixingTest.json(items));
        }
    }

    private Item scene(Random random, int depth, int room) {
        Span span = Span.random(random, room);
        int length = random.nextInt(3) > 0 ? span.length() : 1 + random.nextInt(FRAMES);
        List<Sheet> sheets = new ArrayList<>();
        for (int i = 0; i < 1 + random.nextInt(3); i++) {
            boolean mask = i > 0 && random.nextInt(3) == 0;
            sheets.add(new Sheet(blend(random), opacity(random), mask, items(random, depth + 1, length)));
        }
        String name = "s" + scenes.size();
        scenes.add("\"" + name + "\": {\"length\": \"" + length + "f\", \"layers\": ["
                + sheets.stream().map(Sheet::json).collect(Collectors.joining(", ")) + "]}");
        String blend = blend(random);
        double opacity = opacity(random);
        return new Item() {
            @Override
            public String json() {
                return "{%s, \"scene\": \"%s\", \"blend\": \"%s\", \"opacity\": %s}"
                        .formatted(span.json(), name, blend, opacity);
            }

            @Override
            public Light[] over(Light[] under, int pixel, int frame) {
                if (!isPlayed(frame)) {
                    return under;
                }
                Light[] whole = nothing();
                for (Sheet sheet : sheets) {
                    whole = painted(sheet, whole, pixel, frame - span.at());
                }
                return mixed(blend, under, whole, opacity * span.share(frame));
            }

            private boolean isPlayed(int frame) {
                return frame >= span.at() && frame < span.at() + Math.min(length, span.length());
            }

            @Override
            public double hidden(int pixel, int frame, double outer) {
                if (!isPlayed(frame)) {
                    return 1;
                }
                double share = outer * opacity * span.share(frame);
                double hidden = 1;
                for (Sheet sheet : sheets) {
                    for (Item item : sheet.items()) {
                        hidden *= item.hidden(pixel, frame - span.at(), share * sheet.opacity());
                    }
                }
                return hidden;
            }
        };
    }

    private static Light[] painted(Sheet sheet, Light[] under, int pixel, int frame) {
        Light[] group = nothing();
        double hidden = 1;
        for (Item item : sheet.items()) {
            group = item.over(group, pixel, frame);
            hidden *= item.hidden(pixel, frame, 1);
        }
        if (!sheet.mask()) {
            return mixed(sheet.blend(), under, group, sheet.opacity());
        }
        double luminance = 0.2126 * group[0].value() + 0.7152 * group[1].value() + 0.0722 * group[2].value();
        double left = Math.min(1, 1 - sheet.opacity() * (1 - hidden - luminance));
        return new Light[] {under[0].times(left), under[1].times(left), under[2].times(left)};
    }

    private static Light[] mixed(String blend, Light[] under, Light[] group, double opacity) {
        Light[] all = new Light[3];
        for (int channel = 0; channel < 3; channel++) {
            all[channel] = ReferencePainter.over(blend, under[channel], group[channel].times(opacity));
        }
        return all;
    }

    private static Light[] nothing() {
        return new Light[] {Light.NONE, Light.NONE, Light.NONE};
    }

    private static String blend(Random random) {
        return random.nextInt(3) > 0 ? "normal" : ReferencePainter.mode(random);
    }

    private static double opacity(Random random) {
        return random.nextInt(3) > 0 ? 1 : random.nextDouble();
    }

    private PixelMap map(Random random) {
        StringBuilder csv = new StringBuilder("prop,pixel,x,y,part\n");
        for (int pixel = 0; pixel < PIXELS; pixel++) {
            List<String> parts = new ArrayList<>();
            for (int part = 0; part < PARTS; part++) {
                inPart[part][pixel] = pixel == part || random.nextInt(2 + part) == 0;
                if (inPart[part][pixel]) {
                    parts.add("p" + part);
                }
            }
            csv.append("a,").append(pixel + 1).append(',').append(pixel).append(",0,");
            csv.append(String.join(";", parts)).append('\n');
        }
        return Maps.map(csv.toString());
    }

    private static String json(List<Item> items) {
        return items.stream().map(Item::json).collect(Collectors.joining(",\n"));
    }
}

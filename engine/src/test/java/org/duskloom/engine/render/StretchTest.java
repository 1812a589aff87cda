package org.duskloom.engine.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.duskloom.engine.effect.Patch;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.TestShow;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A stretch of the pixels of a frame has the very bytes that it has in the whole. */
class StretchTest {
    private static final int TILE = Patch.CAPACITY;
    private static final int PIXELS = 2 * TILE + 700;
    private static final String[] BLENDS = {
        "normal", "screen", "lighten", "multiply", "overlay", "soft-light", "plus-lighter"
    };

    /** Layers of cues, some of them masks, that lie on runs, on scattered pixels, here and there. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void hasTheBytesOfTheWhole(long seed) throws IOException {
        Random random = new Random(seed);
        for (int show = 0; show < 3; show++) {
            Plan plan = TestShow.of(map(random), "\"layers\": [" + layers(random) + "]")
                    .plan();
            FrameRenderer renderer = new FrameRenderer(plan);
            byte[] whole = new byte[3 * PIXELS];
            for (int stretch = 0; stretch < 12; stretch++) {
                int from = random.nextInt(PIXELS);
                int to = from + 1 + random.nextInt(PIXELS - from);
                FrameReader some = renderer.reader(from, to);
                for (int i = 0; i < 3; i++) {
                    long frame = random.nextInt(400);
                    renderer.reader().read(frame, whole, 0);
                    assertThat(read(some, frame, to - from))
                            .as("pixels %s..%s of frame %s", from, to, frame)
                            .isEqualTo(Arrays.copyOfRange(whole, 3 * from, 3 * to));
                }
            }
        }
    }

    /** The edges of tiles, and single pixels. */
    @Test
    void mayBeginAndEndAnywhere() throws IOException {
        Plan plan = TestShow.of(map(new Random(7)), "\"layers\": [" + layers(new Random(7)) + "]")
                .plan();
        FrameRenderer renderer = new FrameRenderer(plan);
        byte[] whole = new byte[3 * PIXELS];
        renderer.reader().read(11, whole, 0);
        int[] edges = {0, 1, TILE - 1, TILE, TILE + 1, 2 * TILE, PIXELS - 1, PIXELS};
        for (int from = 0; from < edges.length; from++) {
            for (int to = from + 1; to < edges.length; to++) {
                assertThat(read(renderer.reader(edges[from], edges[to]), 11, edges[to] - edges[from]))
                        .isEqualTo(Arrays.copyOfRange(whole, 3 * edges[from], 3 * edges[to]));
            }
        }
    }

    /**
     * Where a layer has cues elsewhere, it is a group for all pixels: the last bits are not those of a cue that goes
     * straight to the stage. Of 0.235 * 0.89 * 0.89, in floats, the order of the factors decides about the code.
     */
    @Test
    void mixesALayerAsIfAllOfItWereThere() throws IOException {
        String one = cue("line/first", "light", ", \"with\": {\"r\": 0.235}, \"opacity\": 0.89");
        int together = firstCode(layer(one, cue("line/last", "light", "")).reader());

        assertThat(firstCode(layer(one).reader())).isNotEqualTo(together);
        assertThat(read(layer(one, cue("line/last", "light", "")).reader(0, 1), 0, 1)[0])
                .isEqualTo((byte) together);
    }

    private static FrameRenderer layer(String... cues) {
        String layers = "\"layers\": [{\"opacity\": 0.89, \"cues\": [" + String.join(", ", cues) + "]}]";
        return new FrameRenderer(TestShow.of(map(new Random(1)), layers).plan());
    }

    private static int firstCode(FrameReader whole) throws IOException {
        return read(whole, 0, PIXELS)[0];
    }

    /** What is not asked for costs nothing: of two cues on thousands of pixels each, one is painted on ten. */
    @Test
    void paintsNoOtherPixels() throws IOException {
        Plan plan = TestShow.of(map(new Random(1)), "\"layers\": [{\"cues\": [" + cue("line", "weave", "") + "]}]")
                .plan();
        FramePainter painter = new FramePainter(plan);
        painter.keepTo(CueExtent.between(TILE - 5, TILE + 5, PIXELS));
        painter.render(0, new byte[3 * PIXELS], 0);
        assertThat(painter.work()).isBetween(20L, 400L);
    }

    /** Nothing before and nothing behind its place is touched. */
    private static byte[] read(FrameReader reader, long frame, int pixels) throws IOException {
        byte[] rgb = new byte[3 * pixels + 2];
        reader.read(frame, rgb, 1);
        assertThat(rgb[0]).isZero();
        assertThat(rgb[rgb.length - 1]).isZero();
        return Arrays.copyOfRange(rgb, 1, rgb.length - 1);
    }

    private static PixelMap map(Random random) {
        StringBuilder csv = new StringBuilder("prop,pixel,x,y,part\n");
        int runFrom = random.nextInt(PIXELS);
        int runTo = runFrom + random.nextInt(PIXELS - runFrom);
        for (int pixel = 0; pixel < PIXELS; pixel++) {
            List<String> parts = new ArrayList<>();
            parts.add(pixel < 300 ? "first" : pixel >= PIXELS - 900 ? "last" : "middle");
            if (pixel % 7 < 3) {
                parts.add("runs");
            }
            if (pixel == 9 || random.nextInt(40) == 0) {
                parts.add("scattered");
            }
            if (pixel == 8 || pixel >= runFrom && pixel < runTo) {
                parts.add("run");
            }
            csv.append("line,").append(pixel + 1).append(',').append(pixel).append(",0,");
            csv.append(String.join(";", parts)).append('\n');
        }
        return Maps.map(csv.toString());
    }

    private static String layers(Random random) {
        List<String> layers = new ArrayList<>();
        for (int i = 0; i < 1 + random.nextInt(4); i++) {
            List<String> cues = new ArrayList<>();
            for (int cue = 0; cue < 1 + random.nextInt(5); cue++) {
                String[] on = {"line", "first", "last", "middle", "runs", "scattered", "run"};
                String part = on[random.nextInt(on.length)];
                cues.add(cue(
                        part.equals("line") ? part : "line/" + part,
                        "weave",
                        ", \"name\": \"c" + i + cue + "\", \"at\": \"" + random.nextInt(5) + "s\", \"opacity\": 0."
                                + (1 + random.nextInt(9)) + ", \"blend\": \"" + BLENDS[random.nextInt(BLENDS.length)]
                                + '"'));
            }
            boolean mask = i > 0 && random.nextInt(4) == 0;
            layers.add("{\"opacity\": 0." + (1 + random.nextInt(9)) + ", "
                    + (mask ? "\"mask\": true" : "\"blend\": \"" + BLENDS[random.nextInt(BLENDS.length)] + '"')
                    + ", \"cues\": [" + String.join(",\n", cues) + "]}");
        }
        return String.join(",\n", layers);
    }

    private static String cue(String on, String effect, String more) {
        return "{\"on\": \"" + on + "\", \"effect\": \"" + effect + '"' + more + "}";
    }
}

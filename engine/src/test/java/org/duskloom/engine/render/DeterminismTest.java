package org.duskloom.engine.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FrameRun;
import org.duskloom.engine.frame.Progress;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.TestShow;
import org.duskloom.engine.time.FrameSpan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The bytes of a frame depend on the input files and its number. */
class DeterminismTest {
    private static final String LAYERS = """
            "groups": {"daisies": ["daisy-*"], "rims": ["daisy-*/rim"]},
            "layers": [{"cues": [
               {"on": "*", "effect": "weave"},
               {"on": "rims", "effect": "rank", "at": "500ms", "for": "3s", "spread": "each", "stagger": "70ms",
                "order": "clockwise", "blend": "hard-light", "fade": {"in": "1s", "out": "1s", "easing": "ease-in"}},
               {"on": ["daisies", "rims"], "effect": "weave", "spread": "each", "opacity": 0.4, "fit": "stretch"}]},
             {"blend": "color-dodge", "opacity": 0.5, "cues": [
               {"on": "daisies", "effect": "rank", "order": "members", "for": "400ms", "repeat": {"until": "8s", "every": "1s"}}]},
             {"mask": true, "opacity": 0.6, "cues": [{"on": "*", "effect": "place", "order": "outward"}]}]""";

    private static final List<String> ROWS = rows();
    private static final PixelMap MAP = map(ROWS);
    private static final Plan PLAN = TestShow.of(MAP, LAYERS).plan();
    private static final List<byte[]> ALONE = LongStream.range(0, PLAN.frameCount())
            .mapToObj(frame -> Frames.frame(PLAN, frame))
            .toList();

    @Test
    void isNotTheSameAllTheTime() {
        assertThat(ALONE.stream().map(Arrays::hashCode).distinct().count()).isGreaterThan(300);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 9})
    void isTheSameOnAnyNumberOfThreads(int threads) throws Exception {
        Frames.Kept kept = rendered(FrameList.of(new FrameSpan(0, PLAN.frameCount())), threads);
        assertThat(kept.numbers)
                .isEqualTo(LongStream.range(0, PLAN.frameCount()).boxed().toList());
        for (int frame = 0; frame < ALONE.size(); frame++) {
            assertThat(kept.frames.get(frame)).as("frame %s", frame).isEqualTo(ALONE.get(frame));
        }
    }

    /** Shards of any size, and single frames, cut the work into other chunks. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 5, 33, 399})
    void isTheSameInShardsOfAnySize(long size) throws Exception {
        for (long first = 0; first < PLAN.frameCount(); first += Math.max(size, 40)) {
            long end = Math.min(PLAN.frameCount(), first + size);
            Frames.Kept kept = rendered(FrameList.of(new FrameSpan(first, end)), 2);
            assertThat(kept.numbers).hasSize((int) (end - first));
            for (int i = 0; i < kept.frames.size(); i++) {
                assertThat(kept.frames.get(i)).isEqualTo(ALONE.get((int) first + i));
            }
        }
    }

    @Test
    void isTheSameForSingleFramesFarApart() throws Exception {
        long[] frames = {0, 1, 19, 20, 21, 64, 170, 399};
        Frames.Kept kept = rendered(FrameList.of(frames), 3);
        assertThat(kept.numbers).isEqualTo(Arrays.stream(frames).boxed().toList());
        for (int i = 0; i < frames.length; i++) {
            assertThat(kept.frames.get(i)).isEqualTo(ALONE.get((int) frames[i]));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {71, 72})
    void isTheSameInAnyOrder(long seed) {
        List<Long> order =
                new ArrayList<>(LongStream.range(0, PLAN.frameCount()).boxed().toList());
        Collections.reverse(order);
        FramePainter painter = new FramePainter(PLAN);
        byte[] rgb = new byte[3 * PLAN.pixelCount()];
        for (int turn = 0; turn < 2; turn++) {
            for (long frame : order) {
                painter.render(frame, rgb, 0);
                assertThat(rgb).as("frame %s", frame).isEqualTo(ALONE.get((int) frame));
            }
            Collections.shuffle(order, new Random(seed));
        }
    }

    @Test
    void isTheSameWhereverItIsPutInABuffer() {
        byte[] rgb = new byte[3 * PLAN.pixelCount() + 20];
        Arrays.fill(rgb, (byte) 77);
        new FramePainter(PLAN).render(100, rgb, 13);
        assertThat(Arrays.copyOfRange(rgb, 13, rgb.length - 7)).isEqualTo(ALONE.get(100));
        assertThat(Arrays.copyOf(rgb, 13)).containsOnly(77);
        assertThat(Arrays.copyOfRange(rgb, rgb.length - 7, rgb.length)).containsOnly(77);
    }

    @Test
    void isTheSameForAPlanThatIsCompiledAgain() {
        Plan again = TestShow.of(map(ROWS), LAYERS).plan();
        for (int frame = 0; frame < ALONE.size(); frame += 7) {
            assertThat(Frames.frame(again, frame)).isEqualTo(ALONE.get(frame));
        }
    }

    /** The order of the rows decides the order of the bytes, but not one of them. */
    @ParameterizedTest
    @ValueSource(longs = {81, 82, 83})
    void isTheSamePixelByPixelForAShuffledMap(long seed) {
        List<String> shuffled = new ArrayList<>(ROWS);
        Collections.shuffle(shuffled, new Random(seed));
        PixelMap map = map(shuffled);
        assertThat(map.props())
                .extracting(Prop::name)
                .isNotEqualTo(MAP.props().stream().map(Prop::name).toList());
        Plan plan = TestShow.of(map, LAYERS).plan();
        for (int frame = 0; frame < ALONE.size(); frame += 13) {
            byte[] rgb = Frames.frame(plan, frame);
            for (Prop prop : MAP.props()) {
                int there = map.prop(prop.name()).orElseThrow().firstPixel();
                for (int i = 0; i < prop.pixelCount(); i++) {
                    assertThat(Frames.codes(rgb, there + i))
                            .as("frame %s, %s %s", frame, prop.name(), i + 1)
                            .isEqualTo(Frames.codes(ALONE.get(frame), prop.firstPixel() + i));
                }
            }
        }
    }

    private static Frames.Kept rendered(FrameList frames, int threads) throws IOException, InterruptedException {
        Frames.Kept kept = new Frames.Kept();
        new FrameRun(new FrameRenderer(PLAN), frames, threads).into(kept, Progress.SILENT);
        return kept;
    }

    private static PixelMap map(List<String> rows) {
        return Maps.map("prop,pixel,x,y,part\n" + String.join("\n", rows) + "\n");
    }

    /** Twelve daisies of a middle and a rim, and a fence. */
    private static List<String> rows() {
        List<String> rows = new ArrayList<>();
        for (int daisy = 1; daisy <= 12; daisy++) {
            rows.add("daisy-%d,1,%d,%d,eye".formatted(daisy, 40 * daisy, daisy % 3));
            for (int i = 0; i < 16; i++) {
                double angle = StrictMath.toRadians(22.5 * i);
                double x = 40 * daisy + 10 * StrictMath.cos(angle);
                double y = daisy % 3 + 10 * StrictMath.sin(angle);
                rows.add("daisy-%d,%d,%s,%s,rim".formatted(daisy, i + 2, x, y));
            }
        }
        for (int i = 0; i < 60; i++) {
            rows.add("fence,%d,%d,%d,".formatted(i + 1, 9 * i, -40 - i % 2));
        }
        return List.copyOf(rows);
    }
}

package org.duskloom.engine.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.function.IntPredicate;
import java.util.stream.Stream;
import org.duskloom.engine.effect.Patch;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.TestShow;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The stage is cut into tiles; nobody must see where. */
class TileTest {
    private static final int TILE = Patch.CAPACITY;
    private static final int PIXELS = 2 * TILE + 900;

    /** Which pixels of a line a cue paints. */
    static Stream<Arguments> selections() {
        return Stream.of(
                selection("all of them", i -> true),
                selection("one run across a tile's edge", i -> i >= TILE - 5 && i < TILE + 5),
                selection("runs", i -> i % 7 < 3),
                selection("every other one", i -> i % 2 == 1),
                selection("the last of each tile", i -> i % TILE == TILE - 1),
                selection("the first of each tile", i -> i % TILE == 0),
                selection("one", i -> i == TILE + 17),
                selection("none of the middle tile", i -> i < 100 || i >= 2 * TILE + 100),
                selection("one run and single ones", i -> i < TILE / 2 || i % 31 == 0));
    }

    private static Arguments selection(String name, IntPredicate painted) {
        return Arguments.of(name, painted);
    }

    /** Red is (x + 1) / 2 on a canvas from -1 to 1, so its light is the pixel's place in the selection's range. */
    @ParameterizedTest
    @MethodSource("selections")
    void paintsEachPixelOfACanvasInItsPlace(String name, IntPredicate painted) {
        PixelMap map = line("line", PIXELS, painted, "some");
        int first = first(painted);
        int last = last(painted);
        for (String more : new String[] {"", ", " + cue("line/some", "\"a\": 0")}) {
            Plan plan = TestShow.of(
                            map,
                            "\"layers\": [{\"cues\": [{\"on\": \"line/some\", \"effect\": \"place\"}" + more + "]}]")
                    .plan();
            byte[] frame = Frames.frame(plan, 0);
            for (int pixel = 0; pixel < PIXELS; pixel++) {
                double share = last == first ? 0.5 : (float) ((double) (pixel - first) / (last - first));
                int expected = painted.test(pixel) ? Frames.code(share) : 0;
                assertThat(Frames.codes(frame, pixel)[0])
                        .as("pixel %s of %s", pixel, name)
                        .isEqualTo(expected);
            }
        }
    }

    /** What lies before it on the wire does not change a prop. */
    @ParameterizedTest
    @ValueSource(ints = {1, 100, TILE - 1, TILE, TILE + 1, 2 * TILE - 450, 3 * TILE})
    void isTheSameWhereverAPropLiesOnTheWire(int before) {
        String cues = """
                "layers": [{"cues": [
                  {"on": "line", "effect": "weave", "name": "a"},
                  {"on": "line/some", "effect": "weave", "name": "b", "blend": "overlay", "opacity": 0.7}]},
                 {"blend": "soft-light", "cues": [{"on": "line/some", "effect": "weave", "name": "c"}]},
                 {"mask": true, "opacity": 0.3, "cues": [{"on": "line", "effect": "weave", "name": "d"}]}]""";
        PixelMap alone = line("line", 900, i -> i % 5 < 2, "some");
        StringBuilder csv = new StringBuilder(csv("before", before, i -> false, ""));
        csv.append(csv("line", 900, i -> i % 5 < 2, "some").substring("prop,pixel,x,y,part\n".length()));
        PixelMap behind = Maps.map(csv.toString());
        for (long frame : new long[] {0, 7, 123}) {
            byte[] expected = Frames.frame(TestShow.of(alone, cues).plan(), frame);
            byte[] actual = Frames.frame(TestShow.of(behind, cues).plan(), frame);
            assertThat(Arrays.copyOfRange(actual, 3 * before, actual.length)).isEqualTo(expected);
        }
    }

    @Test
    void leavesWhatACueDoesNotReachAsItWas() {
        PixelMap map = line("line", PIXELS, i -> i % 3 == 0, "some");
        String ground = "{\"cues\": [{\"on\": \"line\", \"effect\": \"weave\"}]}";
        byte[] before =
                Frames.frame(TestShow.of(map, "\"layers\": [" + ground + "]").plan(), 5);
        for (String mode : ReferencePainter.MODES) {
            Plan plan = TestShow.of(
                            map,
                            "\"layers\": [" + ground + ", {\"blend\": \"" + mode + "\", \"opacity\": 0.9, \"cues\": ["
                                    + cue("line/some", "\"a\": 0.7") + ", " + cue("line/some", "\"a\": 0.2") + "]}]")
                    .plan();
            byte[] after = Frames.frame(plan, 5);
            for (int pixel = 0; pixel < PIXELS; pixel++) {
                if (pixel % 3 != 0) {
                    assertThat(Frames.codes(after, pixel)).isEqualTo(Frames.codes(before, pixel));
                }
            }
        }
    }

    private static String cue(String on, String with) {
        return "{\"on\": \"" + on + "\", \"effect\": \"light\", \"with\": {" + with + "}}";
    }

    private static PixelMap line(String name, int count, IntPredicate inPart, String part) {
        return Maps.map(csv(name, count, inPart, part));
    }

    private static String csv(String name, int count, IntPredicate inPart, String part) {
        StringBuilder csv = new StringBuilder("prop,pixel,x,y,part\n");
        for (int i = 0; i < count; i++) {
            csv.append(name)
                    .append(',')
                    .append(i + 1)
                    .append(',')
                    .append(i)
                    .append(',')
                    .append(i % 13);
            csv.append(',').append(inPart.test(i) ? part : "").append('\n');
        }
        return csv.toString();
    }

    private static int first(IntPredicate painted) {
        int i = 0;
        while (!painted.test(i)) {
            i++;
        }
        return i;
    }

    private static int last(IntPredicate painted) {
        int i = PIXELS - 1;
        while (!painted.test(i)) {
            i--;
        }
        return i;
    }
}

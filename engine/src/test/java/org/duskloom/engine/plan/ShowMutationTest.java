package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever the timeline, compiling ends with a plan or with errors, never with an exception. */
class ShowMutationTest {
    private static final PixelMap MAP =
            Maps.map("prop,pixel,x,y,part\na,1,0,0,r/s\na,2,1,0,r\nb,1,2,0,\nb,2,3,7,\nb,3,3,7,\n");
    private static final String SOUND = """
            {"duskloom": "timeline/1", "map": "m.csv", "rate": "30000/1001", "length": "9s", "seed": 7,
             "groups": {"g": ["a/r", "b"]},
             "palettes": {"p": ["red", ["gold", 0.5], "blue"], "q": {"stops": ["red"], "cyclic": true}},
             "looks": {"l": {"effect": "probe", "with": {"palette": "p", "size": {"keys": [["0s", 0.2], ["1s", 1, "ease"]]}}}},
             "layers": [{"name": "n", "blend": "screen", "opacity": 0.5, "cues": [
               {"at": "1s", "for": "90f", "on": ["g", "*"], "look": "l", "spread": "each", "stagger": "80ms",
                "repeat": {"count": 2, "every": "1.5s", "change": {"arms": [1, 2]}}},
               {"on": "a/r", "effect": "probe", "order": "clockwise", "fit": "stretch", "fade": {"in": "1s", "out": "2s"},
                "with": {"color": {"keys": [["0s", "red"], ["2s", "#12f"]], "mix": "oklch"}, "every": "0:01.5", "arms": 3}},
               {"on": "b", "effect": "probe", "axes": "own", "spread": "each", "until": "0:08", "name": "z",
                "stagger": {"by": "outward", "time": "1s"}, "opacity": 0.3, "blend": "multiply", "with": {"palette": "q"}}]},
              {"mask": true, "cues": []}]}""";
    private static final String SPICE = "0123456789.-e\"\",,:[]{}{}sfabpqn/*@ ";

    @ParameterizedTest
    @ValueSource(longs = {51, 52, 53, 54})
    void survivesMutations(long seed) {
        assertThat(problems(SOUND)).isZero();
        Random random = new Random(seed);
        int sound = 0;
        for (int round = 0; round < 3_000; round++) {
            sound += problems(mutated(1 + random.nextInt(3), random)) == 0 ? 1 : 0;
        }
        // Most slips are found, but not everything is a mistake: another digit may be right too.
        assertThat(sound).isBetween(50, 1_500);
    }

    private static int problems(String timeline) {
        return (int) new TestShow(MAP, timeline, null)
                .with(new Probe()).problems().stream()
                        .filter(line -> line.contains(": error: "))
                        .count();
    }

    private static String mutated(int times, Random random) {
        StringBuilder text = new StringBuilder(SOUND);
        for (int i = 0; i < times; i++) {
            int at = random.nextInt(text.length());
            switch (random.nextInt(4)) {
                case 0 -> text.deleteCharAt(at);
                case 1 -> text.insert(at, SPICE.charAt(random.nextInt(SPICE.length())));
                case 2 -> text.insert(at, text.substring(at, Math.min(text.length(), at + random.nextInt(30))));
                default -> text.setCharAt(at, SPICE.charAt(random.nextInt(SPICE.length())));
            }
        }
        return text.toString();
    }
}

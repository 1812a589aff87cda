package org.duskloom.engine.display;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.duskloom.engine.problem.Problem;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever the text, reading ends with a display or with errors at places in a file, never with an exception. */
class DisplayMutationTest {
    private static final String SOUND = """
            {"duskloom": "display/1", "units": "cm", "shapes": {
              "a": {"build": [
                {"ring": {"count": 4, "radius": 9, "start": 90, "direction": "clockwise", "centre": [1, 2, 3]}, "part": "r"},
                {"arc": {"count": 3, "radius": 9, "from": 10, "to": 80}},
                {"line": {"from": [0, 0], "to": [4, 4], "count": 2}, "part": "l/1"},
                {"polyline": {"points": [[0, 0], [3, 0], [3, 4]], "spacing": 2, "closed": true}},
                {"grid": {"rows": 2, "columns": 3, "spacing": [5, 6], "corner": "top-left", "path": "serpentine"}, "part": "g"},
                {"spokes": {"count": 3, "pixels": 2, "from": 4, "to": 8}, "part": "g"},
                {"helix": {"count": 9, "radius": [5, 2], "height": 7, "turns": 2.5}, "part": "h"},
                {"points": [[0, 0], [1, 1, 1]]}],
               "parts": {"x": "1-3, 9", "g/odd": ["g/1", "g/3"], "y": ["x", "h"]}},
              "b": {"pixels": "b.csv"}},
             "props": [{"name": "p1", "shape": "a", "at": [5, 6], "turn": 90, "mirror": "x", "scale": 2},
               {"name": "p2", "shape": "b", "at": [5, 6, 7], "tilt": 5, "yaw": 6, "reverse": true}],
             "groups": {"all": ["p*"], "xs": {"all": "all/x", "except": "p1/l"}}}
            """;
    private static final Pattern TOKEN = Pattern.compile("\"[^\"]*\"|-?[0-9][0-9.]*|true");
    private static final List<String> SPICE = List.of(
            "0",
            "1",
            "-",
            "9",
            "99999999",
            "e9",
            ".",
            "\"",
            ",",
            "[",
            "]",
            "{",
            "}",
            ":",
            "/",
            "x",
            "g",
            "p1",
            "null",
            "true",
            "\"a\"",
            "\"part\":",
            "\"count\":",
            "\u0000",
            " ",
            "\n",
            "*");

    @ParameterizedTest
    @ValueSource(longs = {41, 42, 43, 44})
    void survivesMutations(long seed) {
        Random random = new Random(seed);
        int sound = 0;
        for (int round = 0; round < 400; round++) {
            Problems problems = new Problems();
            Map<String, String> files = Map.of("b.csv", "pixel,x,y,part\n1,0,0,q\n2,1,1,q\n");
            Optional<Display> display = Displays.read(mutated(random), files, problems);
            assertThat(display.isPresent()).isNotEqualTo(problems.hasErrors());
            display.ifPresent(found -> DisplayChecks.warn(found, problems));
            for (Problem problem : problems.inFileOrder()) {
                assertThat(problem.location().line()).isPositive();
                assertThat(problem.toString()).doesNotContain("\n", "\r", "\0");
            }
            sound += display.isPresent() ? 1 : 0;
        }
        assertThat(sound).isBetween(15, 385);
    }

    private static String mutated(Random random) {
        StringBuilder text = new StringBuilder(SOUND);
        for (int times = 1 + random.nextInt(2); times > 0; times--) {
            List<MatchResult> tokens = TOKEN.matcher(text).results().toList();
            MatchResult hit = tokens.get(random.nextInt(tokens.size()));
            if (random.nextInt(4) == 0) {
                String spice = SPICE.get(random.nextInt(SPICE.size()));
                text.replace(
                        hit.start(), hit.start() + random.nextInt(hit.group().length() + 1), spice);
            } else {
                String other = tokens.get(random.nextInt(tokens.size())).group();
                text.replace(hit.start(), hit.end(), random.nextBoolean() ? other : otherNumber(random));
            }
        }
        return text.toString();
    }

    private static String otherNumber(Random random) {
        return switch (random.nextInt(4)) {
            case 0 -> String.valueOf(random.nextInt(20) - 5);
            case 1 -> String.valueOf(random.nextInt());
            case 2 -> String.valueOf(random.nextDouble());
            default -> random.nextInt(10) + "e" + random.nextInt(12);
        };
    }
}

package org.duskloom.engine.display;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.duskloom.engine.meter.PowerMeter;
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
    private static final String POWERED = """
            {"duskloom": "display/1", "units": "m", "shapes": {"a": {"build": [{"line": {"from": [0, 0], "to": [4, 4], "count": 9}}]}},
             "props": [{"name": "p", "shape": "a", "at": [5, 6]}, {"name": "q", "shape": "a", "at": [5, 6, 7]}],
             "kinds": {"k": {"volts": 12, "milliamps": [13, 0, 9], "idle": 1, "least": 11, "kilobits": 400, "reset": "50us"},
               "w": {"volts": 12, "milliamps": [13, 14, 9, 20]}},
             "ports": [{"name": "l", "chain": [{"skip": 2}, "p", {"skip": 1}], "kind": "k", "line": {"awg": 20}, "cap": 0.5},
               {"name": "r", "chain": ["q"], "kind": "w", "colors": "GRBW", "line": {"mm2": 0.5, "pitch": 2}, "curve": {"gamma": 2}}],
             "supplies": [{"name": "s", "volts": 12, "amps": 9, "share": 0.7, "feeds": [
               {"port": "l", "at": [1, 9], "lead": {"awg": 18, "length": 3}}, {"port": "r"}, {"port": "r", "at": [5]}]}]}
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
            Optional<Display> display = Displays.read(mutated(SOUND, random), files, problems);
            assertThat(display.isPresent()).isNotEqualTo(problems.hasErrors());
            display.ifPresent(found -> DisplayChecks.warn(found, problems));
            checkPlaces(problems);
            sound += display.isPresent() ? 1 : 0;
        }
        assertThat(sound).isBetween(15, 385);
    }

    /** What feeds the lights is sound or refused; of whatever is sound, currents and voltages can be measured. */
    @ParameterizedTest
    @ValueSource(longs = {51, 52, 53, 54})
    void survivesMutationsOfWhatFeedsIt(long seed) {
        Random random = new Random(seed);
        int sound = 0;
        for (int round = 0; round < 400; round++) {
            Problems problems = new Problems();
            Optional<Display> display = Displays.read(mutated(POWERED, random), Map.of(), problems);
            assertThat(display.isPresent()).isNotEqualTo(problems.hasErrors());
            checkPlaces(problems);
            display.ifPresent(found -> {
                PowerMeter meter = new PowerMeter(found.ports(), 20);
                meter.full(0);
                assertThat(meter.figures().supplies())
                        .allSatisfy(supply -> assertThat(supply.amps().peak()).isFinite());
                assertThat(meter.figures().ports())
                        .flatExtracting(port -> port.volts().stream().toList())
                        .allSatisfy(volts -> assertThat(volts.leastByPixel())
                                .as("%s", display)
                                .doesNotContain(Double.NaN, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY));
            });
            sound += display.isPresent() ? 1 : 0;
        }
        assertThat(sound).isBetween(15, 385);
    }

    private static void checkPlaces(Problems problems) {
        for (Problem problem : problems.inFileOrder()) {
            assertThat(problem.location().line()).isPositive();
            assertThat(problem.toString()).doesNotContain("\n", "\r", "\0");
        }
    }

    private static String mutated(String sound, Random random) {
        StringBuilder text = new StringBuilder(sound);
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

package org.duskloom.engine.display;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** From where on a slip is told, and how many at the most. The limits are common practice, no source. */
class DisplayLimitsTest {
    private static final String RING = "\"ring\": {\"build\": [{\"ring\": {\"count\": 12, \"radius\": 90}}]}";

    private static List<String> warnings(String json) {
        Problems problems = new Problems();
        DisplayChecks.warn(Displays.display(json, Map.of()), problems);
        return Inputs.shown(problems).stream()
                .map(line -> line.replaceAll("^.*?warning: ", "").replaceAll(";.*", ""))
                .toList();
    }

    private static List<String> warningsOfPoints(String points) {
        return warnings(Displays.json("\"s\": {\"build\": [{\"points\": [" + points + "]}]}", prop("a", "s", 0)));
    }

    private static String prop(String name, String shape, double x) {
        return "{\"name\": \"" + name + "\", \"shape\": \"" + shape + "\", \"at\": [" + x + ", 0]}";
    }

    /** Most steps are 10, so 40 is far: from a stray pixel to both of its neighbours it is the root of 100 + y^2. */
    @ParameterizedTest
    @CsvSource({"38.7, 0", "38.8, 1", "-38.8, 1"})
    void fourStepsAreFar(double y, int told) {
        assertThat(warningsOfPoints("[0,0],[10,0],[20,0],[30," + y + "],[40,0],[50,0],[60,0]"))
                .hasSize(told)
                .allSatisfy(line -> assertThat(line).startsWith("pixel 4 of shape \"s\" stands apart"));
    }

    /** Of the four steps of five pixels a stray one spoils two: nobody can say which are usual. Of six, one can. */
    @Test
    void sixPixelsTellWhatIsUsual() {
        assertThat(warningsOfPoints("[0,0],[10,0],[300,0],[30,0],[40,0]")).isEmpty();
        assertThat(warningsOfPoints("[0,0],[10,0],[300,0],[30,0],[40,0],[50,0]"))
                .containsExactly("pixel 3 of shape \"s\" stands apart from its neighbours, at 300, 0");
    }

    /** Two long steps that differ by less than five in a hundred are how the wire runs. */
    @ParameterizedTest
    @CsvSource({"104, 0", "106, 2"})
    void stepsThatAreAsLongAreNoSlip(double second, int told) {
        StringBuilder points = new StringBuilder("[0,0]");
        double x = 0;
        for (int i = 1; i <= 24; i++) {
            x += i == 8 ? 100 : i == 16 ? second : 10;
            points.append(",[").append(x).append(",0]");
        }
        List<String> found = warningsOfPoints(points.toString());
        assertThat(found).hasSize(told);
        if (told > 0) {
            assertThat(found)
                    .containsExactly(
                            "the spacing of shape \"s\" jumps: pixel 9 is 100 from the one before, most are 10",
                            "the spacing of shape \"s\" jumps: pixel 17 is 106 from the one before, most are 10");
        }
    }

    /** One step in five may jump; where more do, the pixels are scattered. */
    @ParameterizedTest
    @CsvSource({"11, 2", "9, 0"})
    void oneStepInFiveMayJump(int pixels, int told) {
        StringBuilder points = new StringBuilder("[0,0]");
        double x = 0;
        for (int i = 1; i < pixels; i++) {
            x += i == 3 ? 100 : i == 6 ? 200 : 10;
            points.append(",[").append(x).append(",0]");
        }
        assertThat(warningsOfPoints(points.toString())).hasSize(told);
    }

    /** Who sees five of a kind knows what to look for. */
    @Test
    void fiveStrayPixelsAreTold() {
        String points = IntStream.range(0, 50)
                .mapToObj(i -> "[" + 10 * i + "," + (i % 7 == 3 ? 500 : 0) + "]")
                .collect(Collectors.joining(","));
        assertThat(warningsOfPoints(points))
                .extracting(line -> line.replaceAll(" of shape.*", ""))
                .containsExactly("pixel 4", "pixel 11", "pixel 18", "pixel 25", "pixel 32");
    }

    @Test
    void fiveJumpsAreTold() {
        StringBuilder points = new StringBuilder("[0,0]");
        double x = 0;
        for (int i = 1; i <= 56; i++) {
            x += i % 8 == 0 ? 100 + 10 * i : 10;
            points.append(",[").append(x).append(",0]");
        }
        assertThat(warningsOfPoints(points.toString()))
                .extracting(line -> line.replaceAll(".*jumps: (pixel \\d+ is \\d+) .*", "$1"))
                .containsExactly(
                        "pixel 9 is 180", "pixel 17 is 260", "pixel 25 is 340", "pixel 33 is 420", "pixel 41 is 500");
    }

    @Test
    void fivePropsInNoGroupAreNamed() {
        String props = IntStream.rangeClosed(1, 8)
                .mapToObj(i -> prop("p" + i, "ring", 400 * i))
                .collect(Collectors.joining(","));
        String json = Displays.json(RING, props);
        json = json.substring(0, json.length() - 1) + ", \"groups\": {\"some\": \"p4\"}}";
        assertThat(warnings(json))
                .containsExactly("pixels in no group: \"p1\" (12 of 12), \"p2\" (12 of 12), \"p3\" (12 of 12),"
                        + " \"p5\" (12 of 12), \"p6\" (12 of 12) and of 2 more props");
    }

    /** Six props at one place are fifteen pairs: ten lines, of which the last says how many more there are. */
    @Test
    void tenPairsOfPropsAreTold() {
        String props = IntStream.rangeClosed(1, 6)
                .mapToObj(i -> prop("p" + i, "ring", i))
                .collect(Collectors.joining(","));
        Problems problems = new Problems();
        DisplayChecks.warn(Displays.display(Displays.json(RING, props), Map.of()), problems);
        List<String> lines = Inputs.shown(problems);
        assertThat(lines).hasSize(10);
        assertThat(lines.subList(0, 9)).noneMatch(line -> line.contains("more pairs"));
        assertThat(lines.get(9)).contains("; so it is with 5 more pairs of props; check \"at\"");
    }

    /** Of a fence of 40 pixels, 50 apart, that runs into a lamp of six, one in five of the lamp's must be near. */
    @ParameterizedTest
    @CsvSource({"1, false", "2, true"})
    void aFifthOfTheSmallerPropIsMany(int near, boolean told) {
        String lamp = IntStream.range(0, 6)
                .mapToObj(i -> "[" + 50 * i + "," + (i < near ? 10 : 300) + "]")
                .collect(Collectors.joining(","));
        String shapes = "\"fence\": {\"build\": [{\"line\": {\"from\": [0, 0], \"to\": [1950, 0], \"count\": 40}}]},"
                + " \"lamp\": {\"build\": [{\"points\": [" + lamp + "]}]}";
        List<String> found = warnings(Displays.json(shapes, prop("f", "fence", 0) + "," + prop("l", "lamp", 0)));
        assertThat(found.stream().filter(line -> line.contains("hangs where")))
                .hasSize(told ? 1 : 0)
                .allMatch(
                        line -> line.equals("prop \"l\" hangs where prop \"f\" is: 2 of its 6 pixels are hardly farther"
                                + " than half a step from pixels of it"));
    }
}

package org.duskloom.engine.display;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.group.GroupTree;
import org.duskloom.engine.map.MapReader;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Limits of a display, just kept and just passed, and slips in what is seldom written. */
class DisplayEdgesTest {
    private static final String LAMP = "\"lamp\": {\"build\": [{\"points\": [[0, 0]]}]}";

    private static String prop(String name, String shape, String at) {
        return "{\"name\": \"" + name + "\", \"shape\": \"" + shape + "\", \"at\": [" + at + "]}";
    }

    private static List<String> errors(String shape, Map<String, String> files) {
        Problems problems = new Problems();
        String json = Displays.json("\"s\": {" + shape + "}", prop("p", "s", "0, 0"));
        assertThat(Displays.read(json, files, problems).isPresent()).isEqualTo(!problems.hasErrors());
        return Inputs.shown(problems);
    }

    private static List<String> warnings(String json) {
        Problems problems = new Problems();
        DisplayChecks.warn(Displays.display(json, Map.of()), problems);
        return Inputs.shown(problems).stream()
                .map(line -> line.replaceAll("^.*?warning: ", ""))
                .toList();
    }

    /** The sum of the coordinates decides how fine rounding is: a millionth of a millimetre at 2 m is no distance. */
    @ParameterizedTest
    @CsvSource(delimiter = '~', textBlock = """
            0, 0            ~ 0, 0                  ~ 1
            1000, 1000      ~ 1000.0000000001, 1000 ~ 1
            -1000, 1000     ~ -1000, 1000.0000000001 ~ 1
            0, 1000, 1000   ~ 0, 1000, 1000.0000000001 ~ 1
            1000, 0, -1000  ~ 1000.0000000001, 0, -1000 ~ 1
            0, 1000, 1000   ~ 0, 1000, 1001         ~ 0
            1000, 1000      ~ 1000.001, 1000        ~ 0
            0, 0            ~ 0.001, 0              ~ 0
            """)
    void pixelsAtOnePlace(String first, String second, int told) {
        String json = Displays.json(LAMP, prop("a", "lamp", first) + ", " + prop("b", "lamp", second));
        assertThat(warnings(json))
                .hasSize(told)
                .allMatch(line -> line.startsWith(
                        "1 pixel hangs at the very place of another: pixel 1 of \"b\" and pixel 1 of \"a\""));
    }

    @Test
    void aPropOnNoPortStaysDark() {
        String json = Displays.json(LAMP, prop("a", "lamp", "0, 0") + ", " + prop("b", "lamp", "500, 0"));
        json = json.substring(0, json.length() - 1) + ", \"ports\": [{\"name\": \"left\", \"chain\": [\"a\"]}]}";
        assertThat(warnings(json))
                .containsExactly("pixels on no port: \"b\" (1 of 1); they stay dark; put them into a \"chain\"");
    }

    @Test
    void propsOfAMapThatDifferByCase() {
        Problems problems = new Problems();
        PixelMap map = MapReader.read(
                        Inputs.source("map.csv", "prop,pixel,x,y\ndaisy,1,0,0\nDaisy,1,900,0\n"), problems)
                .orElseThrow();
        DisplayChecks.warnOfPlainMap(GroupTree.of(map), problems);
        assertThat(Inputs.shown(problems))
                .singleElement()
                .satisfies(line -> assertThat(line)
                        .contains("prop \"Daisy\" and prop \"daisy\" differ by upper and lower case only"));
    }

    /** Twenty steps are named with what they make; what is beyond is counted. */
    @ParameterizedTest
    @CsvSource({"20, ''", "21, ' and 1 step more'", "25, ' and 5 steps more'"})
    void aWrongCountNamesTwentySteps(int steps, String more) {
        String build = "{\"points\": [[0, 0]]}, ".repeat(steps).replaceAll(", $", "");
        assertThat(errors("\"build\": [" + build + "], \"pixels\": 99", Map.of()))
                .singleElement()
                .satisfies(line -> assertThat(line)
                        .endsWith("\"pixels\" of shape \"s\" is 99, but its steps make " + steps + "; "
                                + "points 1, ".repeat(20).replaceAll(", $", "") + more));
    }

    @ParameterizedTest
    @CsvSource({"0", "1", "2"})
    void aStepIsNamedByItsNumber(int sound) {
        String build = "{\"points\": [[0, 0]]}, ".repeat(sound) + "7";
        assertThat(errors("\"build\": [" + build + "]", Map.of()))
                .singleElement()
                .satisfies(line -> assertThat(line).contains("step " + (sound + 1) + " of shape \"s\" must be"));
    }

    /** What is wrong in a file is told there, and nothing else comes of it. */
    @Test
    void aFileWithAnErrorMakesNoPixels() {
        String csv = "pixel,x,y\n1,0,0\n2,ten,0\n";
        assertThat(errors("\"pixels\": \"s.csv\", \"parts\": {\"tip\": \"2\"}", Map.of("s.csv", csv)))
                .singleElement()
                .satisfies(line -> assertThat(line).startsWith("s.csv:3:").contains("ten"));
    }

    /** A part may be made of parts of parts, 64 of them; the first is the one that all others are in. */
    @ParameterizedTest
    @CsvSource({"64, 0", "65, 1"})
    void partsOfParts(int depth, int told) {
        String parts = IntStream.range(100, 100 + depth)
                .mapToObj(i -> "\"p" + i + "\": " + (i == 99 + depth ? "\"1\"" : "[\"p" + (i + 1) + "\"]"))
                .collect(Collectors.joining(", "));
        assertThat(errors("\"build\": [{\"points\": [[0, 0]]}], \"parts\": {" + parts + "}", Map.of()))
                .hasSize(told)
                .allMatch(line -> line.contains("deeper than 64"));
    }

    /** Up to twelve pixels are written out as they should be. */
    @ParameterizedTest
    @CsvSource({"12, true", "13, false"})
    void aListOfPixelsIsWrittenAsText(int count, boolean written) {
        String pixels =
                IntStream.rangeClosed(1, count).mapToObj(String::valueOf).collect(Collectors.joining(", "));
        String build = "\"build\": [{\"line\": {\"from\": [0, 0], \"to\": [90, 0], \"count\": 20}}]";
        assertThat(errors(build + ", \"parts\": {\"x\": [" + pixels + "]}", Map.of()))
                .singleElement()
                .satisfies(line -> assertThat(line)
                        .endsWith(
                                written
                                        ? "write the pixels in one text: \"" + pixels + "\""
                                        : "write the pixels in one text, such as \"1-6, 9\", as a part of its own"));
    }

    /** A wire may go round ten thousand times, and not more. */
    @Test
    void aThinHelixHasManyTurns() {
        String helix = "\"build\": [{\"helix\": {\"count\": 2, \"radius\": 1, \"height\": 1, \"turns\": %s}}]";
        assertThat(errors(helix.formatted("10000"), Map.of())).isEmpty();
        assertThat(errors(helix.formatted("10001"), Map.of())).hasSize(1);
    }

    /** A pixel may hang as far out as a coordinate may be written, and not farther. */
    @ParameterizedTest
    @CsvSource({"1000000000, 0", "-1000000000, 0", "999999999, 0", "999999999.5, 1", "-999999999.5, 1"})
    void nothingHangsBeyondTheLargestCoordinate(String x, int told) {
        String sign = x.startsWith("-") ? "-" : "";
        String reach = told == 1 ? "1" : "0";
        Problems problems = new Problems();
        String json = Displays.json(
                "\"s\": {\"build\": [{\"points\": [[0, 0], [" + sign + reach + ", 0]]}]}", prop("p", "s", x + ", 0"));
        Displays.read(json, Map.of(), problems);
        assertThat(Inputs.shown(problems))
                .hasSize(told)
                .allMatch(line -> line.contains("a pixel of prop \"p\" hangs beyond 1000000000"));
    }

    /** IEEE 754 has two zeros; a place has one, so that equal places are equal to the bit. */
    @Test
    void aPlaceHasOneZero() {
        Shape shape = Displays.shape("{\"points\": [[-0.0, -0.0, -0.0]]}");
        assertThat(1 / shape.pixels().x(0)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(1 / shape.pixels().y(0)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(1 / shape.pixels().z(0)).isEqualTo(Double.POSITIVE_INFINITY);
    }
}

package org.duskloom.engine.display;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShapePartsTest {
    private static final String PROP = "{\"name\": \"p\", \"shape\": \"a\", \"at\": [0, 0]}";
    /** Pixels 1 to 4 are a rim, 5 to 10 three petals of two. */
    private static final String FLOWER = "{\"ring\": {\"count\": 4, \"radius\": 10}, \"part\": \"rim\"},"
            + "{\"spokes\": {\"count\": 3, \"pixels\": 2, \"from\": 20, \"to\": 30}, \"part\": \"petals\"}";

    private static String json(String build, String parts) {
        return Displays.json("\"a\": {\"build\": [" + build + "], \"parts\": {" + parts + "}}", PROP);
    }

    private static List<String> parts(String build, String parts) {
        Prop prop = Displays.display(json(build, parts), Map.of()).map().props().get(0);
        return prop.partPaths().stream()
                .map(path ->
                        path + Arrays.toString(prop.part(path).orElseThrow().pixels()))
                .toList();
    }

    private static List<String> problems(String build, String parts) {
        Problems problems = new Problems();
        assertThat(Displays.read(json(build, parts), Map.of(), problems)).isEmpty();
        return Inputs.shown(problems);
    }

    @Test
    void stepsMakePartsAndNumberedOnesInside() {
        assertThat(parts(FLOWER, ""))
                .containsExactly(
                        "rim[0, 1, 2, 3]",
                        "petals[4, 5, 6, 7, 8, 9]",
                        "petals/1[4, 5]",
                        "petals/2[6, 7]",
                        "petals/3[8, 9]");
    }

    /** The second row of a serpentine grid is wired backwards; its part runs like the first row all the same. */
    @Test
    void linesRunTheSameWayHoweverTheWireSnakes() {
        String grid =
                "{\"grid\": {\"rows\": 3, \"columns\": 2, \"spacing\": 5, \"path\": \"serpentine\"}, \"part\": \"rows\"}";
        assertThat(parts(grid, ""))
                .containsExactly("rows[0, 1, 2, 3, 4, 5]", "rows/1[0, 1]", "rows/2[3, 2]", "rows/3[4, 5]");
        String spokes =
                "{\"spokes\": {\"count\": 2, \"pixels\": 2, \"from\": 1, \"to\": 2, \"path\": \"serpentine\"}, \"part\": \"s\"}";
        assertThat(parts(spokes, "")).containsExactly("s[0, 1, 2, 3]", "s/1[0, 1]", "s/2[3, 2]");
    }

    @Test
    void aPartMayBeCalledByANumber() {
        assertThat(parts(FLOWER, "\"3\": \"1-2\", \"both\": [\"3\", \"rim\"]")).contains("3[0, 1]", "both[0, 1, 2, 3]");
    }

    @Test
    void stepsWithoutAPartMakeNone() {
        assertThat(parts("{\"grid\": {\"rows\": 3, \"columns\": 2, \"spacing\": 5}}", ""))
                .isEmpty();
    }

    @Test
    void stepsOfOnePartShareIt() {
        String petal = "{\"spokes\": {\"count\": 2, \"pixels\": 1, \"from\": 20}, \"part\": \"petals\"}";
        String point = "{\"points\": [[0, 0]], \"part\": \"petals/5\"}";
        assertThat(parts(petal + "," + petal + "," + point + "," + petal, ""))
                .containsExactly(
                        "petals[0, 1, 2, 3, 4, 5, 6]",
                        "petals/1[0]",
                        "petals/2[1]",
                        "petals/3[2]",
                        "petals/4[3]",
                        "petals/5[4]",
                        "petals/6[5]",
                        "petals/7[6]");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '`', textBlock = """
            "top": "3-1, 10"                                   ~ top[2, 1, 0, 9]
            "top": ["petals/2", "rim"]                         ~ top[6, 7, 0, 1, 2, 3]
            "top": ["rim", "rim"]                              ~ top[0, 1, 2, 3]
            "petals/odd": ["petals/3", "petals/1"]             ~ petals/odd[8, 9, 4, 5]
            "a": ["b"], "b": ["c"], "c": "2"                   ~ a[1] b[1] c[1]
            "z/left": "6-5", "z/right/up": "2"                 ~ z[1, 4, 5] z/right[1] z/right/up[1] z/left[5, 4]
            "z": "9-5", "z/left": "6, 8"                       ~ z[8, 7, 6, 5, 4] z/left[5, 7]
            "z": ["z/a", "z/b"], "z/a": "4", "z/b": "2"        ~ z[3, 1] z/b[1] z/a[3]
            "z/b": "2", "y": ["z", "rim"]                      ~ y[1, 0, 2, 3] z[1] z/b[1]
            """)
    void definesFurtherParts(String definitions, String expected) {
        List<String> found = parts(FLOWER, definitions);
        assertThat(found.stream()
                        .filter(part -> !part.matches("(rim|petals|petals/[123])\\[.*"))
                        .toList())
                .containsExactlyInAnyOrder(expected.split(" (?=[a-z])"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '`', textBlock = """
            "x": "11"                         ~ part "x" holds "11"; allowed: pixels 1 to 10
            "x": "2, 1-3"                     ~ part "x" holds pixel 2 twice; every pixel of a part stands once
            "x": 7                            ~ part "x" must be pixel ranges or a list of parts, not a number; write it as "1-6, 9, 14-10" or ["rim", "petals/1"]
            "x": []                           ~ part "x" has no pixels; name parts in it, or remove it
            "x": [1]                          ~ part "x" lists pixels one by one, but a list is for parts; write the pixels in one text: "1"
            "x": [13, 25, 14]                 ~ part "x" lists pixels one by one, but a list is for parts; write the pixels in one text: "13, 25, 14"
            "x": ["1-2", 3]                   ~ part "x" lists pixels one by one, but a list is for parts; write the pixels in one text: "1-2, 3"
            "x": ["1-2", "rim"]               ~ part "x" lists pixels one by one, but a list is for parts; write the pixels in one text, such as "1-6, 9", as a part of its own
            "x": ["petels"]                   ~ there is no part "petels" in shape "a"; did you mean "petals"?
            "x": ["petals/4"]                 ~ there is no part "petals/4" in shape "a"; did you mean "petals/1"?
            "x": ["zzzzz"]                    ~ there is no part "zzzzz" in shape "a"; allowed: petals, petals/1, petals/2, petals/3, rim
            "x": ["1-3"]                      ~ part "x" lists pixels one by one, but a list is for parts; write the pixels in one text: "1-3"
            "x": ["petals/*"]                 ~ there is no part "petals/*" in shape "a"; patterns are for groups; name every part
            "rim": "1"                        ~ part "rim" of shape "a" is there already; the steps or the file of the shape make it; rename one of them
            "petals/2": "1"                   ~ part "petals/2" of shape "a" is there already; the steps or the file of the shape make it; rename one of them
            "petals/tip": "1"                 ~ part "petals/tip" has pixel 1, which is not in "petals"; a part inside another has pixels of that one only
            "z": "1", "z/b/c": "2"            ~ part "z/b" has pixel 2, which is not in "z"; a part inside another has pixels of that one only
            "x": ["x"]                        ~ parts go in a circle: x -> x; write pixel ranges for one of them
            "x": ["y"], "y": ["rim", "x"]     ~ parts go in a circle: x -> y -> x; write pixel ranges for one of them
            "z/b": ["z"]                      ~ parts go in a circle: z/b -> z -> z/b; write pixel ranges for one of them
            "a//b": "1"                       ~ a part name of "a//b" is empty; parts are nested with /, as in petals/1
            "to*": "1"                        ~ the part name "to*" holds *, which is not allowed in names; parts are nested with /, as in petals/1
            "": "1"                           ~ the part name "" is empty; parts are nested with /, as in petals/1
            """)
    void teachesWhatIsWrong(String definitions, String expected) {
        assertThat(problems(FLOWER, definitions))
                .singleElement()
                .asString()
                .startsWith("garden.json:1:")
                .endsWith(": error: " + expected);
    }

    @Test
    void saysNothingOfPartsThatAStepWithErrorsMayHaveMade() {
        assertThat(problems(
                        "{\"ring\": {\"count\": 0, \"radius\": 1}, \"part\": \"rim\"}",
                        "\"x\": [\"rim\"], \"y\": \"1-3\""))
                .singleElement()
                .asString()
                .contains("\"count\" of \"ring\" is 0");
    }

    @Test
    void endsDeepChains() {
        String chain = IntStream.rangeClosed(1, 5000)
                .mapToObj(i -> "\"p" + i + "\": [\"p" + (i + 1) + "\"]")
                .collect(Collectors.joining(","));
        assertThat(problems(FLOWER, chain + ", \"p5001\": \"1\""))
                .anySatisfy(line ->
                        assertThat(line).endsWith("parts are made of parts deeper than 64; write pixel ranges"));
        String deep = "a/".repeat(15) + "a";
        assertThat(problems(FLOWER, "\"" + deep + "\": \"1\""))
                .singleElement()
                .asString()
                .endsWith("is nested deeper than 15");
    }

    @Test
    void endsHugeLists() {
        String ring = "{\"ring\": {\"count\": 1000000, \"radius\": 1}}";
        String parts = IntStream.rangeClosed(1, 30)
                .mapToObj(i -> "\"p" + i + "\": \"1-1000000\"")
                .collect(Collectors.joining(","));
        assertThat(problems(ring, parts))
                .hasSize(20)
                .allSatisfy(line -> assertThat(line).contains("list more than 10000000 pixels; make fewer"));
    }
}

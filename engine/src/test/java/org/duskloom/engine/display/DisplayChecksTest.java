package org.duskloom.engine.display;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
import org.junit.jupiter.params.provider.ValueSource;

class DisplayChecksTest {
    private static final String RING =
            "\"ring\": {\"build\": [{\"ring\": {\"count\": 12, \"radius\": 90}, \"part\": \"rim\"}]}";

    private static List<String> warnings(Display display) {
        Problems problems = new Problems();
        DisplayChecks.warn(display, problems);
        assertThat(problems.errorCount()).isZero();
        return Inputs.shown(problems);
    }

    private static List<String> warnings(String shapes, String props, String groups) {
        return warnings(Displays.display(json(shapes, props, groups), Map.of()));
    }

    private static String json(String shapes, String props, String groups) {
        String json = Displays.json(shapes, props);
        return json.substring(0, json.length() - 1) + ", \"groups\": {" + groups + "}}";
    }

    /** The place of a piece of text in a display, which is one line of ASCII. */
    private static String placeOf(String piece, String json) {
        assertThat(json).containsOnlyOnce(piece);
        return "garden.json:1:" + (json.indexOf(piece) + 1) + ": warning: ";
    }

    private static String prop(String name, String shape, double x, double y) {
        return "{\"name\": \"" + name + "\", \"shape\": \"" + shape + "\", \"at\": [" + x + ", " + y + "]}";
    }

    @Test
    void saysNothingOfTheGardenOfTheDemos() throws Exception {
        String json = Files.readString(Path.of("../demos/garden/display.json"));
        assertThat(warnings(Displays.display(json, Map.of()))).isEmpty();
    }

    /** The arc ends where the line begins, but for rounding: 3·cos 30° is not 2.598... to the last bit. */
    @Test
    void findsPixelsAtOnePlaceInSpiteOfRounding() {
        String shapes = "\"s\": {\"build\": [{\"arc\": {\"count\": 2, \"radius\": 3, \"from\": 90, \"to\": 30}},"
                + " {\"line\": {\"from\": [2.598076211353316, 1.5], \"to\": [9, 1.5], \"count\": 3}}]}";
        String turned = prop("a", "s", 70, 80).replace("}", ", \"turn\": 33.3}");
        assertThat(warnings(shapes, turned, ""))
                .containsExactly(placeOf("\"a\"", json(shapes, turned, ""))
                        + "1 pixel hangs at the very place of another: pixel 3 of \"a\" and pixel 2"
                        + " of \"a\"; leave it so if they are mounted back to back");
    }

    @Test
    void findsShapesThatNoPropHas() {
        String shapes = RING + ", " + RING.replace("\"ring\": {\"b", "\"hoop\": {\"b");
        String props = prop("a", "ring", 0, 0);
        assertThat(warnings(shapes, props, ""))
                .containsExactly(placeOf("\"hoop\"", json(shapes, props, ""))
                        + "no prop has the shape \"hoop\"; place one, or remove it");
    }

    @Test
    void findsPixelsInNoGroup() {
        String props = prop("a", "ring", 0, 0) + "," + prop("b", "ring", 500, 0) + "," + prop("c", "ring", 1000, 0);
        assertThat(warnings(RING, props, "")).isEmpty();
        assertThat(warnings(RING, props, "\"all\": \"*\"")).isEmpty();
        String parts = RING.replace("}]}", "}], \"parts\": {\"top\": \"1-5\"}}");
        assertThat(warnings(parts, props, "\"some\": [\"a/top\", \"c\"]"))
                .containsExactly(placeOf("\"a\", \"shape", json(parts, props, ""))
                        + "pixels in no group: \"a\" (7 of 12), \"b\" (12 of 12);"
                        + " leave it so if cues name these props themselves");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '`', textBlock = """
            0  ~ 0   ~ true  ~ the very same place
            10 ~ 5   ~ true  ~ a slip of the ruler: steps are 46.6, half of one 23.3
            0  ~ 180 ~ false ~ the rings touch in one pixel
            90 ~ 0   ~ false ~ the rings cross twice
            400 ~ 0  ~ false ~ side by side
            """)
    void findsPropsInTheSameSpace(double x, double y, boolean overlaps, String why) {
        String shapes = RING.replace("90}", "90, \"start\": 7}");
        List<String> found = warnings(shapes, prop("a", "ring", 0, 0) + "," + prop("b", "ring", x, y), "").stream()
                .filter(line -> line.contains("hangs where"))
                .toList();
        assertThat(found)
                .as(why)
                .hasSize(overlaps ? 1 : 0)
                .allSatisfy(
                        line -> assertThat(line)
                                .contains(
                                        "warning: prop \"b\" hangs where prop \"a\" is: 12 of its 12 pixels are hardly farther than half a step"));
    }

    /**
     * One of two equal rings is turned by half a step: the chord of that is 2 r sin(90 / n degrees), a step 2 r sin(180
     * / n).
     */
    @ParameterizedTest
    @ValueSource(ints = {3, 4, 12, 60})
    void findsRingsBetweenThePixelsOfOthers(int count) {
        String shapes = RING.replace("12", String.valueOf(count));
        String turned = prop("b", "ring", 0, 0).replace("}", ", \"turn\": " + 180.0 / count + "}");
        assertThat(warnings(shapes, prop("a", "ring", 0, 0) + "," + turned, ""))
                .singleElement()
                .satisfies(line -> assertThat(line)
                        .contains("prop \"b\" hangs where prop \"a\" is: " + count + " of its " + count));
    }

    /** One cause, one warning; a single pixel on top of another is still told. */
    @Test
    void propsAtOnePlaceAreToldOnce() {
        String two = prop("a", "ring", 0, 0) + "," + prop("b", "ring", 0, 0);
        assertThat(warnings(RING, two, ""))
                .singleElement()
                .satisfies(line -> assertThat(line).contains("prop \"b\" hangs where prop \"a\" is"));
        String lamp = ", \"lamp\": {\"build\": [{\"points\": [[0, 0]]}]}";
        assertThat(warnings(RING + lamp, two + "," + prop("l", "lamp", 90, 0), ""))
                .hasSize(2)
                .anySatisfy(line -> assertThat(line).contains("1 pixel hangs at the very place of another"));
    }

    /** The box of the fence holds the ring, and the ring's the small one; nothing is near anything. */
    @Test
    void boxesInsideBoxesAreNoOverlap() {
        String shapes =
                RING + ", \"small\": {\"build\": [{\"ring\": {\"count\": 12, \"radius\": 30}}]}, \"fence\": {\"build\":"
                        + " [{\"polyline\": {\"points\": [[-500, 0], [0, 500], [500, 0]], \"count\": 60}}]}";
        String props = prop("f", "fence", 0, 0) + "," + prop("r", "ring", 0, 150) + "," + prop("s", "small", 0, 150);
        assertThat(warnings(shapes, props, "")).isEmpty();
    }

    @Test
    void manyPropsAtOnePlaceAreFewLines() {
        String props = IntStream.rangeClosed(1, 60)
                .mapToObj(i -> prop("p" + i, "ring", 0, i * 0.01))
                .collect(Collectors.joining(","));
        assertThat(warnings(RING, props, ""))
                .hasSize(10)
                .anySatisfy(line -> assertThat(line).contains("more pairs of props"));
    }

    /** Steps of 10; pixel 4 should be at 30. A wire that goes to and fro is no mistake. */
    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '`', textBlock = """
            [0,0],[10,0],[20,0],[300,0],[40,0],[50,0]          ~ 4 ~ 300, 0
            [0,0],[10,0],[20,0],[30,0,500],[40,0],[50,0]       ~ 4 ~ 30, 0, 500
            [0,0],[10,0],[20,0],[55,0],[40,0],[50,0]           ~ 0 ~ ``
            [0,0],[1,0],[500,0],[501,0],[2,0],[3,0]            ~ 0 ~ ``
            [0,0],[10,0],[200,0],[30,0]                        ~ 0 ~ ``
            """)
    void findsMistypedPlaces(String points, int pixel, String place) {
        String shape = "\"s\": {\"build\": [{\"points\": [[-10, 0]]}, {\"points\": [" + points + "]}]}";
        List<String> found = warnings(shape, prop("a", "s", 0, 0), "");
        assertThat(found)
                .hasSize(pixel == 0 ? 0 : 1)
                .allSatisfy(line -> assertThat(line)
                        .isEqualTo(placeOf("{\"points\": [" + points, json(shape, "", "")) + "pixel " + (pixel + 1)
                                + " of shape \"s\" stands apart from its neighbours, at " + place
                                + "; is a coordinate mistyped?"));
    }

    /** One step of 270 among steps of 10; rows of five, 60 apart, and scattered pixels have no step that stands out. */
    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '`', textBlock = """
            [0,0],[10,0],[20,0],[30,0],[300,0],[310,0],[320,0]                                             ~ 6 ~ 270
            [0,0],[10,0],[20,0],[30,0],[40,0],[50,40.5]                                                    ~ 7 ~ 41.7
            [0,0],[10,0],[20,0],[30,0],[69,0],[79,0]                                                       ~ 0 ~ 0
            [0,0],[10,0],[20,0],[30,0],[40,0],[0,60],[10,60],[20,60],[30,60],[40,60],[0,120],[10,120]      ~ 0 ~ 0
            [0,0],[1,0],[500,0],[501,0],[2,0],[3,0]                                                        ~ 0 ~ 0
            """)
    void findsStepsThatJump(String points, int pixel, String step) {
        String shape = "\"s\": {\"build\": [{\"points\": [[-10, 0]]}, {\"points\": [" + points + "]}]}";
        assertThat(warnings(shape, prop("a", "s", 0, 0), ""))
                .hasSize(pixel == 0 ? 0 : 1)
                .allSatisfy(line -> assertThat(line)
                        .isEqualTo(placeOf("{\"points\": [" + points, json(shape, "", ""))
                                + "the spacing of shape \"s\" jumps: pixel " + pixel + " is " + step
                                + " from the one before, most are 10; is a coordinate mistyped? leave it so if the wire is"
                                + " that long there"));
    }

    @Test
    void findsStepsThatJumpInFiles() {
        String csv = "pixel,x,y\n1,0,0\n2,10,0\n3,20,0\n4,30,0\n5,40,0\n6,500,0\n7,510,0\n";
        String json = Displays.json("\"s\": {\"pixels\": \"s.csv\"}", prop("a", "s", 0, 0));
        assertThat(warnings(Displays.display(json, Map.of("s.csv", csv))))
                .singleElement()
                .satisfies(line -> assertThat(line)
                        .startsWith("s.csv:7:1: warning: the spacing of shape \"s\" jumps: pixel 6 is 460 from"));
    }

    /** Where one part ends and another begins, the wire may go anywhere. */
    @Test
    void theWireMayJumpFromPartToPart() {
        String csv = "pixel,x,y,part\n1,0,0,low\n2,10,0,low\n3,20,0,low\n4,30,0,low\n5,40,0,low\n6,500,0,high\n"
                + "7,510,0,high\n";
        String json = Displays.json("\"s\": {\"pixels\": \"s.csv\"}", prop("a", "s", 0, 0));
        assertThat(warnings(Displays.display(json, Map.of("s.csv", csv)))).isEmpty();
    }

    /**
     * Twenty pixels 50 apart, the twelfth typed with a digit too many: on line 13. Its order in the file means nothing.
     */
    @Test
    void findsStrayPixelsOfAMap() {
        StringBuilder csv = new StringBuilder("prop,pixel,x,y,part\n");
        for (int i = 1; i <= 20; i++) {
            csv.append("fence,")
                    .append(i)
                    .append(',')
                    .append(i == 12 ? 5500 : 50 * i)
                    .append(",0,\n");
        }
        assertThat(mapWarnings(csv.toString()))
                .containsExactly(
                        "map.csv:13:1: warning: pixel 12 of prop \"fence\" stands apart from its neighbours, at"
                                + " 5500, 0; is a coordinate mistyped?");
    }

    /** A lamp of its own between two rows, and a wire that jumps from row to row, are as they are built. */
    @Test
    void partsOfAMapMayStandApart() {
        StringBuilder csv = new StringBuilder("prop,pixel,x,y,part\n");
        for (int i = 1; i <= 21; i++) {
            String part = i == 11 ? "lamp" : "row";
            csv.append("fence,")
                    .append(i)
                    .append(',')
                    .append(10 * i)
                    .append(',')
                    .append(i == 11 ? 400 : 0);
            csv.append(',').append(part).append('\n');
        }
        csv.append("far,1,0,900,\nfar,2,10,900,\nfar,3,20,900,\nfar,4,500,900,\nfar,5,510,900,\nfar,6,520,900,\n");
        assertThat(mapWarnings(csv.toString())).isEmpty();
    }

    private static List<String> mapWarnings(String csv) {
        Problems problems = new Problems();
        PixelMap map = MapReader.read(Inputs.source("map.csv", csv), problems).orElseThrow();
        DisplayChecks.warnOfPlainMap(GroupTree.of(map), problems);
        return Inputs.shown(problems);
    }

    @Test
    void findsMistypedPlacesInFiles() {
        String csv = "pixel,x,y\n1,0,0\n2,10,0\n3,20,900\n4,30,0\n5,40,0\n6,50,0\n";
        String json = Displays.json("\"s\": {\"pixels\": \"s.csv\"}", prop("a", "s", 0, 0));
        assertThat(warnings(Displays.display(json, Map.of("s.csv", csv))))
                .containsExactly(
                        "s.csv:4:1: warning: pixel 3 of shape \"s\" stands apart from its neighbours, at 20, 900;"
                                + " is a coordinate mistyped?");
    }

    @Test
    void findsNamesThatDifferByCaseOnly() {
        String shapes = RING + ", "
                + RING.replace("\"ring\": {\"b", "\"Ring\": {\"b").replace("}]}", "}], \"parts\": {\"Rim\": \"1\"}}");
        String props = prop("a", "ring", 0, 0) + "," + prop("A", "Ring", 500, 0);
        assertThat(warnings(shapes, props, "\"All\": \"*\", \"ALL\": \"a\""))
                .extracting(line -> line.replaceAll("^.*warning: ", ""))
                .containsExactlyInAnyOrder(
                        "shape \"Ring\" and shape \"ring\" differ by upper and lower case only; give one of them another name",
                        "part \"rim\" and part \"Rim\" differ by upper and lower case only; give one of them another name",
                        "prop \"A\" and prop \"a\" differ by upper and lower case only; give one of them another name",
                        "group \"ALL\" and group \"All\" differ by upper and lower case only; give one of them another name");
    }

    @Test
    void findsGroupsThatNothingUses() {
        String json = Displays.json(RING, prop("a", "ring", 0, 0) + "," + prop("b", "ring", 500, 0));
        json = json.substring(0, json.length() - 1)
                + ", \"groups\": {\"inner\": [\"a\"], \"outer\": [\"inn*\"], \"other\":"
                + " {\"all\": \"*\", \"except\": \"third\"}, \"third\": \"b\", \"shown\": \"a\"}}";
        Problems problems = new Problems();
        DisplayChecks.warnOfUnusedGroups(Displays.display(json, Map.of()).groups(), Set.of("shown"), problems);
        assertThat(Inputs.shown(problems))
                .extracting(line -> line.replaceAll("^.*warning: ", ""))
                .containsExactly(
                        "group \"outer\" is not used; play a cue on it, or remove it if no other show uses it",
                        "group \"other\" is not used; play a cue on it, or remove it if no other show uses it");
    }
}

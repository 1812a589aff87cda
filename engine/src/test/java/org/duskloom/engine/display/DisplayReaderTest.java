package org.duskloom.engine.display;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.map.Part;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DisplayReaderTest {
    private static final String DOT = "\"dot\": {\"build\": [{\"points\": [[0, 0]]}]}";
    private static final String PROP = "{\"name\": \"d\", \"shape\": \"dot\", \"at\": [0, 0]}";

    private final Problems problems = new Problems();

    private List<String> problems(String json) {
        assertThat(Displays.read(json, Map.of(), problems)).isEmpty();
        return Inputs.shown(problems);
    }

    private void assertOne(String json, String expected) {
        assertThat(problems(json))
                .singleElement()
                .asString()
                .matches("garden\\.json:1:\\d+: error: .*")
                .endsWith(": error: " + expected);
    }

    /** 254 mm are 10 inches; the numbered petals follow the path, and further parts may be made of them. */
    @Test
    void takesPixelsFromADrawingInTheUnitOfTheDisplay() {
        String svg = "<svg xmlns='http://www.w3.org/2000/svg' width='508mm' height='508mm' viewBox='0 0 20 20'>"
                + "<g id='tip'><circle cx='10' cy='4' r='1'/></g><g id='foot'><circle cx='2' cy='4' r='1'/></g>"
                + "<path id='wire' d='M0 4H20'/></svg>";
        String json = Displays.json(
                        "\"s\": {\"pixels\": \"petal.svg\", \"along\": \"wire\", \"parts\": {\"all\": [\"tip\", \"foot\"]}}",
                        "{\"name\": \"p\", \"shape\": \"s\", \"at\": [0, 0]}")
                .replace("\"shapes\"", "\"units\": \"in\", \"shapes\"");
        Shape shape = Displays.display(json, Map.of("petal.svg", svg)).shapes().get(0);
        assertThat(shape.pixels().size()).isEqualTo(2);
        assertThat(shape.pixels().x(0)).isEqualTo(2);
        assertThat(shape.pixels().x(1)).isEqualTo(10);
        assertThat(shape.pixels().y(1)).isEqualTo(-4);
        assertThat(shape.parts()).extracting(Part::name).containsExactlyInAnyOrder("tip", "foot", "all");
        assertThat(shape.parts().stream()
                        .filter(part -> part.name().equals("all"))
                        .findFirst()
                        .orElseThrow()
                        .pixels())
                .containsExactly(1, 0);
    }

    /** The number of pixels beside the steps is a check and changes nothing. */
    @Test
    void stepsMayBeCounted() {
        Shape shape = Displays.display(
                        "\"s\": {\"pixels\": 12, \"build\": [{\"ring\": {\"count\": 12, \"radius\": 5}}]}",
                        "{\"name\": \"p\", \"shape\": \"s\", \"at\": [0, 0]}")
                .shapes()
                .get(0);
        assertThat(shape.pixels().size()).isEqualTo(12);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '`', textBlock = """
            {"ring": {"radius": 5}}                         ~ "ring" lacks the field "count"
            {"ring": {"count": 0, "radius": 5}}             ~ "count" of "ring" is 0; allowed: a whole number from 1 to 1000000
            {"ring": {"count": -3, "radius": 5}}            ~ "count" of "ring" is -3; allowed: a whole number from 1 to 1000000
            {"ring": {"count": 2.5, "radius": 5}}           ~ "count" of "ring" is 2.5; allowed: a whole number from 1 to 1000000
            {"ring": {"count": 2000000, "radius": 5}}       ~ "count" of "ring" is 2000000; allowed: a whole number from 1 to 1000000
            {"ring": {"count": 4, "radius": 0}}             ~ "radius" of "ring" is 0; allowed: a number from 0.001 to 1000000000
            {"ring": {"count": 4, "radius": -9}}            ~ "radius" of "ring" is -9; allowed: a number from 0.001 to 1000000000
            {"ring": {"count": 4, "radius": "5"}}           ~ "radius" of "ring" must be a number, not the text "5"; write 5 without quotes
            {"ring": {"count": 4, "radius": 5, "direction": "clockwize"}} ~ "direction" of "ring" is "clockwize"; did you mean "clockwise"? allowed: counter-clockwise, clockwise
            {"ring": {"count": 4, "radius": 5, "strat": 5}} ~ "ring" has no field "strat"; did you mean "start"?
            {"ring": {"count": 4, "radius": 5, "start": 1e9}} ~ "start" of "ring" is 1e9; allowed: a number from -3600 to 3600
            {"ring": {"count": 4, "radius": 5, "centre": [1]}} ~ "centre" of "ring" has 1 item; allowed: 2 or 3 numbers, [x, y] or [x, y, z]
            {"ring": {"count": 4, "radius": 1e9, "centre": [1e9, 0]}} ~ a pixel of shape "s" has a coordinate beyond 1000000000; choose a larger unit
            {"rinq": {"count": 4, "radius": 5}}             ~ there is no step "rinq"; did you mean "ring"? allowed: ring, arc, line, polyline, grid, spokes, helix, points
            {"part": "rim"}                                 ~ step 1 of shape "s" does not say what it makes; allowed: ring, arc, line, polyline, grid, spokes, helix, points
            {}                                              ~ step 1 of shape "s" does not say what it makes; allowed: ring, arc, line, polyline, grid, spokes, helix, points
            7                                               ~ step 1 of shape "s" must be an object { }, not the number 7
            {"ring": 7}                                     ~ "ring" must be an object { }, not the number 7
            {"ring": {"count": 4, "radius": 5}, "parts": "rim"} ~ step 1 of shape "s" has no field "parts"; did you mean "part"?
            {"ring": {"count": 4, "radius": 5}, "part": "a*"} ~ the part name "a*" holds *, which is not allowed in names; parts are nested with /, as in petals/1
            {"ring": {"count": 4, "radius": 5}, "points": [[0, 0]]} ~ step 1 of shape "s" has both "ring" and "points"; make two steps of it, each in its own { }
            {"arc": {"count": 1, "radius": 5, "from": 0, "to": 90}} ~ "count" of "arc" is 1; allowed: a whole number from 2 to 1000000
            {"arc": {"count": 2, "radius": 5, "from": 9, "to": 9}} ~ an arc begins and ends at the same angle; make "to" another angle than "from"
            {"arc": {"count": 2, "radius": 5, "from": 0, "to": -360}} ~ an arc goes round once or more; for a full circle use "ring"
            {"line": {"from": [0, 0], "to": [0, 0], "count": 5}} ~ a line begins and ends at the same place; for a single pixel use "points"
            {"line": {"from": [0, 0, 0, 0], "to": [0, 1], "count": 5}} ~ "from" of "line" has 4 items; allowed: 2 or 3 numbers, [x, y] or [x, y, z]
            {"line": {"from": [-90,5, 90,5], "to": [0, 1], "count": 5}} ~ "from" of "line" has 4 items; allowed: 2 or 3 numbers, [x, y] or [x, y, z]; the decimal sign is a dot: [-90.5, 90.5]
            {"line": {"from": [0, "a"], "to": [0, 1], "count": 5}} ~ y in "from" of "line" must be a number, not the text "a"
            {"polyline": {"points": [[0, 0], [1, 0]]}}      ~ "polyline" has neither "count" nor "spacing"; give one of them
            {"polyline": {"points": [[0, 0], [1, 0]], "count": 2, "spacing": 2}} ~ "polyline" has both "count" and "spacing"; give one of them
            {"polyline": {"points": [[0, 0]], "count": 2}}  ~ "points" of "polyline" has 1 item; allowed: at least 2, each a place such as [0, 100]
            {"polyline": {"points": [[0, 0], [0, 0]], "count": 2}} ~ all points of a polyline are the same; for a single pixel use "points"
            {"polyline": {"points": [[0, 0], [1, 0]], "count": 2, "closed": "yes"}} ~ "closed" of "polyline" must be true or false, not the text "yes"
            {"polyline": {"points": [[0, 0], [1e9, 0]], "spacing": 0.001}} ~ the shapes of the display have more than 1000000 pixels; check the counts of shape "s"
            {"grid": {"rows": 2, "columns": 0, "spacing": 1}} ~ "columns" of "grid" is 0; allowed: a whole number from 1 to 10000
            {"grid": {"rows": 2, "columns": 2, "spacing": [1, 0]}} ~ item 2 of "spacing" of "grid" is 0; allowed: a number from 0.001 to 1000000000
            {"grid": {"rows": 2, "columns": 2, "spacing": [1, 2, 3]}} ~ "spacing" of "grid" has 3 items; allowed: 2 numbers
            {"grid": {"rows": 2, "columns": 2, "spacing": 1, "corner": "top-lft"}} ~ "corner" of "grid" is "top-lft"; did you mean "top-left"? allowed: top-left, top-right, bottom-left, bottom-right
            {"grid": {"rows": 10000, "columns": 10000, "spacing": 1}} ~ the shapes of the display have more than 1000000 pixels; check the counts of shape "s"
            {"spokes": {"count": 3, "pixels": 2, "from": 5}} ~ "spokes" lacks the field "to"
            {"spokes": {"count": 3, "pixels": 2, "from": 5, "to": 5}} ~ spokes begin and end at the same distance; make "to" another distance than "from"
            {"spokes": {"count": 3, "pixels": 1, "from": 5, "to": 6}} ~ spokes of 1 pixel have one distance only; leave "to" out, or raise "pixels"
            {"spokes": {"count": 3, "pixels": 1, "from": -5}} ~ "from" of "spokes" is -5; allowed: a number from 0 to 1000000000
            {"helix": {"count": 9, "radius": 5, "height": 5}} ~ "helix" has neither "turns" nor "spacing"; give one of them
            {"helix": {"count": 9, "radius": 5, "height": 5, "turns": 1, "spacing": 1}} ~ "helix" has both "turns" and "spacing"; give one of them
            {"helix": {"count": 9, "radius": [0, 0], "height": 5, "turns": 1}} ~ a helix has no radius; for a straight line use "line"
            {"helix": {"count": 9, "radius": 5, "height": 0, "turns": 1}} ~ "height" of "helix" is 0; allowed: a number from 0.001 to 1000000000
            {"helix": {"count": 9, "radius": 5, "height": 50, "spacing": 1}} ~ the wire of a helix is too short to reach its top; raise "count" or "spacing", or lower "height"
            {"helix": {"count": 9, "radius": 0.001, "height": 1, "spacing": 1000}} ~ a helix has more than 10000 turns; lower "count" or "spacing"
            {"points": []}                                  ~ "points" has 0 items; allowed: at least 1, each a place such as [0, 100]
            {"points": {"count": 4}}                        ~ "points" must be a list [ ], not an object
            {"points": [[0, 0], [1, 2e9]]}                  ~ y in item 2 of "points" is 2e9; allowed: a number from -1000000000 to 1000000000
            """)
    void teachesWhatIsWrongWithASteps(String step, String expected) {
        assertOne(
                Displays.json(
                        "\"s\": {\"build\": [" + step + "]}", "{\"name\": \"p\", \"shape\": \"s\", \"at\": [0, 0]}"),
                expected);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '`', textBlock = """
            "s": {}                                         ~ shape "s" has neither "build" nor "pixels"; give a list of steps in "build", or the name of a CSV or SVG file in "pixels"
            "s": {"build": [{"points": [[0, 0]]}], "pixels": "f.csv"} ~ shape "s" has both "build" and a file in "pixels"; give a list of steps in "build", or the name of a CSV or SVG file in "pixels"
            "s": {"pixels": 3}                              ~ a number of pixels stands beside "build", which shape "s" has not; give a list of steps in "build", or the name of a CSV or SVG file in "pixels"
            "s": {"pixels": true}                           ~ "pixels" of shape "s" must be a text, not true
            "s": {"build": [{"points": [[0, 0]]}], "pixels": 2} ~ "pixels" of shape "s" is 2, but its steps make 1; points 1
            "s": {"build": [{"ring": {"count": 12, "radius": 5}}, {"line": {"from": [0, 0], "to": [9, 0], "count": 18}}], "pixels": 40} ~ "pixels" of shape "s" is 40, but its steps make 30; ring 12, line 18
            "s": {"build": [{"points": [[0, 0]]}], "pixels": 0} ~ "pixels" of shape "s" is 0; allowed: a whole number from 1 to 1000000
            "s": {"build": [{"points": [[0, 0]]}], "along": "wire"} ~ "along" of shape "s" is for a drawing; name an SVG file in "pixels"
            "s": {"build": []}                              ~ "build" of shape "s" is empty; put steps in it
            "s": {"build": {"ring": {}}}                    ~ "build" of shape "s" must be a list [ ], not an object
            "s": []                                         ~ shape "s" must be an object { }, not a list; its fields are build, pixels, along, parts
            "s": {"build": [{"points": [[0, 0]]}], "parts": []} ~ "parts" of shape "s" must be an object { }, not a list
            "s": {"build": [{"points": [[0, 0]]}], "part": {}} ~ shape "s" has no field "part"; did you mean "parts"?
            "s/2": {"build": [{"points": [[0, 0]]}]}        ~ the shape name "s/2" holds /, which is not allowed in names
            """)
    void teachesWhatIsWrongWithAShape(String shape, String expected) {
        String json = Displays.json(shape + ", " + DOT, PROP);
        List<String> found = problems(json);
        assertThat(found.get(0)).endsWith(": error: " + expected);
        assertThat(found.subList(1, found.size()))
                .allSatisfy(line -> assertThat(line).startsWith("f.csv:"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '`', textBlock = """
            {"shape": "dot", "at": [0, 0]}                      ~ prop 2 lacks the field "name"
            {"name": "e", "at": [0, 0]}                         ~ prop "e" lacks the field "shape"
            {"name": "e", "shape": "dot"}                       ~ prop "e" lacks the field "at"
            {"name": "e", "shape": "dto", "at": [0, 0]}         ~ there is no shape "dto"; did you mean "dot"?
            {"name": "e", "shape": "fountain", "at": [0, 0]}    ~ there is no shape "fountain"; allowed: dot
            {"name": "d", "shape": "dot", "at": [0, 0]}         ~ two props are called "d"; the first stands at garden.json:1:100
            {"name": "e*", "shape": "dot", "at": [0, 0]}        ~ the prop name "e*" holds *, which is not allowed in names
            {"name": "", "shape": "dot", "at": [0, 0]}          ~ the prop name "" is empty
            {"name": 7, "shape": "dot", "at": [0, 0]}           ~ "name" of prop 2 must be a text, not the number 7; write "7" in quotes
            {"name": "e", "shape": "dot", "at": [0]}            ~ "at" of prop "e" has 1 item; allowed: 2 or 3 numbers, [x, y] or [x, y, z]
            {"name": "e", "shape": "dot", "at": []}             ~ "at" of prop "e" has 0 items; allowed: 2 or 3 numbers, [x, y] or [x, y, z]
            {"name": "e", "shape": "dot", "at": 5}              ~ "at" of prop "e" must be a list [ ], not the number 5; put it in brackets: [ ]
            {"name": "e", "shape": "dot", "at": [0, 2e9]}       ~ y in "at" of prop "e" is 2e9; allowed: a number from -1000000000 to 1000000000
            {"name": "e", "shape": "dot", "at": [0, 1e400]}     ~ 1e400 is too large for a number
            {"name": "e", "shape": "dot", "at": [0, 0], "mirror": "left"} ~ "mirror" of prop "e" is "left"; allowed: x, y
            {"name": "e", "shape": "dot", "at": [0, 0], "mirror": true} ~ "mirror" of prop "e" must be a text, not true; allowed: x, y
            {"name": "e", "shape": "dot", "at": [0, 0], "scale": 0} ~ "scale" of prop "e" is 0; allowed: a number from 0.001 to 1000
            {"name": "e", "shape": "dot", "at": [0, 0], "scale": -1} ~ "scale" of prop "e" is -1; allowed: a number from 0.001 to 1000
            {"name": "e", "shape": "dot", "at": [0, 0], "turn": "90"} ~ "turn" of prop "e" must be a number, not the text "90"; write 90 without quotes
            {"name": "e", "shape": "dot", "at": [0, 0], "reverse": 1} ~ "reverse" of prop "e" must be true or false, not the number 1
            {"name": "e", "shape": "dot", "at": [0, 0], "trun": 90} ~ prop "e" has no field "trun"; did you mean "turn"?
            "e"                                                 ~ prop 2 must be an object { }, not the text "e"
            """)
    void teachesWhatIsWrongWithAProp(String prop, String expected) {
        String json = Displays.json(DOT, PROP + ", " + prop);
        assertThat(problems(json)).singleElement().asString().contains(": error: " + expected);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '`', textBlock = """
            {"shapes": {}, "props": []}                           ~ the display lacks the field "duskloom"; add "duskloom": "display/1"
            {"duskloom": "display/2", "shapes": {}, "props": []}  ~ "duskloom" of the display is "display/2"; this version reads "duskloom": "display/1"
            {"duskloom": "timeline/1", "shapes": {}, "props": []} ~ "duskloom" of the display is "timeline/1"; this version reads "duskloom": "display/1"
            {"duskloom": "display/1", "props": []}                ~ the display lacks the field "shapes"
            {"duskloom": "display/1", "shapes": {}}               ~ the display lacks the field "props"
            {"duskloom": "display/1", "shapes": {}, "props": []}  ~ "props" of the display is empty; put one prop in it at least
            {"duskloom": "display/1", "shapes": [], "props": []}  ~ "shapes" of the display must be an object { }, not a list
            {"duskloom": "display/1", "shapes": {}, "props": {}}  ~ "props" of the display must be a list [ ], not an object
            {"duskloom": "display/1", "shapes": {}, "props": [], "units": "ft"} ~ "units" of the display is "ft"; allowed: mm, cm, m, in
            {"duskloom": "display/1", "shapes": {}, "props": [], "unit": "m"} ~ the display has no field "unit"; did you mean "units"?
            []                                                    ~ the display must be an object { }, not a list
            """)
    void teachesWhatIsWrongWithTheWhole(String json, String expected) {
        assertThat(problems(json)).anySatisfy(line -> assertThat(line).endsWith(": error: " + expected));
    }

    @Test
    void reportsAllProblemsInOneRun() {
        List<String> found = problems("""
                {
                  "duskloom": "display/1",
                  "shapes": {
                    "daisy": {"build": [
                      {"ring": {"count": 0, "radius": 0}, "part": "rim"},
                      {"wheel": {}}
                    ]},
                    "dot": {"build": [{"points": [[0, 0]], "part": "eye"}]}
                  },
                  "props": [
                    {"name": "d1", "shape": "daisy", "at": [0, 0]},
                    {"name": "d2", "shape": "dasy", "at": [0]},
                    {"name": "lamp", "shape": "dot", "at": [0, 0]}
                  ],
                  "groups": {
                    "rims": ["d*/rim", "d1/petals/3"],
                    "eyes": ["lamp/eyes"],
                    "all": ["rims", "lmap"]
                  }
                }
                """);
        assertThat(found)
                .extracting(line -> line.replaceAll("; .*", ""))
                .containsExactly(
                        "garden.json:5:26: error: \"count\" of \"ring\" is 0",
                        "garden.json:5:39: error: \"radius\" of \"ring\" is 0",
                        "garden.json:6:8: error: there is no step \"wheel\"",
                        "garden.json:12:29: error: there is no shape \"dasy\"",
                        "garden.json:12:43: error: \"at\" of prop \"d2\" has 1 item",
                        "garden.json:17:14: error: \"lamp\" has no part \"eyes\"",
                        "garden.json:18:21: error: there is no prop and no group \"lmap\"");
    }

    @Test
    void countsPropsWithoutANameByTheirPlaceInTheList() {
        String json = Displays.json(DOT, "7, {\"shape\": \"dot\", \"at\": [0, 0]}, " + PROP);
        assertThat(problems(json))
                .extracting(line -> line.replaceAll("^.*error: ", ""))
                .containsExactly("prop 1 must be an object { }, not the number 7", "prop 2 lacks the field \"name\"");
    }

    @Test
    void refusesTooManyPixelsInAll() {
        String shapes = "\"s\": {\"build\": [{\"ring\": {\"count\": 600000, \"radius\": 1}}]}";
        String props =
                "{\"name\": \"a\", \"shape\": \"s\", \"at\": [0, 0]}, {\"name\": \"b\", \"shape\": \"s\", \"at\": [0, 0]}";
        assertOne(
                Displays.json(shapes, props),
                "with prop \"b\" the display has more than 1000000 pixels; split the display into several");
        Problems more = new Problems();
        Displays.read(Displays.json(shapes + ", " + shapes.replace("\"s\"", "\"t\""), PROP), Map.of(), more);
        assertThat(Inputs.shown(more).get(0)).contains("the shapes of the display have more than 1000000 pixels");
    }

    @Test
    void refusesPixelsBeyondWhatAMapHolds() {
        String shapes = "\"s\": {\"build\": [{\"points\": [[1e9, 0]]}]}";
        assertOne(
                Displays.json(shapes, "{\"name\": \"a\", \"shape\": \"s\", \"at\": [0, 0], \"scale\": 2}"),
                "a pixel of prop \"a\" hangs beyond 1000000000; check \"at\" and \"scale\", or choose a larger unit");
    }

    @Test
    void reportsWhatIsWrongInTheFileOfAShape() {
        String json = Displays.json(
                "\"s\": {\"pixels\": \"s.csv\", \"parts\": {\"x\": \"1-9\"}}",
                "{\"name\": \"a\", \"shape\": \"s\", \"at\": [0, 0]}");
        Optional<Display> display = Displays.read(json, Map.of("s.csv", "pixel,x,y\n1,0,0\n1,5,0\n2,a,0\n"), problems);
        assertThat(display).isEmpty();
        assertThat(Inputs.shown(problems))
                .extracting(line -> line.replaceAll("; .*", ""))
                .containsExactly("s.csv:3:1: error: pixel 1 of \"s\" stands twice", "s.csv:4:3: error: \"x\" is \"a\"");
    }

    @Test
    void refusesToRunWithOtherArithmetic() {
        System.setProperty("joml.sinLookup", "true");
        try {
            assertOne(
                    Displays.json(DOT, PROP),
                    "the Java property joml.sinLookup is set, with which props are placed differently;"
                            + " run without -Djoml.sinLookup");
        } finally {
            System.clearProperty("joml.sinLookup");
        }
    }

    /** Nobody knows how many pixels a prop has whose shape is wrong: what hangs on that is not judged, all else is. */
    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '`', textBlock = """
            "6 cm" ~ hoop  ~                                ~ "radius" of "ring" must be a number
            6      ~ hoops ~                                ~ there is no shape "hoops"; did you mean "hoop"?
            6      ~ hoops ~ "groups": {"all": ["h", "d"]}, ~ there is no shape "hoops"; did you mean "hoop"?
            """)
    void countsOnAChainAreNotJudgedWhereAShapeIsWrong(String radius, String used, String groups, String expected) {
        String json = Displays.json(
                DOT + ", \"hoop\": {\"build\": [{\"ring\": {\"count\": 9, \"radius\": " + radius + "}}]}",
                PROP + ", {\"name\": \"h\", \"shape\": \"" + used + "\", \"at\": [0, 0]}");
        json = json.substring(0, json.length() - 1) + ", " + (groups == null ? "" : groups) + """
                "ports": [{"name": "high", "chain": ["d", "h"], "line": {"awg": 99}},
                 {"name": "far", "chain": [{"skip": 1}, "h/petal"], "universe": 20},
                 {"name": "part", "chain": ["h/petal"], "universe": 25, "line": {"awg": 20}},
                 {"name": "low", "chain": [{"skip": 1}], "universe": 30}],
                 "supplies": [{"name": "s", "volts": 5, "amps": 9, "feeds": [{"port": "high", "at": [1, 11]},
                 {"port": "far", "at": [7]}, {"port": "low", "at": [3]}]}]}""";
        List<String> told = problems(json);
        assertThat(told).anySatisfy(line -> assertThat(line).contains(expected));
        assertThat(told).anySatisfy(line -> assertThat(line).contains("\"awg\" of"));
        assertThat(told).anySatisfy(line -> assertThat(line).contains("chain of port \"low\" has 1 pixel"));
        assertThat(told).hasSize(3);
    }
}

package org.duskloom.engine.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.plan.TestShow;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is told of cues and pixels that stay dark, in shows of ten seconds at 40 frames a second. */
class DarkSearchTest {
    /** Two bows of three pixels and a lamp, with parts that lie in each other. */
    private static final PixelMap MAP = Maps.map("""
            prop,pixel,x,y,part
            a,1,0,0,end
            a,2,1,0,rest/x
            a,3,2,0,rest/y
            b,1,4,0,end
            b,2,5,0,rest/x
            b,3,6,0,rest/y
            lamp,1,9,0,
            """);

    private static final String LIT = "{\"on\": \"*\", \"effect\": \"light\", \"for\": \"1s\"}";

    @Test
    void hasNothingToSayOfAShowThatIsSeenWhole() {
        assertThat(warnings(LIT)).isEmpty();
        assertThat(warnings("{\"on\": \"*\", \"effect\": \"weave\", \"for\": \"1s\"}"))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\0', textBlock = """
            "with": {"a": 0}
            "opacity": 0
            "opacity": 0.0001
            "opacity": {"keys": [["5s", 0], ["6s", 1]]}
            """)
    void tellsOfCuesThatPaintNothing(String fields) {
        assertThat(warnings(LIT + ",\n{\"on\": \"a\", \"effect\": \"light\", \"at\": \"2s\", \"for\": \"1s\", " + fields
                        + "}"))
                .containsExactly("show.json:4:1: warning: the cue paints nothing in all of its 40 frames;"
                        + " look at its opacity, its fades and the alpha of its colours");
    }

    /** The least light that is seen: the code 1 begins at half of 1/255 over 12.92, about 0.00015. */
    @Test
    void takesTheFaintestCodeForLight() {
        String cue = "{\"on\": \"*\", \"effect\": \"light\", \"for\": \"1s\", \"opacity\": %s}";
        assertThat(warnings(cue.formatted("0.0005"))).isEmpty();
        assertThat(warnings(cue.formatted("0.0003"))).as("code 1").isEmpty();
        assertThat(warnings(cue.formatted("0.00015"))).anyMatch(line -> line.contains("paints nothing"));
    }

    @Test
    void tellsOfMembersThatACueNeverLights() {
        // Of a canvas round all, "place" is red from left to right: black where x is least, and so is all with alpha 0
        // there.
        assertThat(
                        warnings(
                                LIT
                                        + ",\n{\"on\": [\"a\", \"lamp\", \"b/end\"], \"effect\": \"weave\", \"at\": \"2s\", \"for\": \"50ms\"}"))
                .isEmpty();
        assertThat(
                        warnings(
                                LIT
                                        + ",\n{\"on\": [\"a/end\", \"b\", \"lamp\"], \"effect\": \"edge\", \"at\": \"2s\", \"for\": \"1s\"}"))
                .containsExactly(
                        "show.json:4:1: warning: 2 of the 3 members get no light in all of its 40 frames: \"b\", \"lamp\";"
                                + " leave them out of \"on\", or change what the effect leaves dark");
    }

    /** A member whose stagger starts after the end of the cue is told of when the show is read, and not again. */
    @Test
    void leavesMembersThatStartTooLateToOthers() {
        assertThat(warnings(LIT
                        + ",\n{\"on\": [\"a\", \"b\", \"lamp\"], \"spread\": \"each\", \"stagger\": \"500ms\", \"effect\": \"light\","
                        + " \"at\": \"2s\", \"for\": \"1s\"}"))
                .isEmpty();
    }

    @Test
    void tellsOfCuesThatAreHidden() {
        String under = "{\"on\": \"a\", \"effect\": \"light\", \"for\": \"1s\", \"with\": {\"r\": 0.5}},\n";
        String hidden = "show.json:3:1: warning: the cue is hidden by the cue at show.json:4:1 in all of its 40 frames;"
                + " move it over that, or give that one a \"blend\" such as \"screen\"";
        assertThat(warnings(under + LIT)).containsExactly(hidden);
        assertThat(warnings(under + LIT.replace("}", ", \"opacity\": 0.9}"))).isEmpty();
        assertThat(warnings(under + LIT.replace("}", ", \"blend\": \"multiply\"}")))
                .isEmpty();
        assertThat(warnings(under.replace("\"1s\"", "\"1050ms\"") + LIT)).isEmpty();
        assertThat(warnings(under.replace("},\n", "}]}, {\"cues\": [\n") + LIT)).containsExactly(hidden);
        assertThat(warnings(under.replace("},\n", "}]}, {\"mask\": true, \"cues\": [\n")
                        + LIT.replace("\"for\"", "\"with\": {\"r\": 0, \"g\": 0, \"b\": 0}, \"for\"")
                        + "]}, {\"cues\": [\n{\"on\": \"*\", \"effect\": \"light\", \"at\": \"2s\"}"))
                .containsExactly(hidden);
    }

    /** Nothing is painted for want of work: three cues are taken for seen, two of which are not. */
    @Test
    void tellsOfCuesThatWereNotAsked() {
        TestShow show = TestShow.of(MAP, "\"layers\": [{\"cues\": [\n" + LIT + ",\n" + LIT + ",\n" + LIT + "]}]");
        Problems problems = new Problems();
        DarkSearch.warn(show.plan(), MAP, Location.ofFile("show.json"), problems, (done, all) -> {}, 0, 1);
        assertThat(Inputs.shown(problems))
                .containsExactly(
                        "show.json:3:1: warning: so many cues play at once that it was not found out whether this"
                                + " one is hidden, nor of 2 other cues; it is no error; look at a strip of these moments");
        assertThat(warnings(LIT + ",\n" + LIT + ",\n" + LIT)).noneMatch(warning -> warning.contains("so many"));
    }

    /** Two that cover it together, each one half. */
    @Test
    void tellsOfCuesThatSeveralHide() {
        assertThat(warnings("{\"on\": \"*\", \"effect\": \"light\", \"for\": \"1s\", \"with\": {\"r\": 0.5}},\n"
                        + "{\"on\": \"a\", \"effect\": \"light\", \"for\": \"1s\"},\n"
                        + "{\"on\": [\"b\", \"lamp\"], \"effect\": \"light\", \"for\": \"1s\"}"))
                .containsExactly(
                        "show.json:3:1: warning: the cue is hidden by the cues over it in all of its 40 frames;"
                                + " move it over that, or give that one a \"blend\" such as \"screen\"");
    }

    /** One hides its first half, one its second: neither is told of alone. */
    @Test
    void namesACueThatHidesAnotherOnlyIfItDoesSoThroughout() {
        assertThat(warnings("{\"on\": \"*\", \"effect\": \"light\", \"for\": \"2s\", \"with\": {\"r\": 0.5}},\n" + LIT
                        + ",\n" + LIT.replace("\"for\"", "\"at\": \"1s\", \"for\"")))
                .containsExactly(
                        "show.json:3:1: warning: the cue is hidden by the cues over it in all of its 80 frames;"
                                + " move it over that, or give that one a \"blend\" such as \"screen\"");
    }

    /** A scene that is a mask here and gives light there: its cue is looked at as both. */
    @Test
    void tellsMasksFromLightOfTheSameCue() {
        TestShow show = TestShow.of(MAP, """
                "scenes": {"glow": {"length": "4s", "layers": [{"cues": [
                {"on": "*", "effect": "light", "with": {"r": 0.5}}]}]}},
                "layers": [{"cues": [{"on": "a/end", "effect": "light"}]}, {"mask": true, "cues": [{"scene": "glow"}]},
                {"cues": [{"scene": "glow", "at": "5s", "opacity": {"keys": [["101f", 0], ["102f", 1], ["103f", 0]]}}]}]""");
        assertThat(warnings(show)).isEmpty();
    }

    @Test
    void tellsOfCuesThatChangeNothing() {
        assertThat(warnings(LIT + ",\n{\"on\": \"a\", \"effect\": \"light\", \"at\": \"2s\", \"for\": \"1s\","
                        + " \"with\": {\"r\": 0, \"g\": 0, \"b\": 0}}"))
                .containsExactly("show.json:4:1: warning: the cue changes nothing in all of its 40 frames;"
                        + " it paints black where it is dark, or what is there without it");
        assertThat(warnings(LIT + ",\n{\"on\": \"a\", \"effect\": \"light\", \"at\": \"500ms\", \"for\": \"1s\","
                        + " \"with\": {\"r\": 0, \"g\": 0, \"b\": 0}}"))
                .isEmpty();
    }

    /** All plays of a cue are one: it is enough that one of them is seen. */
    @Test
    void takesAllPlaysOfACueTogether() {
        String repeated =
                "{\"on\": \"*\", \"effect\": \"light\", \"for\": \"1s\", \"with\": {\"r\": 0, \"g\": 0, \"b\": %s},"
                        + " \"repeat\": {\"count\": 3, \"change\": {\"b\": 0.5}}}";
        assertThat(warnings(repeated.formatted("0"))).isEmpty();
        assertThat(warnings(
                        "{\"on\": \"*\", \"effect\": \"light\", \"with\": {\"a\": 0}, \"for\": \"1s\", \"repeat\": 3}"))
                .contains("show.json:3:1: warning: the cue paints nothing in all of its 120 frames;"
                        + " look at its opacity, its fades and the alpha of its colours");
    }

    /** All plays of a scene are one, too: its cue is told of once, if nothing is seen of it in any. */
    @ParameterizedTest
    @CsvSource({"500ms, 0", "2500ms, 1"})
    void takesAllPlaysOfASceneTogether(String until, int hidden) {
        TestShow show = TestShow.of(MAP, """
                "scenes": {"glow": {"length": "1s", "layers": [{"cues": [
                {"on": "a", "effect": "light", "with": {"r": 0.5}}]}]}},
                "layers": [{"cues": [{"scene": "glow", "at": "500ms"}, {"scene": "glow", "at": "1500ms", "opacity": 0.5}]},
                 {"cues": [
                {"on": "*", "effect": "light", "until": "%s"}]}]""".formatted(until));
        String line = "show.json:3:1: warning: the cue is hidden by the cue at show.json:6:1 in all of its 80 frames;"
                + " move it over that, or give that one a \"blend\" such as \"screen\"";
        assertThat(warnings(show)).isEqualTo(hidden == 0 ? List.of() : List.of(line));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\0', textBlock = """
            "a", "b"                        | "lamp"
            "lamp"                          | "a", "b"
            "a", "lamp", "b/rest"           | the part "end" of "b"
            "*/end", "lamp"                 | the part "rest" of "a", "b"
            "a/rest/x", "b", "lamp"         | the parts "end", "rest/y" of "a"
            """)
    void tellsOfPixelsThatNoCueLights(String on, String dark) {
        assertThat(warnings("{\"on\": [" + on + "], \"effect\": \"light\", \"for\": \"1s\"}"))
                .containsExactly("show.json:1:40: warning: no cue ever lights " + dark);
    }

    @Test
    void countsPixelsThatAreInNoPart() {
        PixelMap bare = Maps.map("prop,pixel,x,y,part\n"
                + IntStream.rangeClosed(1, 20)
                        .mapToObj(i -> "row," + i + "," + i + ",0," + (i % 3 == 0 || i == 1 ? "" : "some"))
                        .collect(Collectors.joining("\n")));
        assertThat(warnings(bare, "{\"on\": \"row/some\", \"effect\": \"light\", \"for\": \"1s\"}"))
                .containsExactly(
                        "show.json:1:40: warning: no cue is played on 7 pixels (1, 3, 6, 9, 12, 15, ...) of \"row\"");
    }

    /** Between what an effect paints it may be dark; whole parts are told of. */
    @Test
    void passesOverSinglePixelsThatACueIsPlayedOn() {
        PixelMap row =
                Maps.map("prop,pixel,x,y,part\nrow,1,1,0,\nrow,2,2,0,\nrow,3,3,0,\nrow,4,4,0,tail\nrow,5,5,0,tail\n");
        assertThat(warnings(row, "{\"on\": \"row\", \"effect\": \"edge\", \"for\": \"1s\"}"))
                .containsExactly("show.json:1:40: warning: no cue ever lights the part \"tail\" of \"row\"");
    }

    /** Where props differ, one line sums them up. */
    @Test
    void sumsUpWhatIsDarkHereAndThere() {
        StringBuilder csv = new StringBuilder("prop,pixel,x,y,part\n");
        for (int prop = 1; prop <= 6; prop++) {
            for (int pixel = 1; pixel <= 9; pixel++) {
                csv.append("p%d,%d,%d,%d,%s%n".formatted(prop, pixel, pixel, prop, pixel > prop ? "some" : ""));
            }
        }
        assertThat(warnings(Maps.map(csv.toString()), "{\"on\": \"*/some\", \"effect\": \"light\", \"for\": \"1s\"}"))
                .containsExactly("show.json:1:40: warning: no cue is played on 21 pixels here and there:"
                        + " 1 of \"p1\", 2 of \"p2\", 3 of \"p3\" and some of 3 more props");
    }

    /** A mask lights nothing, and is not asked to. */
    @Test
    void takesNoMaskForLight() {
        assertThat(warnings("{\"on\": \"a\", \"effect\": \"light\", \"for\": \"1s\"}]}, {\"mask\": true, \"cues\": [\n"
                        + "{\"on\": [\"a\", \"b\"], \"effect\": \"edge\", \"for\": \"1s\"}"))
                .containsExactly("show.json:1:40: warning: no cue ever lights \"b\", \"lamp\"");
    }

    /**
     * Light that comes up in one frame of the 400 of the show: it is found, as all frames are looked at before anything
     * is called dark.
     */
    @Test
    void findsLightOfOneFrame() {
        for (int frame : new int[] {0, 57, 201, 399}) {
            String flash = "{\"on\": \"*\", \"effect\": \"light\", \"opacity\": {\"keys\": [[\""
                    + Math.max(0, frame - 1) + "f\", 0], [\"" + frame + "f\", 1], [\"" + (frame + 1) + "f\", 0]]}}";
            assertThat(warnings(flash)).as("%s", frame).isEmpty();
        }
    }

    /** Of a show of an hour a thousand frames are looked at, and that is said. */
    @Test
    void saysWhenNotEveryFrameWasLookedAt() {
        TestShow show = new TestShow(MAP, """
                {"duskloom": "timeline/1", "map": "map.csv", "rate": 40, "length": "1:00:00", "layers": [{"cues": [
                {"on": "*", "effect": "light", "with": {"a": 0}}]}]}""", EdgeEffect.amongPlainEffects());
        assertThat(warnings(show))
                .containsExactly(
                        "show.json:1:40: warning: no cue ever lights \"a\", \"b\", \"lamp\"; not every frame was looked at",
                        "show.json:2:1: warning: the cue paints nothing in all 1000 frames looked at, of its 144000;"
                                + " look at its opacity, its fades and the alpha of its colours");
    }

    @Test
    void tellsHowFarItIs() {
        List<String> told = new ArrayList<>();
        TestShow show = TestShow.of(MAP, "\"layers\": [{\"cues\": [\n" + LIT + ", " + LIT + "]}]");
        DarkSearch.warn(
                show.plan(),
                MAP,
                Location.ofFile("show.json"),
                new Problems(),
                (done, all) -> told.add(done + "/" + all));
        assertThat(told).containsExactly("40/80", "80/80");
    }

    @Test
    void hasNothingToSayOfCuesWithoutFramesButOfAllPixels() {
        assertThat(warnings("{\"on\": \"*\", \"effect\": \"light\", \"at\": \"1001ms\", \"for\": \"1ms\"}"))
                .containsExactly("show.json:1:40: warning: no cue ever lights \"a\", \"b\", \"lamp\"");
    }

    private static List<String> warnings(String cues) {
        return warnings(MAP, cues);
    }

    private static List<String> warnings(PixelMap map, String cues) {
        return warnings(new TestShow(
                map,
                TestShow.of(map, "\"layers\": [{\"cues\": [\n" + cues + "]}]").timeline(),
                EdgeEffect.amongPlainEffects()));
    }

    private static List<String> warnings(TestShow show) {
        Problems problems = new Problems();
        Location map = new Location("show.json", 1, 40);
        DarkSearch.warn(show.plan(), show.map(), map, problems, (done, all) -> {});
        return Inputs.shown(problems);
    }
}

package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.duskloom.engine.color.BlendMode;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.timeline.Cases;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Scenes are resolved to planned cues. The cues of the show stand on line 3 from column 1 on. */
class ScenesTest {
    private static final PixelMap MAP = Maps.map("""
            prop,pixel,x,y,part
            daisy-1,1,0,0,rim
            daisy-1,2,1,0,
            daisy-2,1,2,0,rim
            daisy-2,2,3,0,
            pond,1,4,0,
            """);

    private static TestShow show(String scenes, String cues) {
        return TestShow.of(
                MAP,
                "\"groups\": {\"daisies\": [\"daisy-*\"]}, \"layers\": [{\"cues\": [\n" + cues + "\n]}],\n\"scenes\": {"
                        + scenes + "}");
    }

    private static String scene(String name, String fields, String cues) {
        return "\"" + name + "\": {\"length\": \"4s\"" + fields + ", \"layers\": [{\"cues\": [" + cues + "]}]}";
    }

    private static List<PlannedCue> cues(TestShow show) {
        return show.plan().layers().get(0).cues();
    }

    private static String spans(List<PlannedCue> cues) {
        return cues.stream()
                .map(cue -> cue.firstFrame() + ".." + cue.endFrameExclusive())
                .collect(Collectors.joining(" "));
    }

    /** 40 frames a second; the scene holds a cue from 1 s to 3 s. Worked out on paper. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "at": "2s"                                               | 120..200
            "at": "2s", "for": "2s"                                  | 120..160
            "at": "2s", "for": "1s"                                  | ''
            "at": "2s", "for": "7s"                                  | 120..200
            "repeat": {"count": 2, "every": "4500ms"}                | 40..120 220..300
            "repeat": {"until": "6s"}                                | 40..120 200..240
            """)
    void areCutWhereTheirCueEnds(String fields, String spans) {
        String bloom = scene("bloom", "", "{\"at\": \"1s\", \"for\": \"2s\", \"on\": \"pond\", \"effect\": \"clock\"}");
        assertThat(spans(cues(show(bloom, "{\"scene\": \"bloom\", " + fields + "}"))))
                .isEqualTo(spans);
    }

    /** The clock of a cue that is cut goes on by its own end. */
    @Test
    void keepTheClocksOfTheirCues() {
        String bloom = scene("bloom", "", "{\"at\": \"1s\", \"for\": \"2s\", \"on\": \"pond\", \"effect\": \"clock\"}");
        PlannedCue cue = cues(show(bloom, "{\"scene\": \"bloom\", \"at\": \"2s\", \"for\": \"1500ms\"}"))
                .get(0);
        assertThat(cue.lengthSeconds()).isEqualTo(2);
        assertThat(cue.canvas(0).secondsAt(130)).isEqualTo(0.25);
    }

    /** Three scenes in each other, each a second later than the one around it. */
    @Test
    void nest() {
        String inner =
                scene("inner", "", "{\"at\": \"1s\", \"for\": \"1s\", \"on\": \"leaf/rim\", \"effect\": \"clock\"}");
        String middle = scene(
                "middle",
                "",
                "{\"at\": \"1s\", \"until\": \"4s\", \"scene\": \"inner\", \"on\": {\"leaf\": \"flower\"}}");
        String outer = scene("outer", "", "{\"at\": \"1s\", \"until\": \"4s\", \"scene\": \"middle\"}");
        List<PlannedCue> cues = cues(show(
                inner + ", " + outer + ", " + middle,
                "{\"at\": \"500ms\", \"scene\": \"outer\", \"on\": {\"flower\": [\"daisy-2\", \"daisy-1\"]}}"));
        assertThat(spans(cues)).isEqualTo("140..180");
        assertThat(cues.get(0).within())
                .extracting(cue -> cue.scene().value())
                .containsExactly("outer", "middle", "inner");
        assertThat(cues.get(0).canvas(0).runs().length(0)).isEqualTo(1);
        assertThat(cues.get(0).groupCount()).isZero();
    }

    @Test
    void playOnWhatTheirNamesStandFor() {
        String bloom = scene(
                "bloom",
                "",
                "{\"on\": [\"flower/rim\", \"daisies\", \"pond\"], \"spread\": \"each\", \"effect\": \"probe\"}");
        Probe probe = new Probe();
        show(
                        bloom,
                        "{\"scene\": \"bloom\", \"on\": {\"flower\": [\"daisy-2\", \"daisy-1\"], \"daisies\": \"daisy-2\"}}")
                .with(probe)
                .plan();
        assertThat(probe.canvases.stream()
                        .flatMap(canvas -> IntStream.range(0, canvas.memberCount())
                                .mapToObj(member -> canvas.parts().memberName(member))))
                .containsExactlyInAnyOrder("daisy-2/rim", "daisy-1/rim", "daisy-2", "pond");
    }

    /** Every member plays the scene by itself, a second later than the one before. */
    @Test
    void areStaggeredOverTheMembersOfTheirName() {
        String bloom = scene("bloom", "", "{\"for\": \"1s\", \"on\": \"flower\", \"effect\": \"clock\"}");
        assertThat(
                        spans(
                                cues(
                                        show(
                                                bloom,
                                                "{\"scene\": \"bloom\", \"for\": \"6s\", \"on\": {\"flower\": [\"daisies\", \"pond\"]}, \"stagger\": \"1s\"}"))))
                .isEqualTo("0..40 40..80 80..120");
        assertThat(spans(cues(show(
                        bloom,
                        "{\"scene\": \"bloom\", \"for\": \"6s\", \"on\": {\"flower\": [\"daisies\", \"pond\"]},"
                                + " \"stagger\": {\"by\": \"left\", \"time\": \"3500ms\"}}"))))
                .isEqualTo("140..180 60..100 0..40");
    }

    @Test
    void drawAnewForEveryPlayUnlessTheySaySame() {
        String cue = "{\"on\": \"pond\", \"effect\": \"probe\", \"name\": \"x\"}";
        String plays = "{\"scene\": \"s\", \"for\": \"1s\", \"repeat\": 2}, {\"scene\": \"s\", \"at\": \"5s\"}";
        assertThat(keys(show(scene("s", "", cue), plays))).hasSize(3).doesNotHaveDuplicates();
        assertThat(keys(show(scene("s", ", \"same\": true", cue), plays))).hasSize(1);
        String outer = scene("t", "", "{\"scene\": \"s\"}");
        assertThat(keys(show(scene("s", "", cue) + ", " + outer, plays.replace("\"s\"", "\"t\""))))
                .hasSize(3);
        assertThat(keys(show(scene("s", ", \"same\": true", cue) + ", " + outer, plays.replace("\"s\"", "\"t\""))))
                .hasSize(1);
        assertThat(keys(show(
                        scene("s", "", cue) + ", " + scene("t", ", \"same\": true", "{\"scene\": \"s\"}"),
                        plays.replace("\"s\"", "\"t\""))))
                .hasSize(1);
    }

    /** Each member of a stagger plays the scene for itself, even where all of them light the same pixel. */
    @Test
    void drawAnewForEveryMember() {
        Probe probe = new Probe();
        show(
                        scene("s", "", "{\"on\": [\"pond\", \"flower\"], \"effect\": \"probe\", \"name\": \"x\"}"),
                        "{\"scene\": \"s\", \"on\": {\"flower\": \"daisies\"}, \"stagger\": \"0s\"}")
                .with(probe)
                .plan();
        assertThat(probe.canvases)
                .extracting(canvas -> canvas.pixelKey()[canvas.pixelKey().length - 1])
                .hasSize(2)
                .doesNotHaveDuplicates();
    }

    /** In a scene a blend acts on the scene alone: its lowest cue covers what is under it, from the first frame on. */
    @ParameterizedTest
    @ValueSource(strings = {"1s", "25ms", "1975ms"})
    void keepTheirBlendsToThemselves(String at) {
        PixelMap map = Maps.map("prop,pixel,x,y\npond,1,0,0\ngate,1,1,0\n");
        List<PlannedCue> cues = cues(TestShow.of(map, """
                "scenes": {"s": {"length": "1s", "layers": [{"cues": [
                  {"blend": "screen", "on": "pond", "effect": "clock"}]}]}},
                "layers": [{"cues": [
                  {"at": "%s", "for": "1s", "on": "*", "effect": "clock"},
                  {"at": "1s", "scene": "s"}]}]""".formatted(at)));
        assertThat(cues.get(1).groupCount()).isZero();
        assertThat(cues.get(1).blend()).isEqualTo(BlendMode.NORMAL);
    }

    /** Settings are looked at where nobody plays a scene, and where something else is wrong with a cue. */
    @ParameterizedTest
    @ValueSource(strings = {"", "{\"scene\": \"s\"}"})
    void tellWhatIsWrongWithSettings(String play) {
        String wrong = "\"on\": \"pond\", \"effect\": \"solid\", \"with\": {\"colour\": \"red\"}";
        assertThat(show(scene("s", "", "{" + wrong + "}"), play).problems())
                .anySatisfy(line -> assertThat(line).contains("error: the effect solid has no setting \"colour\""));
        assertThat(show(scene("s", "", "{\"ordr\": \"up\", " + wrong + "}"), play)
                        .problems())
                .anySatisfy(line -> assertThat(line).contains("error: a cue has no field \"ordr\""))
                .anySatisfy(line -> assertThat(line).contains("error: the effect solid has no setting \"colour\""));
    }

    /** A play that has a name keeps its choices when it is moved. */
    @Test
    void keepTheirChoicesByName() {
        String s = scene("s", "", "{\"on\": \"pond\", \"effect\": \"probe\"}");
        assertThat(keys(show(s, "{\"scene\": \"s\", \"name\": \"first\"}")))
                .isEqualTo(keys(show(s, "{\"scene\": \"s\", \"name\": \"first\", \"at\": \"3s\"}")));
    }

    private static List<Integer> keys(TestShow show) {
        Probe probe = new Probe();
        show.with(probe).plan();
        return probe.canvases.stream().map(canvas -> canvas.pixelKey()[0]).toList();
    }

    /** One play and another that is written out have the same fingerprint; an opacity of the whole makes another. */
    @Test
    void haveTheFingerprintsOfTheirCuesWrittenOut() {
        String cue = "\"for\": \"1s\", \"on\": \"pond\", \"effect\": \"clock\"";
        String s = scene("s", "", "{\"at\": \"1s\", " + cue + "}");
        PlannedCue played = cues(show(s, "{\"scene\": \"s\", \"at\": \"2s\"}")).get(0);
        assertThat(played.fingerprint())
                .isEqualTo(cues(show(s, "{\"at\": \"3s\", " + cue + "}")).get(0).fingerprint())
                .isNotEqualTo(cues(show(s, "{\"scene\": \"s\", \"at\": \"2s\", \"opacity\": 0.5}"))
                        .get(0)
                        .fingerprint());
    }

    /** Cues that do not meet take no group; those that do, one only if something acts on the whole. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "opacity": 0.5                              | pond    | pond    | 1s | 0
            "opacity": 0.5                              | pond    | daisies | 0s | 0
            "opacity": 0.5                              | pond    | pond    | 0s | 1
            "opacity": {"keys": [["0s", 0], ["1s", 1]]} | pond    | pond    | 0s | 1
            "fade": {"in": "1s"}                        | pond    | pond    | 0s | 1
            "blend": "screen"                           | pond    | pond    | 0s | 1
            "blend": "screen"                           | pond    | daisies | 0s | 0
            "at": "0s"                                  | daisies | daisy-1 | 0s | 0
            """)
    void areGroupsOnlyWhereTheyMust(String fields, String first, String second, String at, int groups) {
        String s = scene(
                "s",
                "",
                "{\"for\": \"1s\", \"on\": \"%s\", \"effect\": \"clock\"}, {\"at\": \"%s\", \"for\": \"1s\", \"on\": \"%s\", \"effect\": \"clock\"}"
                        .formatted(first, at, second));
        List<PlannedCue> cues =
                cues(show(s, "{\"on\": \"pond\", \"effect\": \"clock\"}, {\"scene\": \"s\", " + fields + "}"));
        assertThat(cues.get(0).groupCount()).isZero();
        assertThat(cues.get(1).groupCount()).isEqualTo(groups);
        assertThat(cues.get(2).groupCount()).isEqualTo(groups);
    }

    static Stream<Object[]> faults() {
        return Cases.of("""
                {"scene": "s"}
                    show.json:3:11: error: the scene "s" plays on "flower", which is no prop and no group; say what it stands for, such as "on": {"flower": …}, or correct the name at show.json:5:62
                {"scene": "s", "on": {"flower": "dasies"}}
                    show.json:3:33: error: there is no prop and no group "dasies"; did you mean "daisies"?
                {"scene": "s", "on": {"flower": "pond"}}
                    show.json:5:62: error: nothing in "flower" has a part "rim"; no prop there has parts
                {"scene": "s", "on": {"flower": "daisy-*/rim"}}
                    show.json:5:62: error: nothing in "flower" has a part "rim"; no part there has parts in it
                {"scene": "s", "on": {"flower": "daisies"}, "opacity": 2}
                    show.json:3:56: error: "opacity" of a cue is 2; allowed: a number from 0 to 1
                {"scene": "s", "on": {"flower": "daisies"}, "stagger": "1s"}
                    show.json:3:56: warning: members that start later are cut when the cue ends, the last one 1s before its end; let the cue last that much longer: "for": "5s"
                {"scene": "s", "on": {"flower": "daisies"}, "stagger": "4s"}
                    show.json:3:56: warning: 1 of the members would start after the cue has ended: "daisy-2"; shorten "stagger" or lengthen the cue
                {"scene": "s", "for": "6s", "on": {"flower": "daisies"}, "stagger": "6500ms"}
                    show.json:3:69: warning: 1 of the members would start after the cue has ended: "daisy-2"; shorten "stagger" or lengthen the cue
                {"scene": "s", "for": "6s", "on": {"flower": "daisies"}, "stagger": "1s", "fade": {"out": "1s"}}
                    show.json:3:1: warning: with "stagger", members that start later are cut before their fade out ends: the last starts 1s after the first; leave "out" away and let "opacity" fall by keys, which count from the start of each member; let the cue last 1s longer than the last key
                """);
    }

    @ParameterizedTest
    @MethodSource("faults")
    void teachWhatIsWrong(String cue, List<String> problems) {
        String s = scene("s", "", "{\"on\": \"flower/rim\", \"effect\": \"clock\"}");
        assertThat(show(s, cue).problems()).isEqualTo(problems);
    }

    /** What is wrong in a scene is said once, however often it is played, and also if it is never played. */
    @Test
    void sayOnceWhatIsWrongInThem() {
        String wrong = "{\"on\": \"flower\", \"effect\": \"clokc\", \"opacity\": 3}";
        String expected = "there is no effect \"clokc\"; did you mean \"clock\"?";
        assertThat(show(scene("s", "", wrong), "{\"scene\": \"s\", \"on\": {\"flower\": \"pond\"}, \"repeat\": 2}")
                        .problems())
                .filteredOn(problem -> problem.contains("error"))
                .hasSize(2)
                .anyMatch(problem -> problem.endsWith(expected));
        assertThat(show(scene("s", "", wrong), "{\"on\": \"pond\", \"effect\": \"clock\"}")
                        .problems())
                .filteredOn(problem -> problem.contains("error"))
                .hasSize(2)
                .anyMatch(problem -> problem.endsWith(expected));
    }

    /** Ten repeats in ten repeats and so on, six deep, would be a million plays. */
    @Test
    void mayNotBePlayedWithoutEnd() {
        StringBuilder scenes = new StringBuilder("\"s0\": {\"length\": \"1s\", \"layers\": []}");
        for (int i = 1; i < 7; i++) {
            scenes.append(", ")
                    .append(scene(
                            "s" + i,
                            "",
                            "{\"scene\": \"s" + (i - 1)
                                    + "\", \"for\": \"1s\", \"repeat\": {\"count\": 10, \"every\": \"1ms\"}}"));
        }
        assertThat(show(scenes.toString(), "{\"scene\": \"s6\"}").problems())
                .singleElement()
                .asString()
                .endsWith(
                        "the scenes of the show play more than 200000 cues; play fewer of them, or repeat them less often");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "stagger": "1s", "fade": {"out": "1s"} | 1
            "stagger": "1s", "fade": {"in": "1s"}  | 0
            "stagger": "0s", "fade": {"out": "1s"} | 0
            "stagger": "9s", "fade": {"out": "1s"}, "for": "5s" | 1
            """)
    void cuesWarnOfFadesThatLateMembersDoNotEnd(String fields, int warnings) {
        assertThat(show("", "{\"on\": \"daisies\", \"spread\": \"each\", \"effect\": \"clock\", " + fields + "}")
                        .problems())
                .filteredOn(problem -> problem.contains("show.json:3:1: warning: with \"stagger\"")
                        || problem.contains("would start after the cue has ended"))
                .hasSize(warnings);
    }
}

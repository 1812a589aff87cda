package org.duskloom.engine.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.time.ExactTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class SceneReaderTest {
    private static final String BLOOM = """
            {"bloom": {"length": "4s", "layers": [{"cues": [
              {"name": "open", "for": "1s", "on": "flower", "effect": "wash"},
              {"at": "@open.end", "on": ["flower/rim", "fence"], "effect": "wash"}]}]}}""".replace("\n", " ");

    /** A timeline of ten seconds; the cues stand on line 2 from column 1 on, the scenes on line 4. */
    private static String show(String scenes, String cues) {
        return "{\"duskloom\": \"timeline/1\", \"map\": \"map.csv\", \"length\": \"10s\", \"layers\": [{\"cues\": [\n"
                + cues + "\n]}], \"scenes\":\n" + scenes + "}";
    }

    @Test
    void hasLayersAndAClockOfItsOwn() {
        Timeline timeline = Timelines.sound(show(BLOOM, "{\"scene\": \"bloom\", \"at\": \"2s\"}"));
        Scene scene = timeline.scenes().find("bloom").orElseThrow();
        assertThat(scene.length()).isEqualTo(ExactTime.ofSeconds(4));
        assertThat(scene.same()).isFalse();
        assertThat(scene.layers().get(0).cues().stream().map(cue -> cue.at() + ".." + cue.end()))
                .containsExactly("0s..1s", "1s..4s");
        assertThat(scene.names().keySet()).containsExactly("flower", "fence");
        assertThat(timeline.layers().get(0).cues()).isEmpty();
    }

    /** It lasts as long as its scene, unless it says otherwise; what follows starts at its end. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "at": "2s"                                | 2s..6s
            "at": "2s", "for": "7s"                   | 2s..9s
            "at": "2s", "until": "3s"                 | 2s..3s
            "repeat": 2                               | 0s..4s 4s..8s
            "for": "3s", "repeat": 3                  | 0s..3s 3s..6s 6s..9s
            "repeat": {"until": "9s", "every": "3s"}  | 0s..4s 3s..7s 6s..9s
            """)
    void isPlayedByCues(String fields, String spans) {
        List<Played> items = Timelines.sound(
                        show(
                                BLOOM,
                                "{" + fields
                                        + ", \"scene\": \"bloom\"}, {\"at\": \"+0s\", \"for\": \"1f\", \"on\": \"x\", \"effect\": \"e\"}"))
                .layers()
                .get(0)
                .items();
        assertThat(items.stream()
                        .limit(items.size() - 1)
                        .map(cue -> cue.at() + ".." + cue.seenUntil())
                        .collect(Collectors.joining(" ")))
                .isEqualTo(spans);
        assertThat(items.get(items.size() - 1).at()).hasToString(spans.substring(spans.lastIndexOf("..") + 2));
    }

    @Test
    void standsForWhatItIsPlayedOn() {
        SceneCue cue = (SceneCue) Timelines.sound(
                        show(
                                BLOOM,
                                "{\"scene\": \"bloom\", \"on\": {\"flower\": \"daisies\", \"fence\": [\"pond\", \"gate\"]},"
                                        + " \"fade\": {\"in\": \"1s\"}, \"opacity\": 0.5, \"blend\": \"screen\", \"name\": \"first\"}"))
                .layers()
                .get(0)
                .items()
                .get(0);
        assertThat(cue.on()).extracting(SceneCue.Instead::name).containsExactly("flower", "fence");
        assertThat(cue.on().get(1).addresses()).extracting(TextNode::value).containsExactly("pond", "gate");
        assertThat(cue.fade().in()).isEqualTo(ExactTime.ofSeconds(1));
        assertThat(cue.blend().word()).isEqualTo("screen");
        assertThat(cue.randomKey()).isEqualTo("cue first");
    }

    static Stream<Object[]> faults() {
        return Cases.of("""
                {"scene": "blom"}
                    show.json:2:11: error: there is no scene "blom"; did you mean "bloom"?
                {"scene": 3}
                    show.json:2:11: error: "scene" of a cue must be a text, not the number 3; write "3" in quotes
                {"scene": "bloom", "at": "7s"}
                    show.json:2:11: error: the cue ends at 11s; the timeline ends at 10s
                {"scene": "bloom", "repeat": 3}
                    show.json:2:30: error: play 3 of the cue ends at 12s; the timeline ends at 10s; "until" instead of "count" cuts the last play
                {"scene": "bloom", "on": "daisies"}
                    show.json:2:26: error: beside "scene", "on" of a cue says what the names in the scene stand for, and is an object, not a text; such as "on": {"flower": "daisies"}
                {"scene": "bloom", "on": {"flwer": "daisies"}}
                    show.json:2:27: error: the scene "bloom" plays on nothing called "flwer"; did you mean "flower"?
                {"scene": "bloom", "on": {"flower": []}}
                    show.json:2:37: error: "flower" in "on" of a cue is empty; name props, parts or groups
                {"scene": "bloom", "on": {"flower": 3}}
                    show.json:2:37: error: "flower" in "on" of a cue must be a text or a list of texts, not the number 3; write "3" in quotes
                {"scene": "bloom", "effect": "wash", "spread": "each", "order": "up"}
                    show.json:2:30: error: a cue with a "scene" has "effect"; that belongs to the cues in the scene
                    show.json:2:48: error: a cue with a "scene" has "spread"; that belongs to the cues in the scene
                    show.json:2:65: error: a cue with a "scene" has "order"; that belongs to the cues in the scene
                {"scene": "bloom", "repeat": {"count": 2, "change": {"phase": 1}}}
                    show.json:2:53: error: a scene has no settings that could change from play to play; leave "change" out
                {"scene": "bloom", "stagger": "1s"}
                    show.json:2:31: error: "stagger" of a scene needs one name in "on"; its members then play the scene one after the other, such as "on": {"flower": "daisies"}
                {"scene": "bloom", "fade": {"in": "3s", "out": "2s"}}
                    show.json:2:28: error: the fades take 5s; the cue lasts 4s
                """);
    }

    @ParameterizedTest
    @MethodSource("faults")
    void cuesTeachWhatIsWrong(String cue, List<String> problems) {
        assertThat(Timelines.problems(show(BLOOM, cue))).isEqualTo(problems);
    }

    static Stream<Object[]> sceneFaults() {
        return Cases.of("""
                []
                    show.json:2:11: error: there is no scene "s"; the timeline has no "scenes"
                    show.json:4:1: error: "scenes" of the timeline must be an object { }, not a list
                {"s": 3}
                    show.json:4:7: error: the scene "s" must be an object { }, not the number 3; its fields are length, same, layers
                {"s": {"layers": []}}
                    show.json:4:7: error: the scene "s" lacks the field "length"
                {"s": {"length": "11s", "layers": []}}
                    show.json:2:11: error: the cue ends at 11s; the timeline ends at 10s
                    show.json:4:18: error: the scene "s" lasts 11s; the timeline ends at 10s
                {"s": {"length": "2s", "layers": [{"cues": [{"at": "1s", "for": "1001ms", "on": "x", "effect": "e"}]}]}}
                    show.json:4:65: error: the cue ends at 2.001s; the scene "s" ends at 2s; without "for" the cue lasts until then
                {"s": {"length": "2s", "layers": [{"cues": [{"at": "-1s", "for": "1s", "on": "x", "effect": "e"}]}]}}
                    show.json:4:52: error: "at" of a cue is 1s before the scene "s" starts; the first cue of a list counts from its start
                {"s": {"length": "2s", "same": 1, "layers": []}}
                    show.json:4:32: error: "same" of the scene "s" must be true or false, not the number 1
                {"s": {"length": "2s", "layers": [{"cues": [{"scene": "s", "for": "1s"}]}]}}
                    show.json:4:55: error: scenes go in a circle: s -> s; take one of them out of the circle
                {"s": {"length": "2s", "layers": [{"cues": [{"scene": "t"}]}]}, "t": {"length": "2s", "layers": [{"cues": [{"scene": "u"}]}]}, "u": {"length": "2s", "layers": [{"cues": [{"scene": "t"}]}]}}
                    show.json:4:181: error: scenes go in a circle: t -> u -> t; take one of them out of the circle
                {"s": {"length": "2s", "layers": [{"cues": [{"on": "x", "effect": "e"}]}]}, "t": {"length": "2s", "layers": [{"cues": []}]}}
                    show.json:4:77: warning: no cue plays the scene "t"
                    show.json:4:110: warning: layer 1 has no cues; remove it, or put cues in it
                """);
    }

    @ParameterizedTest
    @MethodSource("sceneFaults")
    void scenesTeachWhatIsWrong(String scenes, List<String> problems) {
        assertThat(Timelines.problems(show(scenes, "{\"scene\": \"s\"}"))).isEqualTo(problems);
    }

    @Test
    void aSceneMayLastAsLongAsTheTimeline() {
        String whole = "{\"s\": {\"length\": \"10s\", \"layers\": [{\"cues\": [{\"on\": \"x\", \"effect\": \"e\"}]}]}}";
        assertThat(Timelines.problems(show(whole, "{\"scene\": \"s\"}"))).isEmpty();
    }

    /** What else is wrong with a cue is told beside the scene that is not there. */
    @Test
    void fadesAreLookedAtWhereTheSceneIsNotThere() {
        String scenes =
                "{\"bloom\": {\"length\": \"2s\", \"layers\": [{\"cues\": [{\"on\": \"x\", \"effect\": \"e\"}]}]}}";
        String cue = "{\"scene\": \"pond\", \"for\": \"4s\", \"fade\": {\"in\": \"3s\", \"out\": \"2s\"}}";
        assertThat(Timelines.problems(show(scenes, cue)))
                .containsExactly(
                        "show.json:2:11: error: there is no scene \"pond\"; allowed: bloom",
                        "show.json:2:40: error: the fades take 5s; the cue lasts 4s");
    }

    /** The nearest name is told, and a scene that is named so is not called unplayed. */
    @Test
    void aSceneThatIsNotThereIsToldWithTheNearest() {
        String cues = "[{\"cues\": [{\"on\": \"x\", \"effect\": \"e\"}]}]";
        String scenes = "{\"bloom\": {\"length\": \"2s\", \"layers\": " + cues + "}}";
        assertThat(Timelines.problems(show(scenes, "{\"scene\": \"blom\"}")))
                .containsExactly("show.json:2:11: error: there is no scene \"blom\"; did you mean \"bloom\"?");
    }

    /** Nobody knows how long it would be, so nothing that follows on its end is called too late. */
    @Test
    void whatFollowsASceneThatIsNotThereIsNotTooLate() {
        String cues = "[{\"cues\": [{\"on\": \"x\", \"effect\": \"e\"}]}]";
        String scenes = "{\"bloom\": {\"length\": \"2s\", \"layers\": " + cues + "}}";
        String next = ", {\"at\": \"+1s\", \"for\": \"3s\", \"on\": \"x\", \"effect\": \"e\"}";
        assertThat(Timelines.problems(show(scenes, "{\"scene\": \"blom\"}" + next)))
                .containsExactly("show.json:2:11: error: there is no scene \"blom\"; did you mean \"bloom\"?");
        assertThat(Timelines.problems(show(scenes, "{\"scene\": \"blom\", \"repeat\": 2}" + next)))
                .containsExactly("show.json:2:11: error: there is no scene \"blom\"; did you mean \"bloom\"?");
    }

    /** 64 deep is allowed and 65 is not, in whatever order the file has them. */
    @Test
    void mayBeNestedSixtyFourDeep() {
        assertThat(Timelines.problems(show(chain(64), "{\"scene\": \"s0\"}"))).isEmpty();
        assertThat(Timelines.problems(show(chain(65), "{\"scene\": \"s0\"}")))
                .singleElement()
                .asString()
                .contains("error: scenes are nested too deep: s0 -> s1 -> ")
                .endsWith("-> s64; allowed: up to 64");
    }

    private static String chain(int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> "\"s" + i + "\": {\"length\": \"1s\", \"layers\": [{\"cues\": [{"
                        + (i == count - 1 ? "\"on\": \"x\", \"effect\": \"e\"" : "\"scene\": \"s" + (i + 1) + "\"")
                        + "}]}]}")
                .collect(Collectors.joining(",\n", "{", "}"));
    }
}

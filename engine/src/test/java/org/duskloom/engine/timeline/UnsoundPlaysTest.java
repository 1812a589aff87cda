package org.duskloom.engine.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.document.JsonReader;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is still looked at of a cue that has errors, so that one run tells all of them. */
class UnsoundPlaysTest {
    /** Whether its effect is known by name, and whether nothing is wrong that an effect is prepared from. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "on": "x", "effect": "e", "for": "99s"                      | true  | true
            "on": "x", "effect": "e", "fade": {"in": "99s"}             | true  | true
            "on": "x", "effect": "e", "spread": "eech"                  | true  | false
            "on": "x", "effect": "e", "with": []                        | true  | false
            "on": [], "effect": "e"                                     | true  | false
            "on": "x", "effect": "e", "ordr": "up"                      | true  | false
            "on": "x", "effect": 4                                      | false | false
            "on": "x"                                                   | false | false
            """)
    void areCheckedAsFarAsTheyAreRight(String fields, boolean namesEffect, boolean canBePrepared) {
        Layer layer = layer("{" + fields + "}");
        assertThat(layer.items()).isEmpty();
        assertThat(layer.unsound()).singleElement().satisfies(cue -> {
            assertThat(cue.namesEffect()).isEqualTo(namesEffect);
            assertThat(cue.canBePrepared()).isEqualTo(canBePrepared);
            assertThat(cue.standIn().at()).hasToString("0s");
            assertThat(cue.standIn().end()).hasToString("10s");
        });
    }

    /** Each value of a list of changes gets its turn, however few plays there would be. */
    @Test
    void showEveryValueOfARepeat() {
        Layer layer = layer("""
                {"on": "x", "effect": "e", "for": "99s",
                 "repeat": {"count": 2, "change": {"color": ["red", "gold", "blue"]}}}""");
        assertThat(layer.unsound())
                .extracting(cue -> ((TextNode) cue.standIn().with().get(0).value()).value())
                .containsExactly("red", "gold", "blue");
    }

    @Test
    void soundCuesStandApart() {
        Layer layer = layer("{\"on\": \"x\", \"effect\": \"e\"}, {\"on\": \"x\", \"effect\": \"f\", \"for\": \"99s\"}");
        assertThat(layer.cues()).extracting(cue -> cue.effect().value()).containsExactly("e");
        assertThat(layer.unsound())
                .extracting(cue -> cue.standIn().effect().value())
                .containsExactly("f");
    }

    private static Layer layer(String cues) {
        Problems problems = new Problems();
        Layer layer = JsonReader.read(Inputs.source("show.json", Timelines.withCue(cues)), problems)
                .flatMap(root -> TimelineReader.read(root, problems))
                .orElseThrow()
                .layers()
                .get(0);
        assertThat(problems.hasErrors()).isTrue();
        return layer;
    }

    /** What a cue of a scene that has an error is on counts too: that it is told gives rise to no second error. */
    @Test
    void theNamesOfACueWithErrorsAreKnown() {
        assertThat(problemsOfScenes(
                        "\"s\": {\"length\": \"1s\", \"layers\": [{\"cues\": [{\"on\": \"flower\", \"effect\": 4}]}]}",
                        "{\"scene\": \"s\", \"on\": {\"flower\": \"pond\"}}"))
                .singleElement()
                .asString()
                .contains("\"effect\" of a cue must be a text");
    }

    /** A slip in what a scene tells a scene in it is found, as it is in the show. */
    @Test
    void scenesTellEachOtherOnlyNamesThatThereAre() {
        assertThat(problemsOfScenes(
                        "\"s\": {\"length\": \"1s\", \"layers\": [{\"cues\": [{\"on\": \"flower\", \"effect\": \"e\"}]}]},"
                                + " \"t\": {\"length\": \"1s\", \"layers\": [{\"cues\": ["
                                + "{\"scene\": \"s\", \"on\": {\"flwer\": \"pond\"}}]}]}",
                        "{\"scene\": \"t\"}"))
                .singleElement()
                .asString()
                .endsWith("error: the scene \"s\" plays on nothing called \"flwer\"; did you mean \"flower\"?");
    }

    private static List<String> problemsOfScenes(String scenes, String cue) {
        return Timelines.problems("{\"duskloom\": \"timeline/1\", \"map\": \"m.csv\", \"length\": \"1s\", \"scenes\": {"
                + scenes + "}, \"layers\": [{\"cues\": [" + cue + "]}]}");
    }

    /** 64 scenes deep is allowed and 65 is not, also where the file has the innermost first, or two ways lead there. */
    @ParameterizedTest
    @ValueSource(strings = {"plain", "forked"})
    void scenesMayBeNestedSixtyFourDeepInAnyOrder(String kind) {
        assertThat(tooDeep(64, kind.equals("forked"))).isEmpty();
        assertThat(tooDeep(65, kind.equals("forked")))
                .allMatch(problem -> problem.endsWith("allowed: up to 64"))
                .anyMatch(problem -> problem.contains("error: scenes are nested too deep: s64 -> s63; "));
    }

    private static List<String> tooDeep(int count, boolean forked) {
        String scenes = IntStream.range(0, count)
                .mapToObj(i ->
                        "\"s" + i + "\": {\"length\": \"1s\", \"layers\": [{\"cues\": [" + cues(i, forked) + "]}]}")
                .collect(Collectors.joining(",\n"));
        return problemsOfScenes(scenes, "{\"scene\": \"s" + (count - 1) + "\"}");
    }

    /** A scene of this number plays the one before it, and where it is forked also the first, which is not deep. */
    private static String cues(int scene, boolean forked) {
        return scene == 0
                ? "{\"on\": \"x\", \"effect\": \"e\"}"
                : "{\"scene\": \"s" + (scene - 1) + "\"}" + (forked ? ", {\"at\": \"0s\", \"scene\": \"s0\"}" : "");
    }
}

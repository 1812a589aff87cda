package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.timeline.Cases;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Words of a cue that are allowed and change nothing. */
class SlipWarningsTest {
    private static final PixelMap MAP = Maps.map("""
            prop,pixel,x,y
            fence,1,0,0
            fence,2,1,0
            """);

    static Stream<Object[]> slips() {
        return Cases.of("""
                {"on": "*", "effect": "solid", "order": "right"}
                    show.json:2:44: warning: "order" is "right", but solid does not run along an order; leave it out; those that do: rank, weave
                {"on": "*", "effect": "rank", "order": "right"}
                {"on": "*", "effect": "solid", "order": "wiring"}
                {"on": "*", "effect": "solid", "for": "1s", "repeat": 3, "order": "up", "spread": "each"}
                    show.json:2:44: warning: "order" is "up", but solid does not run along an order; leave it out; those that do: rank, weave
                {"on": "*", "effect": "light", "for": "2s", "with": {"r": {"keys": [["0s", 0], ["2s", 1]]}}}
                {"on": "*", "effect": "light", "for": "2s", "with": {"r": {"keys": [["0s", 0], ["2001ms", 1], ["3s", 0]]}}}
                    show.json:2:102: warning: a key of "r" of light at 2.001s is never reached: the cue lasts 2s; times of keys count from the start of the cue
                {"on": "*", "effect": "solid", "at": "9s", "opacity": {"keys": [["9s", 0], ["10s", 1]]}}
                    show.json:2:87: warning: a key of "opacity" of a cue at 9s is never reached: the cue lasts 1s; times of keys count from the start of the cue
                """);
    }

    @ParameterizedTest
    @MethodSource("slips")
    void areToldOnce(String cue, List<String> problems) {
        assertThat(show(cue).problems()).isEqualTo(problems);
    }

    @Test
    void areNotToldWhereSomethingIsWrong() {
        assertThat(show("{\"on\": \"*\", \"effect\": \"solid\", \"order\": \"right\", \"with\": {\"colour\": \"red\"}}")
                        .problems())
                .singleElement()
                .asString()
                .contains("has no setting \"colour\"");
    }

    /** What a look says and no cue takes is held against what the effect declares, once. */
    @Test
    void looksAreCheckedWhetherTheyAreUsedOrNot() {
        String show = """

                "looks": {"unused": {"effect": "light", "with": {"r": 7, "colour": 1}}, "odd": {"effect": "lght"},
                "taken": {"effect": "light", "with": {"r": 8}}, "over": {"effect": "light", "with": {"r": 9, "g": 9}}},
                "layers": [{"cues": [{"on": "*", "look": "taken"}, {"on": "*", "look": "over", "with": {"r": 1}}]}]""";
        assertThat(TestShow.of(MAP, show).problems())
                .containsExactly(
                        "show.json:3:11: warning: no cue uses the look \"unused\"",
                        "show.json:3:55: error: \"r\" of light is 7; allowed: a number from 0 to 1",
                        "show.json:3:58: error: the effect light has no setting \"colour\"; allowed: r, g, b, a",
                        "show.json:3:73: warning: no cue uses the look \"odd\"",
                        "show.json:3:91: error: there is no effect \"lght\"; did you mean \"light\"?",
                        "show.json:4:44: error: \"r\" of light is 8; allowed: a number from 0 to 1",
                        "show.json:4:91: error: \"r\" of light is 9; allowed: a number from 0 to 1",
                        "show.json:4:99: error: \"g\" of light is 9; allowed: a number from 0 to 1");
    }

    @Test
    void layersWithoutCuesAreSlips() {
        assertThat(TestShow.of(MAP, "\"layers\": [{\"name\": \"dew\",\n\"cues\": []}, {\"mask\": true, \"cues\": []}]")
                        .problems())
                .containsExactly(
                        "show.json:2:12: warning: layer 1 has no cues; remove it, or put cues in it",
                        "show.json:3:14: warning: layer 2 has no cues; remove it, or put cues in it");
    }

    private static TestShow show(String cue) {
        return TestShow.of(MAP, "\"layers\": [{\"cues\": [" + cue + "]}]");
    }
}

package org.duskloom.engine.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.NumberNode;
import org.duskloom.engine.document.TextNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class RepeatTest {
    /** Starts and ends worked out on paper: play k starts k steps after the first. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "at": "1s", "for": "2s", "repeat": 1                            | 1s..3s
            "at": "1s", "for": "2s", "repeat": 3                            | 1s..3s 3s..5s 5s..7s
            "for": "2s", "repeat": {"count": 2, "every": "500ms"}           | 0s..2s 0.5s..2.5s
            "for": "3s", "repeat": {"until": "9s"}                          | 0s..3s 3s..6s 6s..9s
            "for": "3s", "repeat": {"until": "9.001s"}                      | 0s..3s 3s..6s 6s..9s 9s..12s
            "at": "1s", "for": "1s", "repeat": {"until": "7s", "every": "3s"} | 1s..2s 4s..5s
            "at": "1s", "for": "1s", "repeat": {"until": "1.001s"}          | 1s..2s
            "for": "5s", "repeat": 2                                        | 0s..5s 5s..10s
            "for": "1f", "repeat": {"count": 3, "every": "3f"}              | 0s..0.025s 0.075s..0.1s 0.15s..0.175s
            """)
    void playsACueAgain(String fields, String spans) {
        assertThat(plays(fields).stream()
                        .map(cue -> cue.at() + ".." + cue.end())
                        .collect(Collectors.joining(" ")))
                .isEqualTo(spans);
    }

    /**
     * Plays that fill a time are cut where it ends, whether it is the end of the timeline or not; a count is never cut.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "for": "3s", "repeat": {"until": "9s"}                   | 3s 6s 9s
            "for": "3s", "repeat": {"until": "7s"}                   | 3s 6s 7s
            "for": "3s", "repeat": {"until": "10s"}                  | 3s 6s 9s 10s
            "for": "3s", "repeat": {"until": "5s", "every": "1s"}    | 3s 4s 5s 5s 5s
            "for": "3s", "repeat": 3                                 | 3s 6s 9s
            """)
    void cutsPlaysThatFillATime(String fields, String seenUntil) {
        assertThat(plays(fields).stream().map(cue -> cue.seenUntil().toString()).collect(Collectors.joining(" ")))
                .isEqualTo(seenUntil);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {"phase": 0.25}                | phase 0 dim 1 | phase 0.25 dim 1 | phase 0.5 dim 1 | phase 0.75 dim 1
            {"phase": -1, "dim": 0.1}      | phase 0 dim 1 | phase -1 dim 1.1 | phase -2 dim 1.2 | phase -3 dim 1.3
            {"palette": ["red", "blue"]}   | phase 0 dim 1 palette red | phase 0 dim 1 palette blue | phase 0 dim 1 palette red | phase 0 dim 1 palette blue
            {"phase": [3], "dim": [1, 2, 3, 4]} | phase 3 dim 1 | phase 3 dim 2 | phase 3 dim 3 | phase 3 dim 4
            """)
    void changesSettingsFromPlayToPlay(String change, String first, String second, String third, String fourth) {
        List<Cue> plays =
                plays("\"for\": \"1s\", \"with\": {\"phase\": 0, \"dim\": 1}, \"repeat\": {\"count\": 4, \"change\": "
                        + change + "}");
        assertThat(plays.stream().map(RepeatTest::settings)).containsExactly(first, second, third, fourth);
    }

    @Test
    void changesSettingsOfALookToo() {
        List<Cue> plays = Timelines.sound("""
                {"duskloom": "timeline/1", "map": "m.csv", "length": "9s", "looks": {"a": {"effect": "e", "with": {"n": 1}}},
                 "layers": [{"cues": [
                   {"on": "x", "look": "a", "for": "1s", "repeat": {"count": 3, "change": {"n": 2}}}]}]}""").layers().get(0).cues();
        assertThat(plays.stream().map(RepeatTest::settings)).containsExactly("n 1", "n 3", "n 5");
    }

    /** Only the effect knows the default, so what is added to it stands apart: play k adds k times 90. */
    @Test
    void keepsWhatIsAddedToSettingsThatAreNotWritten() {
        List<Cue> plays = plays("\"for\": \"1s\", \"repeat\": {\"count\": 3, \"change\": {\"toward\": 90}}");
        assertThat(plays.stream().map(RepeatTest::settings)).containsOnly("");
        assertThat(plays.stream().map(cue -> shown(cue.changes().get(0))))
                .containsExactly("toward 0", "toward 90", "toward 180");
    }

    @Test
    void drawsAnewForEveryPlayAndAsBeforeForTheFirst() {
        String key = plays("\"at\": \"1s\", \"for\": \"1s\"").get(0).randomKey();
        List<Cue> plays = plays("\"at\": \"1s\", \"for\": \"1s\", \"repeat\": 3");
        assertThat(plays.get(0).randomKey()).isEqualTo(key);
        assertThat(plays.stream().map(Cue::randomKey)).doesNotHaveDuplicates();
    }

    /** From one play to ten thousand: one more is refused. */
    @ParameterizedTest
    @CsvSource({"1s, 9s, 1", "0.9s, 9s, 2", "0s, 1ms, 10000", "0.5ms, 1ms, 10000", "1ms, 1ms, 9999"})
    void playsUntilATime(String at, String every, int plays) {
        assertThat(plays("\"at\": \"" + at + "\", \"for\": \"1ms\", \"repeat\": {\"until\": \"10s\"," + " \"every\": \""
                        + every + "\"}"))
                .hasSize(plays);
    }

    static Stream<Object[]> faults() {
        return Cases.of("""
                {"on": "x", "effect": "e", "for": "3s", "repeat": 0}
                    show.json:5:51: error: "repeat" of a cue is 0; allowed: a whole number from 1 to 10000
                {"on": "x", "effect": "e", "for": "3s", "repeat": 2.5}
                    show.json:5:51: error: "repeat" of a cue is 2.5; allowed: a whole number from 1 to 10000
                {"on": "x", "effect": "e", "for": "3s", "repeat": "4"}
                    show.json:5:51: error: "repeat" of a cue must be a whole number, not the text "4"; write 4 without quotes
                {"on": "x", "effect": "e", "for": "3s", "repeat": {}}
                    show.json:5:51: error: "repeat" of a cue has neither "count" nor "until"; such as {"count": 4}
                {"on": "x", "effect": "e", "for": "3s", "repeat": {"count": 3, "until": "9s"}}
                    show.json:5:73: error: "repeat" of a cue has both "count" and "until"; such as {"count": 4}
                {"on": "x", "effect": "e", "for": "3s", "repeat": {"count": 10001}}
                    show.json:5:61: error: "count" of "repeat" of a cue is 10001; allowed: a whole number from 1 to 10000
                {"on": "x", "effect": "e", "for": "3s", "repeat": {"cont": 3}}
                    show.json:5:51: error: "repeat" of a cue has neither "count" nor "until"; such as {"count": 4}
                    show.json:5:52: error: "repeat" of a cue has no field "cont"; did you mean "count"?
                {"on": "x", "effect": "e", "for": "3s", "repeat": {"count": 3, "every": "0s"}}
                    show.json:5:73: error: "every" of "repeat" of a cue: the time "0s" is zero; it must be longer than 0s
                {"on": "x", "effect": "e", "for": "3s", "repeat": 5}
                    show.json:5:51: error: play 5 of the cue ends at 15s; the timeline ends at 10s; "until" instead of "count" cuts the last play
                {"on": "x", "effect": "e", "repeat": 3}
                    show.json:5:38: error: play 3 of the cue ends at 30s; the timeline ends at 10s; without "for" each play lasts until then: say how long one is, at most "for": "3.333s"
                {"on": "x", "effect": "e", "repeat": {"count": 2, "every": "7990ms"}}
                    show.json:5:38: error: play 2 of the cue ends at 17.99s; the timeline ends at 10s; without "for" each play lasts until then: say how long one is, at most "for": "2.01s"
                {"on": "x", "effect": "e", "at": "1s", "repeat": {"count": 3, "every": "4s"}}
                    show.json:5:50: error: play 3 of the cue ends at 18s; the timeline ends at 10s; without "for" each play lasts until then: say how long one is, at most "for": "1s"
                {"on": "x", "effect": "e", "at": "1s", "repeat": {"count": 3, "every": "5s"}}
                    show.json:5:50: error: play 3 of the cue ends at 20s; the timeline ends at 10s; without "for" each play lasts until then: play it less often
                {"on": "x", "effect": "e", "until": "4s", "repeat": 3}
                    show.json:5:53: error: play 3 of the cue ends at 12s; the timeline ends at 10s; "until" instead of "count" cuts the last play
                {"on": "x", "effect": "e", "for": "3s", "repeat": {"count": 2, "every": "7001ms"}}
                    show.json:5:51: error: play 2 of the cue ends at 10.001s; the timeline ends at 10s; "until" instead of "count" cuts the last play
                {"on": "x", "effect": "e", "at": "5s", "for": "1s", "repeat": {"until": "5s"}}
                    show.json:5:63: error: the cue would be played 0 times; allowed: 1 to 10000
                {"on": "x", "effect": "e", "for": "1s", "repeat": {"until": "10s", "every": "0.9ms"}}
                    show.json:5:51: error: the cue would be played 11112 times; allowed: 1 to 10000
                {"on": "x", "effect": "e", "for": "1ms", "repeat": {"until": "10s", "every": "0.9999ms"}}
                    show.json:5:52: error: the cue would be played 10002 times; allowed: 1 to 10000
                {"on": "x", "effect": "e", "for": "1s", "repeat": {"until": "11s"}}
                    show.json:5:61: error: "until" of "repeat" of a cue is 11s; the timeline ends at 10s
                {"on": "x", "effect": "e", "for": "1s", "repeat": {"count": 3, "change": {"phase": []}}}
                    show.json:5:75: error: the change of "phase" per repeat is an empty list; give a number to add to a plain number, or a list of values to go through
                {"on": "x", "effect": "e", "for": "1s", "repeat": {"count": 3, "change": [1]}}
                    show.json:5:74: error: "change" of "repeat" of a cue must be an object { }, not a list
                {"on": "x", "effect": "e", "for": "1s", "with": {"color": "red"}, "repeat": {"count": 3, "change": {"color": 1}}}
                    show.json:5:101: error: the change of "color" per repeat adds 1 to the text "red"; give a number to add to a plain number, or a list of values to go through
                """);
    }

    @ParameterizedTest
    @MethodSource("faults")
    void teachesWhatIsWrong(String cue, List<String> problems) {
        assertThat(Timelines.problems(Timelines.withCue(cue))).isEqualTo(problems);
    }

    private static List<Cue> plays(String fields) {
        return Timelines.cues("{\"on\": \"x\", \"effect\": \"e\", " + fields + "}");
    }

    private static String settings(Cue cue) {
        return cue.with().stream().map(RepeatTest::shown).collect(Collectors.joining(" "));
    }

    private static String shown(Field field) {
        return field.name() + " "
                + (field.value() instanceof NumberNode number ? number.written() : ((TextNode) field.value()).value());
    }
}

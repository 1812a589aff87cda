package org.duskloom.engine.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.duskloom.engine.color.BlendMode;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.FrameRate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class TimelineReaderTest {
    @Test
    void readsEveryField() {
        Timeline timeline = Timelines.sound("""
                // A comment.
                {"duskloom": "timeline/1", "title": "Longest day", "map": "garden.csv", "groups": {"all": ["*"]},
                 "rate": "30000/1001", "length": "48s", "seed": -7, "palettes": {"dusk": ["red"]}, "looks": {},
                 "layers": [{"cues": []}, {"name": "sparkle", "blend": "screen", "opacity": 0.8, "cues": []},
                            {"mask": true, "cues": [],},]}""");
        assertThat(timeline.title()).isEqualTo("Longest day");
        assertThat(timeline.pixels().kind()).isEqualTo(PixelSource.Kind.MAP);
        assertThat(timeline.pixels().file().value()).isEqualTo("garden.csv");
        assertThat(timeline.pixels().groups()).isPresent();
        assertThat(timeline.rate()).isEqualTo(new FrameRate(30000, 1001));
        assertThat(timeline.length()).isEqualTo(ExactTime.ofSeconds(48));
        assertThat(timeline.seed()).isEqualTo(-7);
        assertThat(timeline.palettes()).containsOnlyKeys("dusk");
        assertThat(timeline.palettes().get("dusk").location()).hasToString("show.json:3:66");
        assertThat(timeline.layers())
                .containsExactly(
                        new Layer("1", BlendMode.NORMAL, 1, false, List.of(), List.of()),
                        new Layer("sparkle", BlendMode.SCREEN, 0.8, false, List.of(), List.of()),
                        new Layer("3", BlendMode.NORMAL, 1, true, List.of(), List.of()));
    }

    @Test
    void hasTheDefaultsOfTheReference() {
        Timeline timeline = Timelines.sound(
                "{\"duskloom\": \"timeline/1\", \"display\": \"d.json\", \"length\": \"1s\", \"layers\": []}");
        assertThat(timeline.title()).isEmpty();
        assertThat(timeline.pixels().kind()).isEqualTo(PixelSource.Kind.DISPLAY);
        assertThat(timeline.rate()).isEqualTo(FrameRate.of(40));
        assertThat(timeline.seed()).isZero();
        assertThat(timeline.palettes()).isEmpty();
        assertThat(timeline.layers()).isEmpty();
    }

    /** Frames 0 up to, not including, ceil(length * rate), worked out on paper. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            40,         1s,       40
            40,         1.001s,   41
            40,         1ms,      1
            60,         0.1s,     6
            30000/1001, 1.001s,   30
            30000/1001, 599.9994s, 17982
            30000/1001, 600s,     17983
            1000,       24:00:00, 86400000
            """)
    void countsFrames(String rate, String length, long frames) {
        assertThat(Timelines.sound("""
                {"duskloom": "timeline/1", "map": "m.csv", "rate": "%s", "length": "%s", "layers": []}""".formatted(rate, length)).frameCount()).isEqualTo(frames);
    }

    static Stream<Object[]> wholeFaults() {
        return Cases.of("""
                []
                    show.json:1:1: error: the timeline must be an object { }, not a list
                {}
                    show.json:1:1: error: the timeline lacks the field "duskloom"; add "duskloom": "timeline/1"
                    show.json:1:1: error: the timeline lacks the field "length"
                    show.json:1:1: error: the timeline lacks the field "layers"
                    show.json:1:1: error: the timeline has neither "display" nor "map"; name one of them, such as "map": "map.csv"
                {"duskloom": "timeline/2", "map": "m.csv", "length": "1s", "layers": []}
                    show.json:1:14: error: "duskloom" of the timeline is "timeline/2"; this version reads "duskloom": "timeline/1"
                {"duskloom": "display/1", "map": "m.csv", "length": "1s", "layers": []}
                    show.json:1:14: error: "duskloom" of the timeline is "display/1"; this version reads "duskloom": "timeline/1"
                {"duskloom": "timeline/1", "map": "m.csv", "display": "d.json", "length": "1s", "layers": []}
                    show.json:1:55: error: the timeline has both "display" and "map"; name one of them, such as "map": "map.csv"
                {"duskloom": "timeline/1", "display": "d.json", "groups": {}, "length": "1s", "layers": []}
                    show.json:1:59: error: "groups" stand beside a "display"; move them into the display
                {"duskloom": "timeline/1", "map": 3, "length": "1s", "layers": []}
                    show.json:1:35: error: "map" of the timeline must be a text, not the number 3; write "3" in quotes
                {"duskloom": "timeline/1", "mpa": "m.csv", "length": "1s", "layers": []}
                    show.json:1:1: error: the timeline has neither "display" nor "map"; name one of them, such as "map": "map.csv"
                    show.json:1:28: error: the timeline has no field "mpa"; did you mean "map"?
                {"duskloom": "timeline/1", "map": "m.csv", "lenght": "1s", "layers": []}
                    show.json:1:1: error: the timeline lacks the field "length"; is "lenght" meant for it?
                    show.json:1:44: error: the timeline has no field "lenght"; did you mean "length"?
                {"duskloom": "timeline/1", "map": "m.csv", "length": 48, "layers": []}
                    show.json:1:54: error: "length" of the timeline must be a time, not the number 48; write it with a unit, such as "48s" or "48ms"
                {"duskloom": "timeline/1", "map": "m.csv", "length": "0s", "layers": []}
                    show.json:1:54: error: "length" of the timeline: the time "0s" is zero; it must be longer than 0s
                {"duskloom": "timeline/1", "map": "m.csv", "length": "-1s", "layers": []}
                    show.json:1:54: error: "length" of the timeline: the time "-1s" is negative (-1s); it must be longer than 0s
                {"duskloom": "timeline/1", "map": "m.csv", "length": "1000:00:00", "rate": 1000, "layers": []}
                    show.json:1:54: error: the timeline has 3600000000 frames; allowed: up to 86400000; shorten it or lower the rate
                {"duskloom": "timeline/1", "map": "m.csv", "length": "1s", "layers": {}}
                    show.json:1:70: error: "layers" of the timeline must be a list [ ], not an object
                {"duskloom": "timeline/1", "map": "m.csv", "length": "1s", "layers": [
                    show.json:1:71: error: the file ends, but the [ of line 1, column 70 is still open; add the missing ]
                {"duskloom": "timeline/1", "map": "m.csv", "length": "1s", "length": "2s", "layers": []}
                    show.json:1:60: error: "length" stands twice in one object; first at show.json:1:44; rename or remove one of them
                {"duskloom": "timeline/1" "map": "m.csv"}
                    show.json:1:27: error: found a quote " where a comma or } should stand; the { of line 1, column 1 is still open
                """);
    }

    @ParameterizedTest
    @MethodSource("wholeFaults")
    void teachesWhatIsWrong(String json, List<String> problems) {
        assertThat(Timelines.problems(json)).isEqualTo(problems);
    }

    static Stream<Object[]> fieldFaults() {
        return Cases.of("""
                "rate": 29.97
                    show.json:1:84: error: "rate" of the timeline: "29.97" is not a frame rate; write 30000/1001: a decimal would drift from the sound
                "rate": "59.94"
                    show.json:1:84: error: "rate" of the timeline: "59.94" is not a frame rate; write 60000/1001: a decimal would drift from the sound
                "rate": 0
                    show.json:1:84: error: "rate" of the timeline: the frame rate "0" has a part that is 0; write a whole number such as 40 or a ratio such as 30000/1001, at most 1000
                "rate": -40
                    show.json:1:84: error: "rate" of the timeline: "-40" is not a frame rate; write a whole number such as 40 or a ratio such as 30000/1001, at most 1000
                "rate": "30000/0"
                    show.json:1:84: error: "rate" of the timeline: the frame rate "30000/0" has a part that is 0; write a whole number such as 40 or a ratio such as 30000/1001, at most 1000
                "rate": 1001
                    show.json:1:84: error: "rate" of the timeline: the frame rate "1001" is above 1000 frames per second; write a whole number such as 40 or a ratio such as 30000/1001, at most 1000
                "rate": true
                    show.json:1:84: error: "rate" of the timeline must be a number, not true
                "seed": 1.5
                    show.json:1:84: error: "seed" of the timeline is 1.5; allowed: a whole number from -9007199254740991 to 9007199254740991
                "seed": 9007199254740992
                    show.json:1:84: error: 9007199254740992 is too large to be kept exactly; a number is finite, and a whole number at most 2^53 - 1 = 9007199254740991
                "seed": "7"
                    show.json:1:84: error: "seed" of the timeline must be a whole number, not the text "7"; write 7 without quotes
                "title": 4
                    show.json:1:85: error: "title" of the timeline must be a text, not the number 4; write "4" in quotes
                "ttle": "Longest day"
                    show.json:1:76: error: the timeline has no field "ttle"; did you mean "title"?
                "palettes": []
                    show.json:1:88: error: "palettes" of the timeline must be an object { }, not a list
                "palettes": {"a": "rde"}
                    show.json:1:94: error: palette "a": "rde" is not a colour; did you mean "red"?
                "palettes": {"a": []}
                    show.json:1:94: error: palette "a" is empty; such as ["#1b2a6b", "#ff9e5e"]
                "palettes": {"a": 3}
                    show.json:1:94: error: palette "a" must be a colour, a list of colours or an object { }, not a number; such as ["#1b2a6b", "#ff9e5e"]
                "palettes": {"a": ["red", ["blue", 1.5]]}
                    show.json:1:111: error: the position of a stop of palette "a" is 1.5; allowed: a number from 0 to 1
                "palettes": {"a": [["red", 0.5], "lime", ["blue", 0.4]]}
                    show.json:1:126: error: the position 0.4 of a stop of palette "a" lies before that of an earlier stop, 0.5; list the stops from 0 to 1
                "palettes": {"a": [["red"]]}
                    show.json:1:95: error: a stop of palette "a" has 1 instead of 2 values; write a colour and its position, such as ["#ff9e5e", 0.4]
                "palettes": {"a": ["red", "#12"]}
                    show.json:1:102: error: a colour of palette "a": the colour "#12" has 2 hex digits; write #rgb, #rgba, #rrggbb or #rrggbbaa
                "palettes": {"a": {"stops": ["red"], "mix": "oklb", "stpe": true}}
                    show.json:1:120: error: "mix" of palette "a" is "oklb"; did you mean "oklab"? allowed: oklab, oklch, linear
                    show.json:1:128: error: palette "a" has no field "stpe"; did you mean "step"?
                "palettes": {"a": {}}
                    show.json:1:94: error: palette "a" lacks the field "stops"
                "palettes": {"a": {"stops": "red", "step": 1, "cyclic": "no"}}
                    show.json:1:104: error: "stops" of palette "a" must be a list [ ], not the text "red"; put it in brackets: [ ]
                    show.json:1:119: error: "step" of palette "a" must be true or false, not the number 1
                    show.json:1:132: error: "cyclic" of palette "a" must be true or false, not the text "no"
                "looks": 3
                    show.json:1:85: error: "looks" of the timeline must be an object { }, not the number 3
                "looks": {"a": 3}
                    show.json:1:91: error: look "a" must be an object { }, not the number 3
                "looks": {"b": {"at": "1s", "on": "x", "effect": "e"}}
                    show.json:1:92: error: look "b" has the field "at"; that belongs to the cues that use the look
                    show.json:1:104: error: look "b" has the field "on"; that belongs to the cues that use the look
                "looks": {"b": {"efect": "e"}}
                    show.json:1:92: error: look "b" has no field "efect"; did you mean "effect"?
                """);
    }

    @ParameterizedTest
    @MethodSource("fieldFaults")
    void teachesWhatIsWrongInAField(String field, List<String> problems) {
        assertThat(Timelines.problems(Timelines.withFields(field))).isEqualTo(problems);
    }

    static Stream<Object[]> layerFaults() {
        return Cases.of("""
                3
                    show.json:1:73: error: layer 1 must be an object { }, not the number 3
                {}
                    show.json:1:73: error: layer 1 lacks the field "cues"
                {"cues": 4}
                    show.json:1:82: error: "cues" of layer 1 must be a list [ ], not the number 4; put it in brackets: [ ]
                {"cues": [], "name": 2}
                    show.json:1:94: error: "name" of layer 1 must be a text, not the number 2; write "2" in quotes
                {"cues": [], "opacity": 1.5}
                    show.json:1:97: error: "opacity" of layer 1 is 1.5; allowed: a number from 0 to 1
                {"cues": [], "opacity": {"keys": []}}
                    show.json:1:97: error: "opacity" of layer 1 must be a number, not an object
                {"cues": [], "blend": "multply"}
                    show.json:1:95: error: "blend" of layer 1 is "multply"; did you mean "multiply"? allowed: normal, multiply, screen, overlay, darken, lighten, color-dodge, color-burn, hard-light, soft-light, difference, exclusion, plus-lighter
                {"cues": [], "mask": true, "blend": "screen"}
                    show.json:1:109: error: layer 1 is a mask and has a "blend"; leave it out
                {"cues": [], "mask": "yes"}
                    show.json:1:94: error: "mask" of layer 1 must be true or false, not the text "yes"
                {"cues": [], "cue": []}
                    show.json:1:86: error: layer 1 has no field "cue"; allowed: name, blend, opacity, mask, cues
                {"cues": [], "blnd": "screen"}
                    show.json:1:86: error: layer 1 has no field "blnd"; did you mean "blend"?
                """);
    }

    @ParameterizedTest
    @MethodSource("layerFaults")
    void teachesWhatIsWrongInALayer(String layer, List<String> problems) {
        assertThat(Timelines.problems(
                        "{\"duskloom\": \"timeline/1\", \"map\": \"map.csv\", \"length\": \"1s\", \"layers\": [" + layer
                                + "]}"))
                .isEqualTo(problems);
    }

    @Test
    void reportsAllProblemsOfOneRunInTheOrderOfTheFile() {
        assertThat(Timelines.problems("""
                {"duskloom": "timeline/1", "title": 3,
                 "length": 48,
                 "rate": 29.97,
                 "palettes": {"dusk": ["rde"]},
                 "looks": {"glow": {"effect": "wash", "at": "1s"}},
                 "layers": [
                   {"name": 4, "cues": [
                     {"on": "x", "look": "glwo"},
                     {"on": "x", "effect": "e", "for": "3"}]},
                   {"cues": [{"effect": "e"}], "blnd": "screen"}],
                 "sed": 7}"""))
                .extracting(line -> line.replaceAll(";.*", ""))
                .containsExactly(
                        "show.json:1:1: error: the timeline has neither \"display\" nor \"map\"",
                        "show.json:1:37: error: \"title\" of the timeline must be a text, not the number 3",
                        "show.json:2:12: error: \"length\" of the timeline must be a time, not the number 48",
                        "show.json:3:10: error: \"rate\" of the timeline: \"29.97\" is not a frame rate",
                        "show.json:4:24: error: a colour of palette \"dusk\": \"rde\" is not a colour",
                        "show.json:5:39: error: look \"glow\" has the field \"at\"",
                        "show.json:7:13: error: \"name\" of layer 1 must be a text, not the number 4",
                        "show.json:8:26: error: there is no look \"glwo\"",
                        "show.json:9:40: error: \"for\" of a cue: the time \"3\" has no unit",
                        "show.json:10:14: error: a cue lacks the field \"on\"",
                        "show.json:10:32: error: layer 2 has no field \"blnd\"",
                        "show.json:11:2: error: the timeline has no field \"sed\"");
    }

    @Test
    void warnsOfLooksThatNoCueUsesOnlyIfNothingIsWrong() {
        assertThat(Timelines.problems(Timelines.withFields("\"looks\": {\"glow\": {\"effect\": \"wash\"}}")))
                .containsExactly("show.json:1:86: warning: no cue uses the look \"glow\"");
        assertThat(Timelines.problems(
                        Timelines.withFields("\"looks\": {\"glow\": {\"effect\": \"wash\"}}, \"seed\": 0.5")))
                .singleElement()
                .asString()
                .contains("\"seed\"");
    }
}

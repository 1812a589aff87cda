package org.duskloom.engine.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.duskloom.engine.color.BlendMode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.time.Easing;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.FrameSpan;
import org.duskloom.engine.time.Lapse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class CueReaderTest {
    @Test
    void readsEveryField() {
        Cue cue = Timelines.cues("""
                {"name": "first light", "at": "1s", "for": "90f", "on": ["daisy-1", "fence/top"], "effect": "chase",
                 "with": {"palette": "dusk", "tail": 0.4}, "spread": "each", "axes": "own", "fit": "stretch",
                 "order": "outward", "stagger": {"by": "clockwise", "time": "1500ms"}, "opacity": 0.5,
                 "blend": "plus-lighter", "fade": {"in": "250ms", "out": "1s", "easing": "ease-in"}}""").get(0);
        assertThat(cue.location()).hasToString("show.json:5:1");
        assertThat(cue.at()).isEqualTo(ExactTime.ofSeconds(1));
        assertThat(cue.end()).isEqualTo(ExactTime.ofMilliseconds(3250));
        assertThat(cue.length()).isEqualTo(ExactTime.ofMilliseconds(2250));
        assertThat(cue.on()).extracting(TextNode::value).containsExactly("daisy-1", "fence/top");
        assertThat(cue.effect().value()).isEqualTo("chase");
        assertThat(cue.with()).extracting(field -> field.name()).containsExactly("palette", "tail");
        Layout layout = cue.layout();
        assertThat(layout.spread()).isEqualTo(Spread.EACH);
        assertThat(layout.axes()).isEqualTo(Axes.OWN);
        assertThat(layout.fit()).isEqualTo(Fit.STRETCH);
        assertThat(layout.order()).isEqualTo(PixelOrder.OUTWARD);
        assertThat(layout.stagger().orElseThrow().by()).isEqualTo(StaggerBy.CLOCKWISE);
        assertThat(layout.stagger().orElseThrow().time()).isEqualTo(Lapse.of(ExactTime.ofMilliseconds(1500)));
        assertThat(cue.opacity().orElseThrow().location()).hasToString("show.json:7:83");
        assertThat(cue.blend()).isEqualTo(BlendMode.PLUS_LIGHTER);
        assertThat(cue.fade())
                .isEqualTo(new Fade(ExactTime.ofMilliseconds(250), ExactTime.ofSeconds(1), Easing.EASE_IN));
    }

    @Test
    void hasTheDefaultsOfTheReference() {
        Cue cue = Timelines.cues("{\"on\": \"x\", \"effect\": \"e\"}").get(0);
        assertThat(cue.at()).isEqualTo(ExactTime.ZERO);
        assertThat(cue.end()).isEqualTo(ExactTime.ofSeconds(10));
        assertThat(cue.with()).isEmpty();
        assertThat(cue.layout().spread()).isEqualTo(Spread.WHOLE);
        assertThat(cue.layout().axes()).isEqualTo(Axes.STAGE);
        assertThat(cue.layout().fit()).isEqualTo(Fit.CONTAIN);
        assertThat(cue.layout().order()).isEqualTo(PixelOrder.WIRING);
        assertThat(cue.layout().stagger()).isEmpty();
        assertThat(cue.fade()).isEqualTo(new Fade(ExactTime.ZERO, ExactTime.ZERO, Easing.LINEAR));
        assertThat(cue.opacity()).isEmpty();
        assertThat(cue.blend()).isEqualTo(BlendMode.NORMAL);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "at": "2s"                     | 2s     | 10s
            "at": "2s", "for": "250ms"     | 2s     | 2.25s
            "at": "0:02.5", "until": "10s" | 2.5s   | 10s
            "until": "1f"                  | 0s     | 0.025s
            "at": "399f", "for": "1f"      | 9.975s | 10s
            "fade": {"in": "4s", "out": "6s"} | 0s  | 10s
            """)
    void startsAndEndsAsWritten(String fields, String at, String end) {
        Cue cue = Timelines.cues("{\"on\": \"x\", \"effect\": \"e\", " + fields + "}")
                .get(0);
        assertThat(cue.at()).hasToString(at);
        assertThat(cue.end()).hasToString(end);
    }

    /**
     * A cue holds for the half-open span [at, end): frames ceil(at * rate) up to, not including, ceil(end * rate),
     * worked out on paper. Frame 1000 at 30000/1001 is the instant 1001/30 s and frame 30 is 1001/1000 s (SMPTE ST
     * 12-1).
     */
    @ParameterizedTest
    @CsvSource(textBlock = """
            40,         1s,          2s,         40,  80
            40,         1.000001s,   2s,         41,  80
            40,         0.999s,      2.001s,     40,  81
            40,         25ms,        50ms,       1,   2
            40,         24ms,        26ms,       1,   2
            40,         26ms,        49ms,       2,   2
            60,         16.666666ms, 33.333333ms, 1,  2
            60,         16.666667ms, 33.333334ms, 2,  3
            30000/1001, 1.001s,      33.366s,    30,  1000
            30000/1001, 1.001001s,   33.367s,    31,  1001
            30000/1001, 30f,         1000f,      30,  1000
            """)
    void holdsForAHalfOpenSpanOfFrames(FrameRateText rate, String at, String end, long first, long endExclusive) {
        Cue cue = Timelines.sound("""
                {"duskloom": "timeline/1", "map": "m.csv", "rate": "%s", "length": "60s",
                 "layers": [{"cues": [{"on": "x", "effect": "e", "at": "%s", "until": "%s"}]}]}""".formatted(rate.text(), at, end))
                .layers()
                .get(0)
                .cues()
                .get(0);
        assertThat(FrameSpan.of(rate.rate(), cue.at(), cue.end())).isEqualTo(new FrameSpan(first, endExclusive));
    }

    static Stream<Object[]> faults() {
        return Cases.of("""
                3
                    show.json:5:1: error: a cue must be an object { }, not the number 3
                {"on": "x", "effect": "e", "efect": 1}
                    show.json:5:28: error: a cue has no field "efect"; allowed: at, for, until, on, effect, with, look, scene, spread, axes, fit, order, stagger, fade, opacity, blend, repeat, name
                {"effect": "e"}
                    show.json:5:1: error: a cue lacks the field "on"
                {"on": [], "effect": "e"}
                    show.json:5:8: error: "on" of a cue is empty; name props, parts or groups
                {"on": ["x", 3], "effect": "e"}
                    show.json:5:14: error: an item of "on" of a cue must be a text, not the number 3; write "3" in quotes
                {"on": 3, "effect": "e"}
                    show.json:5:8: error: "on" of a cue must be a text or a list of texts, not the number 3; write "3" in quotes
                {"on": {"all": ["x"], "except": ["y"]}, "effect": "e"}
                    show.json:5:8: error: "on" of a cue is an object, which goes with "scene"; name props, parts or groups; what "all" and "except" say is said of a group
                {"on": "x", "effect": "e", "for": "+2s"}
                    show.json:5:35: error: "for" of a cue is "+2s", but only "at" of a cue counts from the cue before; leave the sign out
                {"on": "x"}
                    show.json:5:1: error: the cue has neither "effect" nor "look" nor "scene"; name one of them
                {"on": "x", "effect": 4}
                    show.json:5:23: error: "effect" of a cue must be a text, not the number 4; write "4" in quotes
                {"on": "x", "effect": null}
                    show.json:5:23: error: "effect" of a cue must be a text, not null; leave the field out instead
                {"on": "x", "look": "glw"}
                    show.json:5:21: error: there is no look "glw"; did you mean "glow"?
                {"on": "x", "look": "zzzzz"}
                    show.json:5:21: error: there is no look "zzzzz"; allowed: glow
                {"on": "x", "look": 7}
                    show.json:5:21: error: "look" of a cue must be a text, not the number 7; write "7" in quotes
                {"on": "x", "effect": "e", "at": 3, "for": "1s", "fade": {"in": "1s"}, "repeat": 2}
                    show.json:5:34: error: "at" of a cue must be a time, not the number 3; write it with a unit, such as "3s"
                {"on": "x", "effect": "e", "at": "3", "until": "4s"}
                    show.json:5:34: error: "at" of a cue: the time "3" has no unit; write "3s" for seconds or "3ms"
                {"on": "x", "effect": "e", "at": "11s"}
                    show.json:5:34: error: "at" of a cue is 11s; the timeline ends at 10s
                {"on": "x", "effect": "e", "at": "-1s"}
                    show.json:5:34: error: "at" of a cue is 1s before the timeline starts; the first cue of a list counts from its start
                {"on": "x", "effect": "e", "at": "10s"}
                    show.json:5:34: error: the cue starts at 10s and ends at 10s; it must end after it starts
                {"on": "x", "effect": "e", "for": "0s"}
                    show.json:5:35: error: "for" of a cue: the time "0s" is zero; it must be longer than 0s
                {"on": "x", "effect": "e", "for": "-2s"}
                    show.json:5:35: error: "for" of a cue: the time "-2s" is negative (-2s); it must be longer than 0s
                {"on": "x", "effect": "e", "at": "9s", "for": "2s"}
                    show.json:5:47: error: the cue ends at 11s; the timeline ends at 10s; without "for" the cue lasts until then
                {"on": "x", "effect": "e", "for": "2s", "until": "3s"}
                    show.json:5:50: error: a cue has both "for" and "until"; leave one of them out
                {"on": "x", "effect": "e", "at": "4s", "until": "4s"}
                    show.json:5:49: error: the cue starts at 4s and ends at 4s; it must end after it starts
                {"on": "x", "effect": "e", "at": "4s", "until": "3s"}
                    show.json:5:49: error: the cue starts at 4s and ends at 3s; it must end after it starts
                {"on": "x", "effect": "e", "until": "10.001s"}
                    show.json:5:37: error: "until" of a cue is 10.001s; the timeline ends at 10s
                {"on": "x", "effect": "e", "for": "401f"}
                    show.json:5:35: error: the cue ends at 10.025s; the timeline ends at 10s; without "for" the cue lasts until then
                {"on": "x", "effect": "e", "for": "8b"}
                    show.json:5:35: error: "for" of a cue: the time "8b" counts beats, but it is not known where they lie; say it in the timeline: "beats": {"tempo": 120}, or the name of a label track
                {"on": "x", "effect": "e", "at": "@chorus"}
                    show.json:5:34: error: "at" of a cue: the time "@chorus" names no cue and no marker; no cue has a name, and there are no markers
                {"on": "x", "effect": "e", "for": "1s", "fade": {"in": "600ms", "out": "401ms"}}
                    show.json:5:49: error: the fades take 1.001s; the cue lasts 1s
                {"on": "x", "effect": "e", "for": "1s", "fade": {"in": 1, "ou": "1s"}}
                    show.json:5:56: error: "in" of "fade" of a cue must be a time, not the number 1; write it with a unit, such as "1s"
                    show.json:5:59: error: "fade" of a cue has no field "ou"; did you mean "out"?
                {"on": "x", "effect": "e", "for": "1s", "fade": "1s"}
                    show.json:5:49: error: "fade" of a cue must be an object { }, not the text "1s"; its fields are in, out, easing
                {"on": "x", "effect": "e", "fade": {"easing": "easy"}}
                    show.json:5:47: error: "easing" of a fade: "easy" is not an easing; did you mean "ease"?
                {"on": "x", "effect": "e", "blend": "scren"}
                    show.json:5:37: error: "blend" of a cue is "scren"; did you mean "screen"? allowed: normal, multiply, screen, overlay, darken, lighten, color-dodge, color-burn, hard-light, soft-light, difference, exclusion, plus-lighter
                {"on": "x", "effect": "e", "blend": 1}
                    show.json:5:37: error: "blend" of a cue must be a text, not the number 1; allowed: normal, multiply, screen, overlay, darken, lighten, color-dodge, color-burn, hard-light, soft-light, difference, exclusion, plus-lighter
                {"on": "x", "effect": "e", "spread": "ech"}
                    show.json:5:38: error: "spread" of a cue is "ech"; did you mean "each"? allowed: whole, each
                {"on": "x", "effect": "e", "axes": "ow", "spread": "each"}
                    show.json:5:36: error: "axes" of a cue is "ow"; did you mean "own"? allowed: stage, own, outward
                {"on": "x", "effect": "e", "fit": "contin"}
                    show.json:5:35: error: "fit" of a cue is "contin"; did you mean "contain"? allowed: contain, stretch, none
                {"on": "x", "effect": "e", "order": "clockwize"}
                    show.json:5:37: error: "order" of a cue is "clockwize"; did you mean "clockwise"? allowed: wiring, right, up, outward, clockwise, around, members
                {"on": "x", "effect": "e", "order": "left"}
                    show.json:5:37: error: "order" of a cue is "left"; allowed: wiring, right, up, outward, clockwise, around, members
                {"on": "x", "effect": "e", "stagger": "80ms"}
                    show.json:5:39: error: "stagger" needs members with clocks of their own; add "spread": "each"
                {"on": "x", "effect": "e", "axes": "own"}
                    show.json:5:36: error: "axes" is "own", but one canvas for all has the axes of the stage; add "spread": "each"
                {"on": "x", "effect": "e", "axes": "outward", "spread": "whole"}
                    show.json:5:36: error: "axes" is "outward", but one canvas for all has the axes of the stage; add "spread": "each"
                {"on": "x", "effect": "e", "axes": "outwards", "spread": "each"}
                    show.json:5:36: error: "axes" of a cue is "outwards"; did you mean "outward"? allowed: stage, own, outward
                {"on": "x", "effect": "e", "order": "arund"}
                    show.json:5:37: error: "order" of a cue is "arund"; did you mean "around"? allowed: wiring, right, up, outward, clockwise, around, members
                {"on": "x", "effect": "e", "stagger": {"by": "part", "time": "80ms"}}
                    show.json:5:39: error: "stagger" needs members with clocks of their own; add "spread": "each"
                {"on": "x", "effect": "e", "spread": "each", "stagger": {"by": "parts", "time": "80ms"}}
                    show.json:5:64: error: "by" of "stagger" of a cue is "parts"; did you mean "part"? allowed: members, part, prop, right, left, up, down, outward, inward, clockwise
                {"on": "x", "effect": "e", "spread": "each", "stagger": 80}
                    show.json:5:57: error: "stagger" of a cue must be a time, not the number 80; write it with a unit, such as "80s" or "80ms"
                {"on": "x", "effect": "e", "spread": "each", "stagger": {"by": "rihgt"}}
                    show.json:5:57: error: "stagger" of a cue lacks the field "time"
                    show.json:5:64: error: "by" of "stagger" of a cue is "rihgt"; did you mean "right"? allowed: members, part, prop, right, left, up, down, outward, inward, clockwise
                {"on": "x", "effect": "e", "spread": "each", "stagger": {"time": "1s", "of": 1}}
                    show.json:5:72: error: "stagger" of a cue has no field "of"; allowed: by, time
                {"on": "x", "effect": "e", "spread": "each", "stagger": ["1s"]}
                    show.json:5:57: error: "stagger" of a cue is a list; it must be a time, such as "3s"
                {"on": "x", "effect": "e", "with": []}
                    show.json:5:36: error: "with" of a cue must be an object { }, not a list
                {"on": "x", "effect": "e", "name": 3}
                    show.json:5:36: error: "name" of a cue must be a text, not the number 3; write "3" in quotes
                {"on": "x", "effect": "e", "for": "2s", "at": "11s", "fade": {"inn": "1s"}, "repeat": {"cont": 1}, "colour": 3}
                    show.json:5:47: error: "at" of a cue is 11s; the timeline ends at 10s
                    show.json:5:63: error: "fade" of a cue has no field "inn"; did you mean "in"?
                    show.json:5:87: error: "repeat" of a cue has neither "count" nor "until"; such as {"count": 4}
                    show.json:5:88: error: "repeat" of a cue has no field "cont"; did you mean "count"?
                    show.json:5:100: error: a cue has no field "colour"; allowed: at, for, until, on, effect, with, look, scene, spread, axes, fit, order, stagger, fade, opacity, blend, repeat, name
                """);
    }

    @ParameterizedTest
    @MethodSource("faults")
    void teachesWhatIsWrong(String cue, List<String> problems) {
        assertThat(Timelines.problems(Timelines.withCue(cue))).isEqualTo(problems);
    }

    @Test
    void refusesTimesThatCannotBeCountedTogether() {
        assertThat(Timelines.problems("""
                {"duskloom": "timeline/1", "map": "m.csv", "rate": "999999937/1000003", "length": "24:00:00",
                "layers": [{"cues": [
                {"on": "x", "effect": "e", "at": "1f", "for": "80000.000000007s"}]}]}"""))
                .containsExactly("show.json:3:1: error: the times of the cue cannot be counted exactly together;"
                        + " use fewer digits behind the dot, or a simpler frame rate");
    }

    /** A frame rate in a table. */
    record FrameRateText(String text) {
        FrameRate rate() {
            try {
                return FrameRate.parse(text);
            } catch (org.duskloom.engine.problem.TextFormatException e) {
                throw new AssertionError(e);
            }
        }
    }
}

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

/** One error of a cue must not hide its others, and must not give rise to new ones. */
class UnsoundCueTest {
    private static final PixelMap MAP = Maps.map("""
            prop,pixel,x,y,part
            daisy-1,1,0,0,rim
            daisy-2,1,1,0,rim
            fence,1,2,0,
            """);

    static Stream<Object[]> faults() {
        return Cases.of("""
                {"spread": "eech", "effect": "prob", "on": "fense", "with": {"size": 3}}
                    show.json:3:12: error: "spread" of a cue is "eech"; did you mean "each"? allowed: whole, each
                    show.json:3:30: error: there is no effect "prob"; did you mean "probe"?
                    show.json:3:44: error: there is no prop and no group "fense"; did you mean "fence"?
                {"spread": "eech", "effect": "probe", "on": "fence", "with": {"siz": 3, "arms": 0.5}, "stagger": "1s"}
                    show.json:3:12: error: "spread" of a cue is "eech"; did you mean "each"? allowed: whole, each
                    show.json:3:63: error: the effect probe has no setting "siz"; did you mean "size"?
                    show.json:3:81: error: "arms" of probe is 0.5; allowed: a whole number from 1 to 100
                {"for": "99s", "on": "fense", "effect": "probe", "with": {"size": 3}, "opacity": 2}
                    show.json:3:9: error: the cue ends at 99s; the timeline ends at 10s; without "for" the cue lasts until then
                    show.json:3:22: error: there is no prop and no group "fense"; did you mean "fence"?
                    show.json:3:67: error: "size" of probe is 3; allowed: a number from 0 to 1
                    show.json:3:82: error: "opacity" of a cue is 2; allowed: a number from 0 to 1
                {"for": "99s", "on": "fence", "effect": "probe", "with": {"arms": 13, "size": 1}}
                    show.json:3:9: error: the cue ends at 99s; the timeline ends at 10s; without "for" the cue lasts until then
                    show.json:3:79: error: probe: size does not go with 13 arms
                {"ordr": "up", "on": "fence", "effect": "probe", "with": {"arms": 13}}
                    show.json:3:2: error: a cue has no field "ordr"; did you mean "order"?
                {"effect": 4, "on": ["fense", 7], "with": {"size": 3}}
                    show.json:3:12: error: "effect" of a cue must be a text, not the number 4; write "4" in quotes
                    show.json:3:22: error: there is no prop and no group "fense"; did you mean "fence"?
                    show.json:3:31: error: an item of "on" of a cue must be a text, not the number 7; write "7" in quotes
                {"look": "glow", "on": "fense"}
                    show.json:3:10: error: there is no look "glow"; the timeline has no "looks"
                    show.json:3:24: error: there is no prop and no group "fense"; did you mean "fence"?
                {"on": [], "effect": "prob"}
                    show.json:3:8: error: "on" of a cue is empty; name props, parts or groups
                    show.json:3:22: error: there is no effect "prob"; did you mean "probe"?
                {"on": "fence", "effect": "probe", "with": [], "fade": {"in": "11s"}}
                    show.json:3:44: error: "with" of a cue must be an object { }, not a list
                    show.json:3:56: error: the fades take 11s; the cue lasts 10s
                """);
    }

    static Stream<Object[]> repeats() {
        return Cases.of("""
                {"on": "fence", "effect": "probe", "for": "3s", "repeat": {"count": 5, "change": {"siz": 1, "from": ["edge", "center"], "color": 4}}}
                    show.json:3:59: error: play 5 of the cue ends at 15s; the timeline ends at 10s; "until" instead of "count" cuts the last play
                    show.json:3:83: error: the effect probe has no setting "siz"; did you mean "size"?
                    show.json:3:110: error: "from" of probe is "center"; did you mean "centre"? allowed: edge, centre
                    show.json:3:121: error: the change of "color" per repeat is a number to add, but "color" of probe is none; give a list of values to go through
                {"on": "fence", "effect": "probe", "for": "3s", "repeat": {"cont": 5, "change": {"siz": [1]}}}
                    show.json:3:59: error: "repeat" of a cue has neither "count" nor "until"; such as {"count": 4}
                    show.json:3:60: error: "repeat" of a cue has no field "cont"; did you mean "count"?
                    show.json:3:82: error: the effect probe has no setting "siz"; did you mean "size"?
                {"on": "fence", "effect": "probe", "for": "1s", "repeat": {"count": 3, "change": {"zz": 1}}}
                    show.json:3:83: error: the effect probe has no setting "zz"; allowed: size, arms, color, palette, every, rise, from, reverse, part, file, laps
                {"on": "fence", "effect": "probe", "for": "1s", "repeat": {"count": 3, "change": {"size": "0.1"}}}
                    show.json:3:83: error: the change of "size" per repeat is the text "0.1"; give a number to add to 0.5, its default, or a list of values to go through
                {"on": "fence", "effect": "probe", "for": "1s", "repeat": {"count": 4, "change": {"size": 0.25}}}
                    show.json:3:91: error: "size" of probe in play 4 is 1.25; allowed: a number from 0 to 1
                {"on": "fence", "effect": "probe", "for": "1s", "repeat": {"count": 9, "change": {"size": 0.25}}}
                    show.json:3:91: error: "size" of probe in play 4 is 1.25; allowed: a number from 0 to 1
                {"on": "fence", "effect": "probe", "for": "1s", "with": {"size": 2}, "repeat": {"count": 9, "change": {"size": 0.25}}}
                    show.json:3:112: error: "size" of probe is 2; allowed: a number from 0 to 1
                {"on": "fence", "effect": "probe", "for": "1s", "with": {"size": 0.5}, "repeat": {"count": 9, "change": {"size": [0, 1, 2, 3], "arms": -2}}}
                    show.json:3:121: error: "size" of probe in play 3 is 2; allowed: a number from 0 to 1
                    show.json:3:124: error: "size" of probe in play 4 is 3; allowed: a number from 0 to 1
                    show.json:3:136: error: "arms" of probe in play 3 is -1; allowed: a whole number from 1 to 100
                {"on": "fence", "effect": "probe", "for": "1s", "repeat": {"count": 2, "change": {"arms": 10}}}
                    show.json:3:27: error: probe in play 2: size does not go with 13 arms
                {"on": "fence", "effect": "probe", "for": "1s", "repeat": {"count": 2, "change": {"size": 1e999}}}
                    show.json:3:91: error: 1e999 is too large for a number; a number is finite, and a whole number at most 2^53 - 1 = 9007199254740991
                """);
    }

    @ParameterizedTest
    @MethodSource({"faults", "repeats"})
    void reportsAllThatIsWrongAndNothingElse(String cue, List<String> problems) {
        assertThat(TestShow.withCue(MAP, cue).with(new Probe()).problems()).isEqualTo(problems);
    }

    /** The default of "size" is 0.5 and of "arms" 3: three plays add 0, 1 and 2 times 0.25 and 4. */
    @Test
    void addsToTheDefaultOfASettingThatIsNotWritten() {
        Probe probe = new Probe();
        TestShow.withCue(MAP, """
                        {"on": "fence", "effect": "probe", "for": "1s",
                         "repeat": {"count": 3, "change": {"size": 0.25, "arms": 4}}}""").with(probe).plan();
        assertThat(probe.settings)
                .extracting(settings -> settings.value(Probe.SIZE).at(0))
                .containsExactly(0.5, 0.75, 1.0);
        assertThat(probe.settings)
                .extracting(settings -> settings.value(Probe.ARMS).at(0))
                .containsExactly(3.0, 7.0, 11.0);
    }
}

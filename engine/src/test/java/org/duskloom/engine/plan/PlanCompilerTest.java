package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.duskloom.engine.color.BlendMode;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.PartFinder;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.timeline.Cases;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class PlanCompilerTest {
    private static final PixelMap MAP = Maps.map("""
            prop,pixel,x,y,part
            daisy-1,1,0,0,rim
            daisy-2,1,1,0,rim
            fence,1,2,0,
            """);

    @Test
    void turnsTimesIntoFramesAndLayersIntoPlans() {
        Plan plan = TestShow.of(MAP, """
                        "layers": [
                          {"name": "ground", "cues": [{"on": "*", "effect": "solid"},
                            {"on": "fence", "effect": "clock", "at": "1s", "for": "2s", "blend": "screen"}]},
                          {"blend": "multiply", "opacity": 0.25, "cues": []},
                          {"mask": true, "cues": [{"on": "daisy-*", "effect": "place", "spread": "each"}]}]""").plan();
        assertThat(plan.rate()).isEqualTo(FrameRate.of(40));
        assertThat(plan.frameCount()).isEqualTo(400);
        assertThat(plan.pixelCount()).isEqualTo(3);
        assertThat(plan.brushCount()).isEqualTo(3);
        assertThat(plan.layers()).extracting(PlannedLayer::mask).containsExactly(false, false, true);
        assertThat(plan.layers().get(1).blend()).isEqualTo(BlendMode.MULTIPLY);
        assertThat(plan.layers().get(1).opacity()).isEqualTo(0.25f);
        PlannedCue clock = plan.layers().get(0).cues().get(1);
        assertThat(clock.firstFrame()).isEqualTo(40);
        assertThat(clock.endFrameExclusive()).isEqualTo(120);
        assertThat(clock.lengthSeconds()).isEqualTo(2);
        assertThat(clock.blend()).isEqualTo(BlendMode.SCREEN);
        assertThat(clock.canvas(0).secondsAt(60)).isEqualTo(0.5);
        assertThat(clock.canvas(0).brush()).isEqualTo(1);
        assertThat(plan.layers().get(2).cues().get(0).canvas(0).brush()).isEqualTo(2);
    }

    @ParameterizedTest
    @CsvSource({"40, 20", "'\"30000/1001\"', 15"})
    void cutsTheLastPlayOfARepeatWhereItsTimeEnds(String rate, int half) {
        Plan plan =
                new TestShow(MAP, """
                        {"duskloom": "timeline/1", "map": "m.csv", "rate": %s, "length": "4s", "layers": [{"cues": [
                         {"on": "*", "effect": "clock", "for": "1s", "repeat": {"until": "2500ms"}}]}]}""".formatted(rate), null).withPlainEffects().plan();
        PlannedCue last = plan.layers().get(0).cues().get(2);
        assertThat(last.endFrameExclusive() - last.firstFrame()).isEqualTo(half);
        assertThat(last.lengthSeconds()).isEqualTo(1);
    }

    /**
     * Plays 1 s apart that last 1.5 s: those that do not meet share a brush, and all of them the kernel and the place.
     */
    @Test
    void sharesBetweenPlaysWhatIsEqual() {
        List<PlannedCue> plays = TestShow.withCue(
                        MAP,
                        "{\"on\": \"*\", \"effect\": \"clock\", \"for\": \"1500ms\", \"repeat\": {\"count\": 4, \"every\": \"1s\"}}")
                .plan()
                .layers()
                .get(0)
                .cues();
        assertThat(plays).extracting(play -> play.canvas(0).brush()).containsExactly(0, 1, 0, 1);
        assertThat(plays)
                .extracting(play -> play.canvas(0).kernel())
                .containsOnly(plays.get(0).canvas(0).kernel());
        assertThat(plays)
                .extracting(play -> play.canvas(0).runs())
                .containsOnly(plays.get(0).canvas(0).runs());
        assertThat(plays).extracting(play -> play.canvas(0).secondsAt(120)).containsExactly(3.0, 2.0, 1.0, 0.0);
    }

    /** With other settings or chance the kernels differ, with other settings the brushes too; the place is the same. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            rank  | {"count": 3}                                   | 1
            light | {"count": 4, "change": {"r": [0.5, 1]}}      | 2
            """)
    void sharesNothingThatDiffers(String effect, String repeat, int brushes) {
        Plan plan = TestShow.withCue(
                        MAP,
                        "{\"on\": \"*\", \"for\": \"1s\", \"effect\": \"" + effect + "\", \"repeat\": " + repeat + "}")
                .plan();
        PlannedCanvas first = plan.layers().get(0).cues().get(0).canvas(0);
        PlannedCanvas second = plan.layers().get(0).cues().get(1).canvas(0);
        assertThat(second.kernel()).isNotSameAs(first.kernel());
        assertThat(second.runs()).isSameAs(first.runs());
        assertThat(plan.brushCount()).isEqualTo(brushes);
    }

    @Test
    void withholdsRandomKeysFromEffectsThatDoNotSayThatTheyUseChance() {
        Canvas bare = Canvas.withoutKeys(
                new Canvas.Coordinates(new double[1], new double[1], new double[1]),
                new int[1],
                new Canvas.Order(new double[1], new int[] {1}),
                new PartFinder() {
                    @Override
                    public Optional<int[]> find(int member, String address) {
                        return Optional.empty();
                    }

                    @Override
                    public String memberName(int member) {
                        return "";
                    }

                    @Override
                    public List<String> known(int member) {
                        return List.of();
                    }
                });
        assertThat(bare.memberCount()).isEqualTo(1);
        assertThatThrownBy(bare::pixelKey).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> bare.memberKey(0)).isInstanceOf(IllegalStateException.class);
        assertThat(bare.withKeys(new long[] {7}, new int[] {8}).memberKey(0)).isEqualTo(7);
    }

    /** The cue lasts 8 s: fading in for 2 s, out for 4 s; its opacity goes from 1 to 0.5 in 4 s. */
    @ParameterizedTest
    @CsvSource({"0, 0", "40, 0.4375", "80, 0.75", "160, 0.5", "240, 0.25", "319, 0.003125"})
    void multipliesOpacityAndFade(long frame, float opacity) {
        PlannedCue cue = TestShow.withCue(
                        MAP,
                        "{\"on\": \"*\", \"effect\": \"solid\", \"for\": \"8s\","
                                + " \"fade\": {\"in\": \"2s\", \"out\": \"4s\"},"
                                + " \"opacity\": {\"keys\": [[\"0s\", 1], [\"4s\", 0.5]]}}")
                .plan()
                .layers()
                .get(0)
                .cues()
                .get(0);
        assertThat(cue.opacityAt(cue.canvas(0), frame)).isEqualTo(opacity, within(1e-6f));
    }

    @Test
    void keepsOpacityWithinItsRangeWhereAnEasingOvershoots() {
        PlannedCue cue = TestShow.withCue(
                        MAP,
                        "{\"on\": \"*\", \"effect\": \"solid\", \"opacity\": {\"keys\": ["
                                + "[\"0s\", 0], [\"4s\", 1, \"cubic-bezier(0.68, -0.55, 0.265, 1.55)\"]]}}")
                .plan()
                .layers()
                .get(0)
                .cues()
                .get(0);
        for (long frame = 0; frame < 400; frame++) {
            assertThat(cue.opacityAt(cue.canvas(0), frame)).isBetween(0f, 1f);
        }
        // The curve gives -0.0927 at a fifth and 1.0921 at four fifths of the way (W3C CSS Easing Functions Level 1).
        assertThat(cue.opacityAt(cue.canvas(0), 32)).isZero();
        assertThat(cue.opacityAt(cue.canvas(0), 128)).isEqualTo(1);
    }

    static Stream<Object[]> faults() {
        return Cases.of("""
                {"on": "daisy-*", "effect": "sold"}
                    show.json:3:29: error: there is no effect "sold"; did you mean "solid"?
                {"on": "daisy-*", "effect": "zzzzz"}
                    show.json:3:29: error: there is no effect "zzzzz"; allowed: clock, light, place, rank, solid, weave
                {"on": "dasy-1", "effect": "solid"}
                    show.json:3:8: error: there is no prop and no group "dasy-1"; did you mean "daisy-1"?
                {"on": "fence/rim", "effect": "solid"}
                    show.json:3:8: error: "fence" has no part "rim"; it has no parts; it is defined at map.csv:4:1
                {"on": "daisy-1/rm", "effect": "solid"}
                    show.json:3:8: error: "daisy-1" has no part "rm"; did you mean "daisy-1/rim"?; it is defined at map.csv:2:1
                {"on": "x*", "effect": "solid"}
                    show.json:3:8: error: no prop and no group matches "x*"; known: daisy-1, daisy-2, fence
                {"on": ["dasy-1", "fnce"], "effect": "solidd", "opacity": 2}
                    show.json:3:9: error: there is no prop and no group "dasy-1"; did you mean "daisy-1"?
                    show.json:3:19: error: there is no prop and no group "fnce"; did you mean "fence"?
                    show.json:3:38: error: there is no effect "solidd"; did you mean "solid"?
                    show.json:3:59: error: "opacity" of a cue is 2; allowed: a number from 0 to 1
                {"on": "fence", "effect": "solid", "opacity": 1.5}
                    show.json:3:47: error: "opacity" of a cue is 1.5; allowed: a number from 0 to 1
                {"on": "fence", "effect": "solid", "opacity": {"keys": [["0s", 0], ["1s", 2]]}}
                    show.json:3:75: error: a key of "opacity" of a cue is 2; allowed: a number from 0 to 1
                {"on": "fence", "effect": "solid", "opacity": "0.5"}
                    show.json:3:47: error: "opacity" of a cue must be a number, not the text "0.5"; write 0.5 without quotes
                {"on": "fence", "effect": "solid", "opacity": null}
                    show.json:3:47: error: "opacity" of a cue must be a number, not null; leave the field out instead
                {"on": "fence", "effect": "solid", "with": {"colour": "red"}}
                    show.json:3:45: error: the effect solid has no setting "colour"; did you mean "color"?
                {"on": "fence", "effect": "place", "with": {"colour": "red"}}
                    show.json:3:45: error: the effect place has no setting "colour"
                {"on": "fence", "effect": "solid", "at": "1ms", "for": "20ms"}
                    show.json:2:14: warning: no cue uses the palette "dusk"
                    show.json:3:1: warning: the cue is never seen: no frame falls between 0.001s and 0.021s; frames are 0.025s apart
                """);
    }

    @ParameterizedTest
    @MethodSource("faults")
    void teachesWhatIsWrong(String cue, List<String> problems) {
        assertThat(TestShow.withCue(MAP, cue).problems()).isEqualTo(problems);
    }

    @Test
    void warnsOfPalettesThatNoCueUsesOnlyIfNothingIsWrong() {
        String palettes = "\"palettes\": {\"dusk\": [\"red\"], \"dawn\": \"blue\"}, \"layers\": [{\"cues\": [";
        assertThat(TestShow.of(MAP, palettes + "{\"on\": \"*\", \"effect\": \"solid\"}]}]")
                        .problems())
                .containsExactly(
                        "show.json:2:14: warning: no cue uses the palette \"dusk\"",
                        "show.json:2:31: warning: no cue uses the palette \"dawn\"");
        assertThat(TestShow.of(MAP, palettes + "{\"on\": \"*\", \"effect\": \"solidd\"}]}]")
                        .problems())
                .singleElement()
                .asString()
                .contains("there is no effect \"solidd\"");
    }

    @Test
    void usesGroupsBesideTheMap() {
        Probe probe = new Probe();
        TestShow.of(
                        MAP,
                        "\"groups\": {\"rims\": [\"daisy-*/rim\"]}, \"layers\": [{\"cues\": ["
                                + "{\"on\": \"rims\", \"effect\": \"probe\"}]}]")
                .with(probe)
                .plan();
        assertThat(probe.canvases.get(0).pixelCount()).isEqualTo(2);
    }

    @Test
    void reportsCuesGroupsAndTimelineInOneRun() {
        assertThat(TestShow.of(MAP, """
                        "groups": {"rims": ["dasy-*"]},
                        "palettes": {"dusk": ["rde"]},
                        "layers": [{"cues": [
                          {"on": "rims", "effect": "solid", "with": {"color": "dusk"}},
                          {"on": "rims", "effect": "probe", "with": {"palette": "dusk", "size": 7}},
                          {"on": "fnce", "effect": "probe"},
                          {"on": "fence", "effect": "probe", "for": "99s"}]}],
                        "sed": 7""").with(new Probe()).problems())
                .extracting(line -> line.replaceAll(";.*", ""))
                .containsExactly(
                        "show.json:2:21: error: no prop and no group matches \"dasy-*\"",
                        "show.json:3:23: error: a colour of palette \"dusk\": \"rde\" is not a colour",
                        "show.json:5:28: error: there is no effect \"solid\"",
                        "show.json:6:73: error: \"size\" of probe is 7",
                        "show.json:7:10: error: there is no prop and no group \"fnce\"",
                        "show.json:8:45: error: the cue ends at 99s",
                        "show.json:9:1: error: the timeline has no field \"sed\"");
    }

    @Test
    void reportsAFaultOnceHoweverOftenACueIsPlayed() {
        assertThat(TestShow.withCue(
                                MAP,
                                "{\"on\": \"*\", \"effect\": \"probe\", \"for\": \"1ms\", \"repeat\": 5000,"
                                        + " \"with\": {\"size\": 7}}")
                        .with(new Probe())
                        .problems())
                .containsExactly("show.json:3:79: error: \"size\" of probe is 7; allowed: a number from 0 to 1");
    }

    @Test
    void refusesStartsOfMembersThatCannotBeCounted() {
        assertThat(new TestShow(MAP, """
                        {"duskloom": "timeline/1", "map": "m.csv", "rate": "999999937/1000003", "length": "60s",
                         "layers": [{"cues": [
                        {"on": "*", "effect": "solid", "at": "1f", "spread": "each",
                         "stagger": {"by": "right", "time": "30.000000007s"}}]}]}""", null).withPlainEffects().problems())
                .containsExactly("show.json:3:1: error: the times of the cue cannot be counted exactly together;"
                        + " use fewer digits behind the dot, or a simpler frame rate");
    }
}

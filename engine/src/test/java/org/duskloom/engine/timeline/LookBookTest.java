package org.duskloom.engine.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.duskloom.engine.color.BlendMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LookBookTest {
    private static final String LOOKS = """
            {"duskloom": "timeline/1", "map": "m.csv", "length": "9s",
             "looks": {
               "turn": {"effect": "spin", "with": {"arms": 3, "every": "4s"}, "spread": "each", "blend": "screen",
                        "fade": {"in": "1s", "out": "2s"}, "opacity": 0.5, "fit": "stretch", "order": "up"},
               "plain": {"effect": "wash"},
               "fitted": {"fit": "none"}},
             "layers": [{"cues": [
            """;

    /** The cue's own fields win; its settings win one by one, unless it names an effect of its own. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "look": "turn"                                | spin  | arms every      | EACH  | STRETCH | SCREEN
            "look": "turn", "with": {"every": "1s"}       | spin  | arms every      | EACH  | STRETCH | SCREEN
            "look": "turn", "with": {"soft": 0.5}         | spin  | arms every soft | EACH  | STRETCH | SCREEN
            "look": "turn", "effect": "chase"             | chase |                 | EACH  | STRETCH | SCREEN
            "look": "turn", "effect": "chase", "with": {"tail": 1} | chase | tail   | EACH  | STRETCH | SCREEN
            "look": "turn", "spread": "whole"             | spin  | arms every      | WHOLE | STRETCH | SCREEN
            "look": "turn", "blend": "normal", "fit": "contain" | spin | arms every | EACH  | CONTAIN | NORMAL
            "look": "plain", "with": {"color": "red"}     | wash  | color           | WHOLE | CONTAIN | NORMAL
            "look": "fitted", "effect": "chase"           | chase |                 | WHOLE | NONE    | NORMAL
            """)
    void fillsInWhatTheCueLeavesOpen(
            String fields, String effect, String settings, Spread spread, Fit fit, BlendMode blend) {
        Cue cue = cue(fields);
        assertThat(cue.effect().value()).isEqualTo(effect);
        assertThat(cue.with().stream().map(field -> field.name()).collect(Collectors.joining(" ")))
                .isEqualTo(settings == null ? "" : settings);
        assertThat(cue.layout().spread()).isEqualTo(spread);
        assertThat(cue.layout().fit()).isEqualTo(fit);
        assertThat(cue.blend()).isEqualTo(blend);
    }

    @Test
    void keepsThePlaceOfEverySettingInTheFile() {
        Cue cue = cue("\"look\": \"turn\", \"with\": {\"every\": \"1s\"}");
        assertThat(cue.location()).hasToString("show.json:8:1");
        assertThat(cue.effect().location()).hasToString("show.json:3:23");
        assertThat(cue.with().get(0).value().location()).hasToString("show.json:3:48");
        assertThat(cue.with().get(1).value().location()).hasToString("show.json:8:47");
        assertThat(cue.opacity().orElseThrow().location()).hasToString("show.json:4:59");
    }

    /** Nobody else reads what no cue takes; what a cue takes is told once, as the cue's. */
    @Test
    void whatNoCueTakesIsCheckedToo() {
        String looks = """
                {"duskloom": "timeline/1", "map": "m.csv", "length": "9s",
                 "looks": {"unused": {"spread": "ech", "stagger": {"by": "right"}},
                           "used": {"effect": "chase", "fit": "cntain", "order": 5}},
                 "layers": [{"cues": [{"on": "x", "look": "used", "order": "up"}]}]}""";
        assertThat(Timelines.problems(looks))
                .containsExactlyInAnyOrder(
                        "show.json:2:33: error: \"spread\" of look \"unused\" is \"ech\"; did you mean \"each\"? allowed: whole, each",
                        "show.json:2:51: error: \"stagger\" of look \"unused\" lacks the field \"time\"",
                        "show.json:3:47: error: \"fit\" of a cue is \"cntain\"; did you mean \"contain\"? allowed: contain, stretch, none",
                        "show.json:3:66: error: \"order\" of look \"used\" must be a text, not the number 5; allowed: "
                                + String.join(", ", WORDS_OF_ORDER));
    }

    @Test
    void whatOnlyASceneTakesIsToldOnce() {
        String show = """
                {"duskloom": "timeline/1", "map": "m.csv", "length": "9s",
                 "looks": {"inside": {"effect": "chase", "spread": "ech"}},
                 "scenes": {"verse": {"length": "1s", "layers": [{"cues": [{"on": "x", "look": "inside"}]}]}},
                 "layers": [{"cues": [{"scene": "verse"}]}]}""";
        assertThat(Timelines.problems(show))
                .containsExactly(
                        "show.json:2:52: error: \"spread\" of a cue is \"ech\"; did you mean \"each\"? allowed: whole, each");
    }

    private static final List<String> WORDS_OF_ORDER =
            Arrays.stream(PixelOrder.values()).map(PixelOrder::word).toList();

    @Test
    void wantsAnEffectFromTheLookOrTheCue() {
        assertThat(Timelines.problems(LOOKS + "{\"on\": \"x\", \"look\": \"fitted\"}]}]}"))
                .containsExactly("show.json:8:21: error: neither the cue nor its look \"fitted\" has an \"effect\";"
                        + " add \"effect\" to one of them");
    }

    @Test
    void reportsAFaultInALookOnceHoweverManyCuesUseIt() {
        String cue = "{\"on\": \"x\", \"look\": \"bad\"}";
        assertThat(Timelines.problems("""
                {"duskloom": "timeline/1", "map": "m.csv", "length": "9s",
                 "looks": {"bad": {"effect": "spin", "fit": "stretc", "at": "1s", "colour": 1}},
                 "layers": [{"cues": [%s, %s]}, {"cues": [%s]}]}""".formatted(cue, cue, cue)))
                .containsExactly(
                        "show.json:2:45: error: \"fit\" of a cue is \"stretc\"; did you mean \"stretch\"?"
                                + " allowed: contain, stretch, none",
                        "show.json:2:55: error: look \"bad\" has the field \"at\";"
                                + " that belongs to the cues that use the look",
                        "show.json:2:67: error: look \"bad\" has no field \"colour\"; allowed: effect, with, spread, axes,"
                                + " fit, order, stagger, fade, opacity, blend");
    }

    @Test
    void doesNotCallALookUnknownThatCouldNotBeRead() {
        assertThat(Timelines.problems("""
                {"duskloom": "timeline/1", "map": "m.csv", "length": "9s", "looks": {"bad": 3},
                 "layers": [{"cues": [{"on": "x", "look": "bad"}]}]}"""))
                .containsExactly("show.json:1:77: error: look \"bad\" must be an object { }, not the number 3");
    }

    /** What the cue has in its place is not what the look has: it is not passed over for that. */
    @Test
    void settingsThatAreNoneAreReportedBesideThoseOfALook() {
        assertThat(Timelines.problems(LOOKS + "{\"on\": \"x\", \"look\": \"turn\", \"with\": 3}]}]}"))
                .containsExactly("show.json:8:37: error: \"with\" of a cue must be an object { }, not the number 3");
    }

    @Test
    void saysWhereThereAreNoLooks() {
        assertThat(Timelines.problems("""
                {"duskloom": "timeline/1", "map": "m.csv", "length": "9s",
                 "layers": [{"cues": [{"on": "x", "look": "glow"}]}]}"""))
                .containsExactly("show.json:2:43: error: there is no look \"glow\"; the timeline has no \"looks\"");
    }

    private static Cue cue(String fields) {
        return Timelines.sound(LOOKS + "{\"on\": \"x\", " + fields + "}]}]}")
                .layers()
                .get(0)
                .cues()
                .get(0);
    }
}

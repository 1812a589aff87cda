package org.duskloom.engine.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.duskloom.engine.color.BlendMode;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.NumberNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.Lapse;
import org.duskloom.engine.time.TimeText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is known of cues and scenes once a timeline is read; times worked out on paper. */
class PlayedTest {
    private static final String BLOOM = "\"bloom\": {\"length\": \"4s\", \"same\": true, \"layers\": [{\"cues\": ["
            + "{\"on\": \"flower/rim\", \"effect\": \"e\"}]}]}";

    private static Timeline timeline(String scenes, String layers) {
        return Timelines.sound("{\"duskloom\": \"timeline/1\", \"map\": \"m.csv\", \"length\": \"10s\","
                + " \"markers\": {\"drop\": \"7500ms\"},\n\"scenes\": {" + scenes + "}, \"layers\": [\n" + layers
                + "]}");
    }

    private static String span(Played cue) {
        return cue.at() + ".." + cue.end() + " seen until " + cue.seenUntil();
    }

    /** A cue from 1 s to 3 s, so much later and cut off there: its clock goes on by its own end. */
    @ParameterizedTest
    @CsvSource({
        "0, 10, 1s..3s seen until 3s",
        "2, 10, 3s..5s seen until 5s",
        "2, 5, 3s..5s seen until 5s",
        "2, 4, 3s..5s seen until 4s",
    })
    void movesWithWhatItStandsIn(long shift, long cut, String expected) {
        Timeline timeline = timeline(
                BLOOM,
                "{\"cues\": [{\"at\": \"1s\", \"for\": \"2s\", \"on\": \"x\", \"effect\": \"e\"},"
                        + " {\"at\": \"1s\", \"for\": \"2s\", \"scene\": \"bloom\"}]}");
        Cue cue = timeline.layers().get(0).cues().get(0);
        Cue moved = cue.moved(ExactTime.ofSeconds(shift), ExactTime.ofSeconds(cut));
        assertThat(span(moved)).isEqualTo(expected);
        assertThat(moved.length()).isEqualTo(ExactTime.ofSeconds(2));
        assertThat(moved.randomKey()).isEqualTo(cue.randomKey());
        SceneCue scene = (SceneCue) timeline.layers().get(0).items().get(1);
        SceneCue later = scene.moved(ExactTime.ofSeconds(shift), ExactTime.ofSeconds(cut));
        assertThat(span(later)).isEqualTo(expected);
        assertThat(later.randomKey()).isEqualTo(scene.randomKey());
        assertThat(later.scene().value()).isEqualTo("bloom");
    }

    @Test
    void everyPlayOfASceneHasChoicesOfItsOwn() {
        List<Played> plays = timeline(BLOOM, "{\"cues\": [{\"scene\": \"bloom\", \"repeat\": {\"until\": \"9s\"}}]}")
                .layers()
                .get(0)
                .items();
        assertThat(plays.stream().map(PlayedTest::span))
                .containsExactly("0s..4s seen until 4s", "4s..8s seen until 8s", "8s..12s seen until 9s");
        assertThat(plays.stream().map(Played::randomKey)).doesNotHaveDuplicates();
    }

    @Test
    void aSceneCueHasEveryFieldThatIsWritten() {
        Played cue = timeline(BLOOM, """
                {"name": "ground", "opacity": 0.25, "blend": "screen", "cues": [
                {"name": "n", "scene": "bloom", "on": {"flower": "daisies"}, "stagger": {"by": "up", "time": "1s"},
                 "opacity": 0.5, "blend": "lighten", "fade": {"out": "2s"}}]}""").layers().get(0).items().get(0);
        assertThat(cue.name()).isEqualTo("n");
        assertThat(cue.location()).hasToString("show.json:4:1");
        assertThat(cue.opacity().orElseThrow().location()).hasToString("show.json:5:13");
        assertThat(cue.blend()).isEqualTo(BlendMode.LIGHTEN);
        assertThat(cue.fade().out()).isEqualTo(ExactTime.ofSeconds(2));
        Stagger stagger = ((SceneCue) cue).stagger().orElseThrow();
        assertThat(stagger.by()).isEqualTo(StaggerBy.UP);
        assertThat(stagger.time()).isEqualTo(Lapse.of(ExactTime.ofSeconds(1)));
        assertThat(stagger.location()).hasToString("show.json:4:73");
    }

    /**
     * What a scene names and does not tell a scene in it is left open by the one around, with the place where it is
     * written.
     */
    @Test
    void namesThatAreNotToldAreLeftOpen() {
        String told =
                "\"told\": {\"length\": \"4s\", \"layers\": [{\"cues\": [{\"scene\": \"bloom\", \"on\": {\"flower\":"
                        + " [\"pond/edge\", \"gate\"]}}]}]}";
        String left = "\"left\": {\"length\": \"4s\", \"layers\": [{\"cues\": [{\"scene\": \"bloom\"}]}]}";
        Scenes scenes = timeline(
                        left + ",\n" + told + ",\n" + BLOOM,
                        "{\"cues\": [{\"scene\": \"told\"}, {\"scene\": \"left\", \"at\": \"0s\"}]}")
                .scenes();
        assertThat(scenes.find("bloom").orElseThrow().names()).containsOnlyKeys("flower");
        assertThat(scenes.find("told").orElseThrow().names()).containsOnlyKeys("pond", "gate");
        assertThat(scenes.find("left").orElseThrow().names()).containsOnlyKeys("flower");
        assertThat(scenes.find("left").orElseThrow().names().get("flower")).hasToString("show.json:4:69");
        assertThat(scenes.find("bloom").orElseThrow().same()).isTrue();
        assertThat(scenes.find("told").orElseThrow().same()).isFalse();
    }

    /** Times given on the command line may count from markers and from cues, if it is clear from which. */
    @ParameterizedTest
    @CsvSource({"@drop-500ms, 7s", "@rise, 1s", "@rise.end+250ms, 3.25s", "@late.end, 9s"})
    void markersAndCuesNameInstants(String text, String instant) throws Exception {
        Timeline timeline = timeline("", """
                {"cues": [{"name": "rise", "at": "1s", "for": "2s", "on": "x", "effect": "e"},
                {"name": "twice", "for": "1s", "on": "x", "effect": "e"}]},
                {"cues": [{"name": "twice", "at": "5s", "for": "1s", "on": "x", "effect": "e"},
                {"name": "late", "at": "5s", "for": "2s", "repeat": 2, "on": "x", "effect": "e"}]}""");
        assertThat(TimeText.parse(text, timeline.times())).hasToString(instant);
        assertThatThrownBy(() -> TimeText.parse("@twice", timeline.times())).hasMessageContaining("@twice");
        assertThatThrownBy(() -> TimeText.parse(text, timeline.lengths())).hasMessageContaining(text);
    }

    @Test
    void layersHaveWhatIsWritten() {
        List<Layer> layers = timeline("", """
                {"name": "sky", "opacity": 0.25, "blend": "screen", "cues": [{"on": "x", "effect": "e"}]},
                {"mask": true, "cues": [{"on": "x", "effect": "e"}]}""").layers();
        assertThat(layers.get(0).blend()).isEqualTo(BlendMode.SCREEN);
        assertThat(layers.get(0).opacity()).isEqualTo(0.25);
        assertThat(layers.get(0).mask()).isFalse();
        assertThat(layers.get(1).blend()).isEqualTo(BlendMode.NORMAL);
        assertThat(layers.get(1).opacity()).isEqualTo(1);
        assertThat(layers.get(1).mask()).isTrue();
        assertThat(layers.get(0).cues().get(0).randomKey()).contains("sky");
        assertThat(layers.get(1).cues().get(0).randomKey()).contains("layer 2");
    }

    /** Three values in a list take three plays to be seen, and a number is as good as any other: 0.5, 0.75, 1. */
    @Test
    void aListOfChangesIsFollowedToItsEndThoughTheCueIsWrong() {
        Problems problems = new Problems();
        Field with = new Field("size", null, new NumberNode(null, 0.5, "0.5"));
        SettingSteps steps = new SettingSteps(List.of(
                new Field("size", null, new NumberNode(null, 0.25, "0.25")),
                new Field("from", null, new ListNode(null, List.of(word("a"), word("b"), word("c"))))));
        assertThat(steps.playsToSeeAll()).isEqualTo(3);
        assertThat(SettingSteps.NONE.playsToSeeAll()).isEqualTo(1);
        for (int play = 0; play < 3; play++) {
            List<Field> changed = steps.appliedTo(List.of(with), play, problems).with();
            assertThat(((NumberNode) changed.get(0).value()).value()).isEqualTo(0.5 + 0.25 * play);
            assertThat(((TextNode) changed.get(1).value()).value()).isEqualTo("abc".substring(play, play + 1));
        }
    }

    private static TextNode word(String text) {
        return new TextNode(null, text);
    }

    /** A number without a unit: hundreds count milliseconds, what is under ten or has a fraction counts seconds. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            9    | "9s"
            9.5  | "9.5s"
            10   | "10s" or "10ms"
            10.5 | "10.5s"
            99   | "99s" or "99ms"
            100  | "100ms"
            """)
    void theUnitThatWasMeantIsProposed(String number, String meant) {
        assertThat(Timelines.problems(Timelines.withCue("{\"on\": \"x\", \"effect\": \"e\", \"at\": " + number + "}")))
                .containsExactly("show.json:5:34: error: \"at\" of a cue must be a time, not the number " + number
                        + "; write it with a unit, such as " + meant);
    }
}

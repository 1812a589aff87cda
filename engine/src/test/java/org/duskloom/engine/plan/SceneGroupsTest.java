package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.duskloom.engine.color.BlendMode;
import org.duskloom.engine.map.Maps;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How what acts on a whole scene reaches its cues: by themselves where they do not meet, as a group where they do. */
class SceneGroupsTest {
    private static final String CUE = "{\"for\": \"2s\", \"on\": \"pond\", \"effect\": \"solid\"}";
    private static final String ELSEWHERE = "{\"for\": \"2s\", \"on\": \"gate\", \"effect\": \"solid\"}";

    private static List<PlannedCue> cues(String scenes, String cues) {
        return TestShow.of(
                        Maps.map("prop,pixel,x,y\npond,1,0,0\ngate,1,1,0\n"),
                        "\"scenes\": {" + scenes + "}, \"layers\": [{\"cues\": [" + cues + "]}]")
                .plan()
                .layers()
                .get(0)
                .cues();
    }

    private static String scene(String name, String... layers) {
        return "\"" + name + "\": {\"length\": \"4s\", \"layers\": [" + String.join(", ", layers) + "]}";
    }

    private static String layer(String fields, String... cues) {
        return "{" + fields + "\"cues\": [" + String.join(", ", cues) + "]}";
    }

    private static float opacity(PlannedCue cue, long frame) {
        return cue.opacityAt(cue.canvas(0), frame);
    }

    /** The scene starts at 1 s, frame 40, and comes within two seconds to half; its layer shows half of its cues. */
    @Test
    void cuesThatDoNotMeetAreDimmedOneByOne() {
        List<PlannedCue> cues = cues(
                scene("s", layer("\"opacity\": 0.5, ", CUE, ELSEWHERE)),
                "{\"scene\": \"s\", \"at\": \"1s\", \"opacity\": 0.5, \"blend\": \"screen\", \"fade\": {\"in\": \"2s\"}}");
        for (PlannedCue cue : cues) {
            assertThat(cue.groupCount()).isZero();
            assertThat(cue.blend()).isEqualTo(BlendMode.SCREEN);
            assertThat(opacity(cue, 40)).isZero();
            assertThat(opacity(cue, 80)).isEqualTo(0.125f);
            assertThat(opacity(cue, 119)).isEqualTo((float) (0.25 * 79 / 80));
        }
    }

    @Test
    void cuesThatMeetAreDimmedTogether() {
        List<PlannedCue> cues = cues(
                scene("s", layer("", CUE, CUE)),
                "{\"scene\": \"s\", \"at\": \"1s\", \"opacity\": 0.5, \"blend\": \"screen\", \"fade\": {\"in\": \"2s\"}}");
        for (PlannedCue cue : cues) {
            assertThat(cue.groupCount()).isEqualTo(1);
            assertThat(cue.blend()).isEqualTo(BlendMode.NORMAL);
            assertThat(opacity(cue, 80)).isEqualTo(1);
            assertThat(cue.group(0).blend()).isEqualTo(BlendMode.SCREEN);
            assertThat(cue.group(0).mask()).isFalse();
            assertThat(cue.group(0).opacityAt(80)).isEqualTo(0.25f);
        }
        assertThat(cues.get(0).group(0)).isSameAs(cues.get(1).group(0));
    }

    /** The scene outside is the outer group; each is dimmed by its own cue. */
    @Test
    void groupsStandFromTheOutsideIn() {
        List<PlannedCue> cues = cues(
                scene("in", layer("", CUE, CUE)) + ", "
                        + scene("out", layer("", "{\"scene\": \"in\", \"opacity\": 0.5}", CUE)),
                "{\"scene\": \"out\", \"opacity\": 0.25}");
        assertThat(cues).hasSize(3);
        assertThat(cues.get(0).groupCount()).isEqualTo(2);
        assertThat(cues.get(0).group(0).opacityAt(0)).isEqualTo(0.25f);
        assertThat(cues.get(0).group(1).opacityAt(0)).isEqualTo(0.5f);
        assertThat(cues.get(2).groupCount()).isEqualTo(1);
        assertThat(cues.get(2).group(0)).isSameAs(cues.get(0).group(0));
    }

    /** A scene in a scene that meets nothing there needs one group only, which both dim: 0.5 of 0.25. */
    @Test
    void aGroupThatMeetsNothingIsDimmedFromOutside() {
        List<PlannedCue> cues = cues(
                scene("in", layer("", CUE, CUE)) + ", "
                        + scene("out", layer("", "{\"scene\": \"in\", \"opacity\": 0.5}", ELSEWHERE)),
                "{\"scene\": \"out\", \"opacity\": 0.25, \"blend\": \"screen\"}");
        assertThat(cues).extracting(PlannedCue::groupCount).containsExactly(1, 1, 0);
        assertThat(cues.get(0).group(0).opacityAt(0)).isEqualTo(0.125f);
        assertThat(cues.get(0).group(0).blend()).isEqualTo(BlendMode.SCREEN);
        assertThat(opacity(cues.get(2), 0)).isEqualTo(0.25f);
    }

    /**
     * A mask works on what is under it in its scene only, so the scene is a group. A layer of a scene is mixed with
     * what is under it in the scene; where there is nothing, it is itself (W3C Compositing and Blending Level 1,
     * section 5.1: with a backdrop alpha of 0 the mixed colour is the source).
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "mask": true,     | pond | 1 2 | NORMAL
            "mask": true,     | gate | 1 2 | NORMAL
            "blend": "screen",| pond | 1 1 | SCREEN
            "blend": "screen",| gate | 0 0 | NORMAL
            "opacity": 1,     | pond | 0 0 | NORMAL
            """)
    void layersOfAScene(String fields, String on, String groups, BlendMode blend) {
        List<PlannedCue> cues = cues(
                scene("s", layer("", CUE), layer(fields + " ", CUE.replace("pond", on))),
                "{\"on\": \"pond\", \"effect\": \"solid\"}, {\"scene\": \"s\"}");
        assertThat(cues.get(1).groupCount() + " " + cues.get(2).groupCount()).isEqualTo(groups);
        PlannedCue second = cues.get(2);
        boolean mask = fields.contains("mask");
        assertThat(second.groupCount() > 0
                        && second.group(second.groupCount() - 1).mask())
                .isEqualTo(mask);
        assertThat(second.blend()).isEqualTo(blend);
    }
}

package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.junit.jupiter.api.Test;

/** Cues share what they have in common by value, wherever they stand, and each is told its own faults. */
class SharingTest {
    private static final PixelMap MAP = Maps.map("prop,pixel,x,y\na,1,0,0\na,2,1,0\nb,1,2,3\n");

    @Test
    void cuesOnTheSameMembersShareTheirGeometry() {
        List<PlannedCue> cues = cues("""
                {"on": "*", "effect": "place"}, {"on": ["a", "b"], "effect": "solid"},
                {"on": ["a", "b"], "effect": "place", "fit": "stretch"}, {"on": "a", "effect": "place"}""");
        PixelRuns runs = cues.get(0).canvas(0).runs();
        assertThat(cues.get(1).canvas(0).runs()).isSameAs(runs);
        assertThat(cues.get(2).canvas(0).runs()).isNotSameAs(runs);
        assertThat(cues.get(3).canvas(0).runs()).isNotSameAs(runs);
    }

    /** A stagger that is everywhere as long makes nothing hang on the start of a cue. */
    @Test
    void staggeredCuesShareTheirGeometryToo() {
        List<PlannedCue> cues = cues("""
                {"on": "*", "effect": "place", "spread": "each", "stagger": "100ms"},
                {"on": "*", "effect": "place", "spread": "each", "stagger": "100ms", "at": "3s"}""");
        assertThat(cues.get(1).canvas(1).runs()).isSameAs(cues.get(0).canvas(1).runs());
    }

    @Test
    void cuesWithTheSameSettingsShareTheirKernels() {
        List<PlannedCue> cues = cues("""
                {"on": "*", "effect": "light", "with": {"r": 0.5}},
                {"on": "*", "effect": "light", "with": {"r": 5e-1}, "at": "2s", "blend": "screen"},
                {"on": "*", "effect": "light", "with": {"r": 0.6}}""");
        assertThat(cues.get(1).canvas(0).kernel())
                .isSameAs(cues.get(0).canvas(0).kernel());
        assertThat(cues.get(2).canvas(0).kernel())
                .isNotSameAs(cues.get(0).canvas(0).kernel());
    }

    @Test
    void chanceIsSharedByCuesOfOneNameOnly() {
        List<PlannedCue> cues = cues("""
                {"on": "*", "effect": "rank", "name": "x"}, {"on": "*", "effect": "rank", "name": "y"},
                {"on": "*", "effect": "rank", "name": "x", "at": "1s"}""");
        assertThat(cues.get(1).canvas(0).kernel())
                .isNotSameAs(cues.get(0).canvas(0).kernel());
        assertThat(cues.get(2).canvas(0).kernel())
                .isSameAs(cues.get(0).canvas(0).kernel());
    }

    /** A brush is for one thread and one instant: two cues that are seen at the same time must not paint with one. */
    @Test
    void cuesOfOneTimeHaveBrushesOfTheirOwn() {
        List<PlannedCue> cues = cues("""
                {"on": "*", "effect": "solid", "at": "4s", "for": "2s"}, {"on": "*", "effect": "solid", "at": "0s", "for": "5s"},
                {"on": "*", "effect": "solid", "at": "6s", "for": "1s"}""");
        assertThat(cues.get(1).canvas(0).brush())
                .isNotEqualTo(cues.get(0).canvas(0).brush());
        assertThat(cues.get(2).canvas(0).brush())
                .isEqualTo(cues.get(0).canvas(0).brush());
    }

    @Test
    void everyCueIsToldItsFaults() {
        TestShow show = TestShow.withCue(MAP, """
                {"on": "a", "effect": "probe", "with": {"arms": 13}},
                {"on": "a", "effect": "probe", "with": {"size": 0.2, "arms": 13}},
                {"on": "a", "effect": "probe", "with": {"arms": 13}}""");
        List<String> problems =
                new TestShow(show.map(), show.timeline(), EffectRegistry.of(List.of(new Probe()))).problems();
        assertThat(problems)
                .filteredOn(line -> line.contains("does not go with 13 arms"))
                .extracting(line -> line.replaceAll(": .*", ""))
                .containsExactly("show.json:3:23", "show.json:4:49", "show.json:5:23");
    }

    private static List<PlannedCue> cues(String cues) {
        return TestShow.of(MAP, "\"layers\": [{\"cues\": [" + cues + "]}]")
                .plan()
                .layers()
                .get(0)
                .cues();
    }
}

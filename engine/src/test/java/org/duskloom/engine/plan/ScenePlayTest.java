package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.timeline.Cue;
import org.duskloom.engine.timeline.Scene;
import org.duskloom.engine.timeline.SceneCue;
import org.duskloom.engine.timeline.Timeline;
import org.duskloom.engine.timeline.TimelineReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A scene that is played from 4 s on and cut somewhere: in it a cue and a scene of two seconds, both from 1 s on. */
class ScenePlayTest {
    private static final Timeline TIMELINE = timeline();
    private static final Cue CUE = TIMELINE.layers().get(0).cues().get(0);
    private static final SceneCue SCENE_CUE =
            (SceneCue) TIMELINE.layers().get(0).items().get(1);
    private static final Scene SCENE = TIMELINE.scenes().find("s").orElseThrow();

    private static Timeline timeline() {
        String json = """
                {"duskloom": "timeline/1", "map": "map.csv", "rate": 40, "length": "10s",
                 "scenes": {"s": {"length": "2s", "layers": []}}, "layers": [{"cues": [
                 {"name": "x", "at": "1s", "for": "2s", "on": "pond", "effect": "solid"},
                 {"name": "y", "at": "1s", "for": "3s", "scene": "s"}]}]}""";
        Problems problems = new Problems();
        return TimelineReader.read(Inputs.json(json), problems)
                .orElseThrow(() -> new AssertionError(Inputs.shown(problems)));
    }

    private static ScenePlay play(long cutMilliseconds) {
        return new ScenePlay(
                ExactTime.ofSeconds(4),
                ExactTime.ofMilliseconds(cutMilliseconds),
                List.of(SCENE_CUE),
                List.of("k"),
                SceneNames.NONE);
    }

    /** By the clock of the show it is from 5 to 7 s. */
    @ParameterizedTest
    @CsvSource({"5000, false, false", "5001, true, true", "6999, true, true", "7000, true, false", "9000, true, false"})
    void aCueIsCutWhereTheSceneIs(long cut, boolean present, boolean isCut) {
        assertThat(play(cut).cue(CUE).isPresent()).isEqualTo(present);
        play(cut).cue(CUE).ifPresent(cue -> {
            assertThat(cue.isCut()).isEqualTo(isCut);
            assertThat(cue.cue().at()).isEqualTo(ExactTime.ofSeconds(5));
            assertThat(cue.cue().seenUntil()).isEqualTo(ExactTime.ofMilliseconds(Math.min(cut, 7000)));
        });
    }

    @ParameterizedTest
    @CsvSource({"5000, false", "5001, true"})
    void aSceneInItIsCutToo(long cut, boolean present) {
        assertThat(play(cut).sceneCue(SCENE_CUE).isPresent()).isEqualTo(present);
    }

    /** Played from 1 s of the show on, until 4 s at most: as long as it is, and no longer than what is around it. */
    @ParameterizedTest
    @CsvSource({
        "0, 9000, 3000",
        "1500, 9000, 4000",
        "500, 3000, 3000",
        "3000, 9000, -1",
        "3001, 9000, -1",
        "0, 1000, -1"
    })
    void anInnerPlayEndsWithWhatIsAroundIt(long lag, long cut, long end) {
        var inner = play(cut).inner(SCENE_CUE, SCENE, ExactTime.ofMilliseconds(lag), "", SceneNames.NONE);
        assertThat(inner.isPresent()).isEqualTo(end >= 0);
        inner.ifPresent(found -> {
            assertThat(found.start()).isEqualTo(ExactTime.ofMilliseconds(1000 + lag));
            assertThat(found.cut()).isEqualTo(ExactTime.ofMilliseconds(end));
        });
    }

    /** Random choices hang on the whole path of plays, from the outside in. */
    @Test
    void keysAreThePathOfPlays() {
        assertThat(play(9000).cue(CUE).orElseThrow().randomKey()).isEqualTo("k > cue x");
        assertThat(CuePlay.ofShow(CUE).randomKey()).isEqualTo("cue x");
        ScenePlay inner = play(9000)
                .inner(SCENE_CUE, SCENE, ExactTime.ZERO, "daisy-1", SceneNames.NONE)
                .orElseThrow();
        assertThat(inner.keys()).containsExactly("k", "cue y daisy-1");
        assertThat(inner.within()).hasSize(2);
    }
}
